// One planned change of the strike, as it is now or as it is aimed at: path and face from above, the arc from the front, or a plain scale.
import type { Analysis } from '../../analysis/result.ts';
import type { Quantity } from '../../registry/quantity.ts';
import { fixed, lineThrough, toward, type Place } from '../geometry.ts';
import { valueOf } from '../known.ts';
import type { Picture } from '../picture.tsx';
import type { Theme } from '../theme.ts';

interface StrikeProps {
  readonly analysis: Analysis;
  readonly quantity: Quantity;
  /** Where the ball is on the picture. */
  readonly at: Place;
  readonly kind: 'now' | 'aim';
  readonly theme: Theme;
}

/** Angles up to this one, rad, are drawn so many times as large, for a few degrees are hard to see; the picture says so. Both are judgement. */
const small = (25 * Math.PI) / 180;
const larger = 2.5;
/** No line is drawn further from the target line, rad. */
const steepest = (80 * Math.PI) / 180;

/** The same for all pictures that are seen beside one another: one that is drawn true beside one that is not would mislead. */
export function enlargementOf(analyses: readonly (Analysis | undefined)[]): number {
  const angles = analyses.flatMap((one) =>
    one === undefined ? [] : [...Object.values(anglesIn(one)), valueOf(one, 'delivery.attack')?.value],
  );
  return angles.every((angle) => angle === undefined || Math.abs(angle) <= small) ? larger : 1;
}

/** Whether a picture of this shape shows angles that may be enlarged. */
export function isEnlarged(shape: string): boolean {
  return shape === 'above' || shape === 'front';
}

function anglesIn(analysis: Analysis): Readonly<Record<'path' | 'face', number | undefined>> {
  const [path, face, between] = ['delivery.path', 'delivery.face', 'delivery.face_to_path'].map(
    (id) => valueOf(analysis, id)?.value,
  );
  return { path, face: face ?? (between === undefined ? undefined : (path ?? 0) + between) };
}

/** The way of the club through the ball, and the face across it; the target is up. What is not known is left out. */
export function PathAndFace({
  analysis,
  at,
  kind,
  enlargement,
  theme,
}: StrikeProps & { readonly enlargement: number }): Picture {
  const { path, face: square } = anglesIn(analysis);
  const shownAngle = (angle: number): number => Math.max(-steepest, Math.min(steepest, enlargement * angle));
  const colour = kind === 'aim' ? theme.goal : theme.ink;
  const along = shownAngle(path ?? 0);
  return (
    <g>
      <path
        d={lineThrough([
          { x: at.x, y: at.y + 42 },
          { x: at.x, y: at.y - 84 },
        ])}
        stroke={theme.faint}
        stroke-width="1.5"
        stroke-dasharray="5 4"
      />
      {path !== undefined && (
        <Arrow from={toward(at, along, -46)} to={toward(at, along, 62)} colour={theme.soft} />
      )}
      {square !== undefined && (
        <path
          d={lineThrough([
            toward(at, shownAngle(square) - Math.PI / 2, 26),
            toward(at, shownAngle(square) + Math.PI / 2, 26),
          ])}
          stroke={colour}
          stroke-width="5"
          data-part="face"
        />
      )}
      {square !== undefined && (
        <path
          d={lineThrough([at, toward(at, shownAngle(square), 74)])}
          stroke={colour}
          stroke-width="1.6"
          stroke-dasharray="2 4"
        />
      )}
      <circle
        cx={fixed(at.x)}
        cy={fixed(at.y - 9)}
        r="6.5"
        fill={theme.paper}
        stroke={theme.ink}
        stroke-width="1.4"
      />
    </g>
  );
}

function Arrow({
  from,
  to,
  colour,
}: {
  readonly from: Place;
  readonly to: Place;
  readonly colour: string;
}): Picture {
  const direction = Math.atan2(to.x - from.x, from.y - to.y);
  const barbs = [2.6, -2.6].map((turn) => toward(to, direction + turn, 11));
  return (
    <path
      d={`${lineThrough([from, to])} ${lineThrough([barbs[0]!, to, barbs[1]!])}`}
      stroke={colour}
      stroke-width="2.2"
    />
  );
}

