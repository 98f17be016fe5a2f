// The flight seen from above, the target to the right: its way, where it came down and where it should, shots and their spread; to scale.
import { curveMonotoneX, line } from 'd3-shape';
import { factor95, type Landing, type Scene, type Spot, type Zone } from './flight-scene.ts';
import { fixed, lineThrough, type Place } from './geometry.ts';
import { Cross, Dot, Ring } from './key.tsx';
import { Label } from './label.tsx';
import { widthOf } from './lettering.ts';
import { areaStyle, lineStyle, type Picture } from './picture.tsx';
import type { Theme } from './theme.ts';

export interface FromAboveProps {
  readonly scene: Scene;
  readonly ball: Place;
  /** Units of the picture for a metre. */
  readonly scale: number;
  /** How far the view goes ahead of the ball, in units of the picture. */
  readonly reach: number;
  readonly picture: string;
  /** Stands at the computed place, where there are words for it. */
  readonly computedName?: string | undefined;
  readonly theme: Theme;
}

type At = (spot: Spot) => Place;

export function FromAbove({
  scene,
  ball,
  scale,
  reach,
  picture,
  computedName,
  theme,
}: FromAboveProps): Picture {
  const { path, recorded, expected, start, shots, ellipse, goals } = scene;
  const at: At = ({ ahead, right }) => ({ x: ball.x + ahead * scale, y: ball.y + right * scale });
  const far = reach / scale;
  const isWayKnown = recorded && start?.kind === 'entered';
  return (
    <g data-part="above">
      {goals.map((goal, i) => (
        <Wanted key={i} {...{ goal, at, far, picture, theme }} />
      ))}
      {goals.map((goal, i) => (
        <NameOfWanted key={i} {...{ goal, at, far, theme }} />
      ))}
      <path d={lineThrough([ball, { x: ball.x + reach + 16, y: ball.y }])} {...lineStyle('rule', theme)} />
      {path && <path d={wayOf(path, at)} {...lineStyle('expected', theme)} data-part="above-path" />}
      {expected && <Blur spot={expected} at={at} scale={scale} theme={theme} />}
      {isWayKnown && <Way landing={recorded} start={start.value} ball={ball} at={at} theme={theme} />}
      {ellipse && (
        <ellipse
          cx={fixed(at(ellipse).x)}
          cy={fixed(at(ellipse).y)}
          rx={fixed(factor95 * ellipse.long * scale)}
          ry={fixed(factor95 * ellipse.short * scale)}
          transform={`rotate(${fixed((ellipse.direction * 180) / Math.PI)} ${fixed(at(ellipse).x)} ${fixed(at(ellipse).y)})`}
          stroke={theme.ink}
          stroke-width="1.2"
          data-part="spread"
        />
      )}
      {shots.map((shot, i) =>
        shot.isFar ? (
          <Ring key={i} at={at(shot)} theme={theme} />
        ) : (
          <Cross key={i} at={at(shot)} theme={theme} />
        ),
      )}
      {recorded && <Recorded landing={recorded} at={at} scale={scale} theme={theme} />}
      {expected && computedName !== undefined && (
        <ComputedName {...{ at, scale, theme }} text={computedName} spot={expected} other={recorded} />
      )}
      <circle
        cx={ball.x}
        cy={fixed(ball.y)}
        r="3.5"
        fill={theme.paper}
        stroke={theme.ink}
        stroke-width="1.4"
      />
      <Label
        at={{ x: ball.x + reach + 16, y: ball.y - 6 }}
        text="target →"
        anchor="end"
        isBoxed
        theme={theme}
      />
    </g>
  );
}

interface WantedProps {
  readonly goal: Zone;
  readonly at: At;
  /** How far the view goes, m. */
  readonly far: number;
}

/** Where the goal wants the ball; what it leaves open goes as far as the view. */
function cornersOf({ goal: { carry, finish }, at, far }: WantedProps): readonly [Place, Place] {
  return [
    at({ ahead: carry?.min ?? 0, right: finish?.min ?? -far }),
    at({ ahead: carry?.max ?? far, right: finish?.max ?? far }),
  ];
}

function Wanted({
  picture,
  theme,
  ...props
}: WantedProps & { readonly picture: string; readonly theme: Theme }): Picture {
  const [from, to] = cornersOf(props);
  const { carry, finish } = props.goal;
  return (
    <rect
      x={fixed(from.x)}
      y={fixed(from.y)}
      width={fixed(Math.max(2, to.x - from.x))}
      height={fixed(Math.max(2, to.y - from.y))}
      {...areaStyle('goal', picture, theme)}
      stroke-dasharray={carry && finish ? 'none' : '2 3'}
      data-part="goal"
    />
  );
}

