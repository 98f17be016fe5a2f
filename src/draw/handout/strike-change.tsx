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
  const angles = analyses.flatMap((one) => (one === undefined ? [] : Object.values(anglesIn(one))));
  return angles.every((angle) => angle === undefined || Math.abs(angle) <= small) ? larger : 1;
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

/** The head's way over the ground, the target to the right (to the left for a left-handed player, as seen face-on). */
export function ArcAndGround({ analysis, at, kind, theme }: StrikeProps): Picture {
  const hand = analysis.subject.student?.document.hand?.value;
  const sign = hand === 'left' ? -1 : 1;
  const low = valueOf(analysis, 'delivery.low_point.ahead')?.value;
  const attack = valueOf(analysis, 'delivery.attack')?.value;
  // 4 cm ahead are 20 units; without a low point the attack stands for it, as 1 deg for 1 cm.
  const cm = low === undefined ? -((attack ?? 0) * 180) / Math.PI : low * 100;
  const x = at.x + sign * 5 * Math.max(-11, Math.min(11, cm));
  const colour = kind === 'aim' ? theme.goal : theme.ink;
  return (
    <g>
      <path d={`M ${at.x - 72} ${at.y} L ${at.x + 72} ${at.y}`} stroke={theme.soft} stroke-width="1.6" />
      <path
        d={`M ${fixed(x - 66)} ${at.y - 30} Q ${fixed(x)} ${at.y + 38} ${fixed(x + 66)} ${at.y - 30}`}
        stroke={colour}
        stroke-width="2.4"
      />
      <circle cx={fixed(x)} cy={fixed(at.y + 4)} r="4" fill={colour} data-part="low-point" />
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