/** Units of the picture for a centimetre along the ground, and the furthest that it shows to each side and upward. */
const arc = { unit: 5, side: 58, most: 52, height: 34 } as const;
/** Of the head's way, m, where the record does not tell it; judgement. */
const usualRadius = 1.3;
/** Where the head meets the ball, in units above the ground: at its foot on the way down, in its middle on the way up, as from a tee. */
const meets = { down: 1, up: 9 } as const;

/** The head's way along the ground: how high, in units, so many units toward the target, and where it is lowest; undefined where nothing tells. */
function wayIn(analysis: Analysis, enlargement: number) {
  const [low, attack, radius = usualRadius] = [
    'delivery.low_point.ahead',
    'delivery.attack',
    'delivery.arc.radius',
  ].map((id) => valueOf(analysis, id)?.value);
  // On a circle the head is lowest where it goes level.
  const ahead = low ?? (attack === undefined ? undefined : -radius * Math.sin(attack));
  if (ahead === undefined) return undefined;
  const lowest = Math.max(-arc.most, Math.min(arc.most, 100 * arc.unit * ahead));
  const slope =
    attack === undefined
      ? (-enlargement * ahead) / radius
      : Math.tan(Math.max(-steepest, Math.min(steepest, enlargement * attack)));
  // The parabola that is lowest there and has this slope at the ball; of two that do not go together, as bent as usual.
  const fitting = -slope / (2 * lowest);
  const bend = fitting > 0 && Number.isFinite(fitting) ? fitting : enlargement / (200 * arc.unit * radius);
  const atBall = slope > 0 ? meets.up : meets.down;
  const bottom = atBall - bend * lowest ** 2;
  return { lowest, height: (along: number): number => bottom + bend * (along - lowest) ** 2 };
}

/** The head's way over the ground, the target to the right (to the left for a left-handed player, as seen face-on). */
export function ArcAndGround({
  analysis,
  at,
  kind,
  enlargement,
  theme,
}: StrikeProps & { readonly enlargement: number }): Picture {
  const hand = analysis.subject.student?.document.hand?.value;
  const sign = hand === 'left' ? -1 : 1;
  const way = wayIn(analysis, enlargement);
  const colour = kind === 'aim' ? theme.goal : theme.ink;
  const place = (along: number): Place => ({ x: at.x + sign * along, y: at.y - way!.height(along) });
  const steps = Array.from({ length: 2 * arc.side + 1 }, (_, i) => i - arc.side);
  return (
    <g>
      <path d={`M ${at.x - 62} ${at.y} L ${at.x + 62} ${at.y}`} stroke={theme.soft} stroke-width="1.6" />
      {way && (
        <>
          <path
            d={lineThrough(steps.filter((along) => way.height(along) <= arc.height).map(place))}
            stroke={colour}
            stroke-width="2.4"
            data-part="way"
          />
          <circle
            cx={fixed(place(way.lowest).x)}
            cy={fixed(place(way.lowest).y)}
            r="4"
            fill={colour}
            data-part="low-point"
          />
        </>
      )}
      <circle cx={at.x} cy={at.y - 9} r="8" fill={theme.paper} stroke={theme.ink} stroke-width="1.4" />
    </g>
  );
}

/** For what nobody can see in a picture: a line of what is usual, with the number on it. */
export function Scale({
  quantity,
  at,
  theme,
  kind,
  value,
  to,
}: Omit<StrikeProps, 'analysis'> & { readonly value: number | undefined; readonly to?: number }): Picture {
  const { min, max } = quantity.practice ?? quantity.bounds;
  const known = [value, to].filter((one): one is number => one !== undefined && Number.isFinite(one));
  const [low, high] = [Math.min(min, ...known), Math.max(max, ...known)];
  const x = (one: number): number => at.x - 66 + (132 * (one - low)) / (high - low || 1);
  const colour = kind === 'aim' ? theme.goal : theme.ink;
  return (
    <g>
      <path d={`M ${at.x - 66} ${at.y} L ${at.x + 66} ${at.y}`} stroke={theme.faint} stroke-width="6" />
      {value !== undefined && to !== undefined && to !== value && (
        <path d={`M ${fixed(x(value))} ${at.y} L ${fixed(x(to))} ${at.y}`} stroke={colour} stroke-width="6" />
      )}
      {value !== undefined && (
        <circle cx={fixed(x((value + (to ?? value)) / 2))} cy={at.y} r="7" fill={colour} />
      )}
    </g>
  );
}
