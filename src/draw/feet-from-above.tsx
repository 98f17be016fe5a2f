// The feet and the ball from above, to the scale of the figure over them: stance, flare, and how the pressure is shared; knows no body.
import type { WindowStanding } from '../judgement/template.ts';
import type { Value } from '../model/value.ts';
import type { Anchor } from '../physics/pose-anchors.ts';
import { vector, type Vector } from '../physics/vector.ts';
import type { PoseKey } from '../physics/pose-readings.ts';
import type { Stand } from './figure-pose.ts';
import { fixed, lineThrough, type Place } from './geometry.ts';
import { kindOf } from './known.ts';
import { closedThrough } from './outline.ts';
import { areaStyle, lineStyle, type Picture } from './picture.tsx';
import type { Theme } from './theme.ts';

/** From above, with the target where it is face-on and the ball nearest the reader. */
export interface Plan {
  readonly see: (at: Vector) => Place;
  readonly scale: number;
}

export function planOf(
  { hand }: Stand,
  { origin, scale }: { readonly origin: Place; readonly scale: number },
): Plan {
  const sign = hand === 'left' ? -1 : 1;
  return {
    see: ({ x, y }) => ({ x: origin.x + sign * scale * x, y: origin.y - sign * scale * y }),
    scale,
  };
}

/** How far from the ball the heels reach, m. */
export function depthOfFeet({ pose: { at }, stature }: Stand): number {
  return at.toeLine + 0.165 * stature;
}

/** Half the breadth of a shoe over its length, at shares from the heel to the toe; the inside is straighter. Judgement. */
const sole: readonly (readonly [along: number, inside: number, outside: number])[] = [
  [0, 0.06, 0.06],
  [0.06, 0.115, 0.115],
  [0.2, 0.13, 0.13],
  [0.45, 0.105, 0.14],
  [0.7, 0.165, 0.185],
  [0.88, 0.145, 0.14],
  [1, 0.05, 0.045],
];

const flareKeys = { lead: 'lead_foot_flare', trail: 'trail_foot_flare' } as const;

/** Dotted where the stance width alone is known: it says where the heels are, and neither how the feet turn nor where the ball lies. */
export function FeetFromAbove({
  stand,
  plan,
  pressure,
  pressureWindow,
  picture,
  theme,
}: {
  readonly stand: Stand;
  readonly plan: Plan;
  readonly pressure: Value | undefined;
  readonly pressureWindow: WindowStanding | undefined;
  readonly picture: string;
  readonly theme: Theme;
}): Picture {
  const { pose, values } = stand;
  const { face_on: anchors } = pose.anchors;
  const share = pressure && Math.min(1, Math.max(0, pressure.value));
  const ball = plan.see(vector(0, 0, 0));
  const edges = pressureWindow?.edges;
  return (
    <g data-part="feet-from-above">
      {(['lead', 'trail'] as const).map((side) => {
        const part = side === 'lead' ? share : share === undefined ? undefined : 1 - share;
        return (
          <g
            key={side}
            data-part={`${side}-sole`}
            data-id={values.get(flareKeys[side])?.id}
            data-angle={fixed(flareOf(stand, side))}
          >
            <Sole
              {...{ stand, side, plan, theme }}
              anchor={
                values.has(flareKeys[side]) ? anchors[side === 'lead' ? 'leadFoot' : 'trailFoot'] : 'guessed'
              }
            />
            {side === 'lead' && edges && (
              <path
                d={soleBetween(stand, side, plan, Math.max(0, edges.from), Math.min(1, edges.to))}
                {...areaStyle('taught', picture, theme)}
                data-window="lead_pressure"
              />
            )}
            {part !== undefined && part > 0.005 && (
              <path
                d={soleBetween(stand, side, plan, 0, part)}
                fill={pressure?.kind === 'entered' ? theme.entered : theme.expected}
                fill-opacity="0.5"
                data-id={pressure?.id}
                data-part="pressure"
                data-share={fixed(part)}
              />
            )}
          </g>
        );
      })}
      <TurnLine {...{ stand, plan, theme }} keys={['shoulder_turn', 'shoulder_direction']} of="Shoulder" />
      <TurnLine {...{ stand, plan, theme }} keys={['pelvis_turn']} of="Hip" />
      <circle
        cx={fixed(ball.x)}
        cy={fixed(ball.y)}
        r={fixed(Math.max(3, 0.0214 * plan.scale))}
        fill={theme.paper}
        {...(values.has('ball_position') ? { stroke: theme.ink } : lineStyle('guessed', theme))}
        stroke-width="1.4"
        data-part="ball-from-above"
      />
    </g>
  );
}

