// The strike seen from above: target line, path, face, start and curve, and the windows of the face; draws what is known and says what is not.
import type { Analysis } from '../analysis/result.ts';
import { flightWindowsOf, goalWindowsOf } from '../analysis/windows.ts';
import type { Interval } from '../model/windows.ts';
import type { Value } from '../model/value.ts';
import { fixed, lineThrough, ringSector, toward, type Place } from './geometry.ts';
import { IntervalRows, rowsHeight } from './interval-rows.tsx';
import { kindOf, rowOf, valueOf, windowRow, wordsOf } from './known.ts';
import { areaStyle, Frame, lineStyle, type Picture } from './picture.tsx';
import type { Theme } from './theme.ts';

const name = 'strike-from-above';
const ball: Place = { x: 96, y: 262 };
const field = { width: 192, height: 372 };
/** Radii of what is drawn round the ball, in units of the picture. */
const reach = { back: 90, ahead: 150, face: 26, start: 215, allowed: [158, 172], goal: [180, 194] } as const;

export function StrikeFromAbove({
  analysis,
  theme,
}: {
  readonly analysis: Analysis;
  readonly theme: Theme;
}): Picture {
  const { registry } = analysis.subject;
  const [path, face, faceToPath, start, curve, carry] = [
    'delivery.path',
    'delivery.face',
    'delivery.face_to_path',
    'flight.start',
    'flight.curve',
    'flight.carry',
  ].map((id) => valueOf(analysis, id));
  const allowed = flightWindowsOf(analysis).get('delivery.face');
  const goal = goalWindow(analysis);
  const rows = [
    ...[path, face, faceToPath, start].flatMap((value) =>
      value === undefined ? [] : [rowOf(value, 'deg', registry)],
    ),
    ...(allowed
      ? [windowRow('allowed', 'The flight allows a face of', 'delivery.face', allowed, 'deg', registry)]
      : []),
    ...(goal
      ? [windowRow('goal', 'The goal asks for a face of', 'delivery.face', goal, 'deg', registry)]
      : []),
  ];
  const missing = [
    ...(path ? [] : ['path']),
    ...(face ? [] : ['face']),
    ...(start ? [] : ['start of the ball']),
  ];
  const height = Math.max(field.height, rowsHeight(rows) + 60);
  return (
    <Frame
      name={name}
      title="The strike from above"
      words={wordsOf(rows, missing)}
      width={field.width + 360}
      height={height}
      theme={theme}
    >
      <path
        d={lineThrough([toward(ball, 0, -reach.back), toward(ball, 0, reach.start + 15)])}
        {...lineStyle('rule', theme)}
      />
      <text x={ball.x} y={ball.y - reach.start - 20} text-anchor="middle" fill={theme.soft} font-size="11">
        target
      </text>
      {allowed && (
        <path
          d={ringSector(ball, [allowed.min, allowed.max], reach.allowed)}
          {...areaStyle('allowed', name, theme)}
          data-window="flight"
        />
      )}
      {goal && (
        <path
          d={ringSector(ball, [goal.min, goal.max], reach.goal)}
          {...areaStyle('goal', name, theme)}
          data-window="goal"
        />
      )}
      {path && <Direction value={path} from={-reach.back} to={reach.ahead} theme={theme} />}
      {face && <Face value={face} theme={theme} />}
      {start && <Start start={start} curve={curve} carry={carry} theme={theme} />}
      <circle cx={ball.x} cy={ball.y} r="7" fill={theme.paper} stroke={theme.ink} stroke-width="1.5" />
      <IntervalRows
        rows={rows}
        tick={(value) => `${value}°`}
        ends={['left', 'right']}
        x={field.width}
        y={16}
        labelWidth={170}
        scaleWidth={170}
        picture={name}
        theme={theme}
      />
      {missing.length > 0 && (
        <text x={field.width} y={height - 12} fill={theme.soft} font-size="11">
          {`Not known: ${missing.join(', ')}`}
        </text>
      )}
    </Frame>
  );
}

function Direction({
  value,
  from,
  to,
  theme,
}: {
  readonly value: Value;
  readonly from: number;
  readonly to: number;
  readonly theme: Theme;
}): Picture {
  const style = lineStyle(kindOf(value), theme);
  const end = toward(ball, value.value, to);
  return (
    <g data-id={value.id} data-angle={fixed(degrees(value.value))}>
      <Spread value={value} radius={to} theme={theme} />
      <path d={lineThrough([toward(ball, value.value, from), end])} {...style} />
      <path
        d={lineThrough([toward(end, value.value + 2.7, 10), end, toward(end, value.value - 2.7, 10)])}
        {...style}
        stroke-dasharray="none"
      />
    </g>
  );
}

/** One standard uncertainty to each side. */
function Spread({
  value: { value, u },
  radius,
  theme,
}: {
  readonly value: Value;
  readonly radius: number;
  readonly theme: Theme;
}): Picture | null {
  if (u === null || !(u > 0)) return null;
  return (
    <path d={ringSector(ball, [value - u, value + u], [0, radius])} fill={theme.faint} fill-opacity="0.45" />
  );
}

/** A bar across its own direction, and the line that it points along. */
function Face({ value, theme }: { readonly value: Value; readonly theme: Theme }): Picture {
  const style = lineStyle(kindOf(value), theme);
  const middle = toward(ball, value.value, -8);
  const ends = [-1, 1].map((side) => toward(middle, value.value + (side * Math.PI) / 2, reach.face));
  return (
    <g data-id={value.id} data-angle={fixed(degrees(value.value))}>
      <path d={lineThrough(ends)} {...style} stroke-width="5" stroke-dasharray="none" />
      <path d={lineThrough([middle, toward(ball, value.value, reach.ahead)])} {...style} stroke-width="1.2" />
    </g>
  );
}

/** Leaves the ball along its start and arrives in the direction in which it comes down: start + asin(curve / carry). */
function Start({
  start,
  curve,
  carry,
  theme,
}: {
  readonly start: Value;
  readonly curve: Value | undefined;
  readonly carry: Value | undefined;
  readonly theme: Theme;
}): Picture {
  const share = curve && carry && carry.value > 0 ? curve.value / carry.value : 0;
  const end = toward(ball, start.value + Math.asin(Math.max(-1, Math.min(1, share))), reach.start);
  const bend = toward(ball, start.value, reach.start / 2);
  return (
    <path
      d={`M ${ball.x} ${ball.y} Q ${fixed(bend.x)} ${fixed(bend.y)} ${fixed(end.x)} ${fixed(end.y)}`}
      {...lineStyle(kindOf(start), theme)}
      stroke={theme.ink}
      stroke-width="1.4"
      data-id={start.id}
      data-angle={fixed(degrees(start.value))}
    />
  );
}

function goalWindow(analysis: Analysis): Interval | undefined {
  const { document } = analysis;
  if (document.kind !== 'swing' || document.goals[0] === undefined) return undefined;
  return goalWindowsOf(analysis, document.goals[0]).get('delivery.face');
}

function degrees(angle: number): number {
  return (angle * 180) / Math.PI;
}