function NameOfWanted({ theme, ...props }: WantedProps & { readonly theme: Theme }): Picture | null {
  const { goal, at } = props;
  if (goal.name === undefined) return null;
  const [from, to] = cornersOf(props);
  const y = goal.finish ? from.y - 4 : at({ ahead: 0, right: 0 }).y - 18;
  return (
    <Label
      at={{ x: (from.x + to.x) / 2, y }}
      text={goal.name}
      anchor="middle"
      tone="goal"
      isBoxed
      theme={theme}
    />
  );
}

/** What is computed of the landing and how sure that is: 95 %, carry and finish taken as independent. */
function Blur({
  spot,
  at,
  scale,
  theme,
}: {
  readonly spot: Landing;
  readonly at: At;
  readonly scale: number;
  readonly theme: Theme;
}): Picture {
  const { x, y } = at(spot);
  const [rx, ry] = [spot.uAhead, spot.uRight].map((u) => factor95 * u * scale);
  return (
    <g data-id={spot.id} data-part="expected-landing">
      {rx! > 0 && ry! > 0 && (
        <ellipse
          cx={fixed(x)}
          cy={fixed(y)}
          rx={fixed(rx!)}
          ry={fixed(ry!)}
          fill={theme.expected}
          fill-opacity="0.1"
          {...lineStyle('expected', theme)}
          stroke-width="1.2"
        />
      )}
      <Dot kind="expected" at={{ x, y }} theme={theme} />
    </g>
  );
}

/** However wide an ellipse is, its name stands no further from its middle, in units of the picture. */
const farthestName = 34;

/** Outside of the ellipse, on the side away from the recorded place. */
function ComputedName({
  text,
  spot,
  other,
  at,
  scale,
  theme,
}: {
  readonly text: string;
  readonly spot: Landing;
  readonly other: Spot | undefined;
  readonly at: At;
  readonly scale: number;
  readonly theme: Theme;
}): Picture {
  const { x, y } = at(spot);
  const half = Math.min(farthestName, Math.max(8, factor95 * spot.uRight * scale));
  const isAbove = other !== undefined && at(other).y > y;
  const place = {
    x: Math.max(x + 6, at({ ahead: 0, right: 0 }).x + widthOf(text, 11)),
    y: isAbove ? y - half - 4 : y + half + 12,
  };
  return <Label at={place} text={text} anchor="end" tone="expected" isBoxed theme={theme} />;
}

/** One standard uncertainty along and across. */
function Recorded({
  landing,
  at,
  scale,
  theme,
}: {
  readonly landing: Landing;
  readonly at: At;
  readonly scale: number;
  readonly theme: Theme;
}): Picture {
  const { x, y } = at(landing);
  const [along, across] = [landing.uAhead * scale, landing.uRight * scale];
  return (
    <g data-id={landing.id} data-part="landing">
      <path
        d={`${lineThrough([
          { x: x - along, y },
          { x: x + along, y },
        ])} ${lineThrough([
          { x, y: y - across },
          { x, y: y + across },
        ])}`}
        {...lineStyle('entered', theme)}
        stroke-width="1.6"
      />
      <Dot kind="entered" at={{ x, y }} theme={theme} />
    </g>
  );
}

/** From a recorded start to a recorded landing: leaves the ball in the one's direction. */
function Way({
  landing,
  start,
  ball,
  at,
  theme,
}: {
  readonly landing: Landing;
  readonly start: number;
  readonly ball: Place;
  readonly at: At;
  readonly theme: Theme;
}): Picture {
  const half = Math.hypot(landing.ahead, landing.right) / 2;
  const bend = at({ ahead: half * Math.cos(start), right: half * Math.sin(start) });
  const end = at(landing);
  return (
    <path
      d={`M ${fixed(ball.x)} ${fixed(ball.y)} Q ${fixed(bend.x)} ${fixed(bend.y)} ${fixed(end.x)} ${fixed(end.y)}`}
      {...lineStyle('entered', theme)}
      stroke-width="1.6"
      data-id="flight.start"
    />
  );
}

function wayOf(path: readonly Spot[], at: At): string {
  const way = line<Spot>()
    .x((spot) => at(spot).x)
    .y((spot) => at(spot).y)
    .curve(curveMonotoneX)
    .digits(2);
  return way(path) ?? '';
}