/** The line through both shoulders or both hips, where its turn is known; the lead end is filled. */
function TurnLine({
  stand,
  plan,
  keys,
  of,
  theme,
}: {
  readonly stand: Stand;
  readonly plan: Plan;
  readonly keys: readonly PoseKey[];
  readonly of: 'Shoulder' | 'Hip';
  readonly theme: Theme;
}): Picture | null {
  const value = keys.map((key) => stand.values.get(key)).find((one) => one !== undefined);
  if (value === undefined) return null;
  const { joints } = stand.pose.skeleton;
  const [trail, lead] = [plan.see(joints[`trail${of}`]), plan.see(joints[`lead${of}`])];
  const style = lineStyle(kindOf(value), theme);
  return (
    <g data-id={value.id} data-part="turn">
      <path d={lineThrough([trail, lead])} {...style} />
      <circle
        cx={fixed(trail.x)}
        cy={fixed(trail.y)}
        r="3"
        {...style}
        stroke-dasharray="none"
        stroke-width="1.4"
        fill={theme.paper}
      />
      <circle cx={fixed(lead.x)} cy={fixed(lead.y)} r="3.4" fill={theme[kindOf(value)]} />
    </g>
  );
}

function Sole({
  stand,
  side,
  plan,
  anchor,
  theme,
}: {
  readonly stand: Stand;
  readonly side: 'lead' | 'trail';
  readonly plan: Plan;
  readonly anchor: Anchor;
  readonly theme: Theme;
}): Picture {
  const { heel, toe } = lineOf(stand, side);
  return (
    <g>
      <path
        d={closedThrough(rim(stand, side, plan, 0, 1))}
        fill={theme.paper}
        {...lineStyle(anchor, theme)}
        stroke-width="1.5"
      />
      <path
        d={lineThrough([plan.see(heel), plan.see(toe)])}
        stroke={theme.faint}
        stroke-width="0.8"
        data-part="foot-line"
      />
    </g>
  );
}

/** From the back of the heel to the tip of the toes; shorter from above where the heel is lifted. */
function lineOf({ pose }: Stand, side: 'lead' | 'trail'): { readonly heel: Vector; readonly toe: Vector } {
  const { joints } = pose.skeleton;
  const [heel, toe] = [joints[`${side}Heel`], joints[`${side}Toe`]];
  return { heel: vector(heel.x, heel.y, 0), toe: vector(toe.x, toe.y, 0) };
}

/** Degrees out from square to the target line. */
function flareOf({ pose: { footing } }: Stand, side: 'lead' | 'trail'): number {
  return ((side === 'lead' ? footing.leadFlare : footing.trailFlare) * 180) / Math.PI;
}

function soleBetween(stand: Stand, side: 'lead' | 'trail', plan: Plan, from: number, to: number): string {
  return `${lineThrough(rim(stand, side, plan, from, to))} Z`;
}

function rim(stand: Stand, side: 'lead' | 'trail', plan: Plan, from: number, to: number): readonly Place[] {
  const { heel, toe } = lineOf(stand, side);
  const way = { x: toe.x - heel.x, y: toe.y - heel.y };
  const inward = (side === 'lead' ? -1 : 1) * (stand.hand === 'left' ? -1 : 1);
  const shares = [from, ...sole.map(([along]) => along).filter((one) => one > from && one < to), to];
  const place = (along: number, off: number): Place =>
    plan.see(
      vector(heel.x + along * way.x - inward * off * way.y, heel.y + along * way.y + inward * off * way.x, 0),
    );
  return [
    ...shares.map((along) => place(along, breadthAt(along, 1))),
    ...shares.toReversed().map((along) => place(along, -breadthAt(along, 2))),
  ];
}

/** Between two levels along the sole, on a straight line. */
function breadthAt(along: number, which: 1 | 2): number {
  const next = Math.max(
    1,
    sole.findIndex(([one]) => one >= along),
  );
  const [a, b] = [sole[next - 1]!, sole[next]!];
  const share = (along - a[0]) / (b[0] - a[0]);
  return a[which] + share * (b[which] - a[which]);
}
