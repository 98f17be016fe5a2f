// The strike seen from above: target line, path, face, start and curve, and the windows of face to path; draws what is known and says what is not.
import type { Analysis } from '../analysis/result.ts';
import { flightWindowsOf } from '../analysis/windows.ts';
import type { Interval } from '../model/windows.ts';
import type { Value } from '../model/value.ts';
import { fixed, lineThrough, ringSector, toward, type Place } from './geometry.ts';
import { IntervalRows, rowsHeight, type IntervalRow } from './interval-rows.tsx';
import { kindOf, rowOf, valueOf, windowRow, wordsOf } from './known.ts';
import { wrapped } from './lettering.ts';
import { Callouts, Lines, linesHeight, notKnown, type Callout } from './label.tsx';
import { areaStyle, Frame, lineStyle, type Picture } from './picture.tsx';
import { firstGoalWindows, strikeNotes } from './strike-above-notes.ts';
import { Feet, Protractor } from './strike-ground.tsx';
import type { Theme } from './theme.ts';

const name = 'strike-from-above';
const width = 540;
const field = { width, height: 404 };
const ball: Place = { x: 270, y: 318 };
const columns = { left: 140, right: 400, width: 126 };
/** Radii of what is drawn round the ball, in units of the picture; different, so that labels at the ends keep apart. */
const reach = {
  back: 62,
  path: 172,
  face: 192,
  bar: 24,
  start: 212,
  allowed: [226, 236],
  goal: [244, 254],
  scale: 268,
} as const;
/** Of a window that goes farther round than anybody looks, rad from the target line. */
const widest = 0.6;
/** Below the drawing. */
const rowsAt = { x: 16, y: field.height, labelWidth: 190, scaleWidth: width - 222 };

const rowIds = ['delivery.path', 'delivery.face', 'delivery.face_to_path', 'flight.start'] as const;

export function StrikeFromAbove({
  analysis,
  theme,
}: {
  readonly analysis: Analysis;
  readonly theme: Theme;
}): Picture {
  const { student } = analysis.subject;
  const [path, face, start, curve, carry] = [
    'delivery.path',
    'delivery.face',
    'flight.start',
    'flight.curve',
    'flight.carry',
  ].map((id) => valueOf(analysis, id));
  const bands = path ? bandsOf(analysis, path) : [];
  const rows = rowsOf(analysis);
  const missing = notKnown(
    [...(path ? [] : ['path']), ...(face ? [] : ['face']), ...(start ? [] : ['start of the ball'])],
    width - 2 * rowsAt.x,
  );
  const notes = strikeNotes(analysis);
  const below = [...notes.flatMap((note) => wrapped(note, width - 2 * rowsAt.x, 11, 4)), ...missing];
  const height = rowsAt.y + (rows.length > 0 ? rowsHeight(rows) : 0) + 20 + linesHeight(below);
  return (
    <Frame
      name={name}
      title="The strike from above"
      words={[wordsOf(rows, missingOf(path, face, start)), ...notes.map((note) => `${note}.`)].join(' ')}
      width={width}
      height={height}
      theme={theme}
    >
      <clipPath id={`${name}-field`}>
        <rect x="0" y="0" width={field.width} height={field.height} />
      </clipPath>
      <Protractor centre={ball} radius={reach.scale} theme={theme} />
      <path
        d={lineThrough([toward(ball, 0, -reach.back), toward(ball, 0, reach.scale)])}
        {...lineStyle('rule', theme)}
      />
      <Feet hand={student?.document.hand?.value} ball={ball} theme={theme} />
      <g clip-path={`url(#${name}-field)`}>
        {bands.map(({ of, sector, radii }) => (
          <path
            key={of}
            d={ringSector(ball, [sector.min, sector.max], radii)}
            {...areaStyle(of, name, theme)}
            data-id="delivery.face_to_path"
            data-window={of === 'goal' ? 'goal' : 'flight'}
          />
        ))}
        {path && <Spread value={path} radius={reach.path} theme={theme} />}
        {face && <Spread value={face} radius={reach.face} theme={theme} />}
        {path && <Path value={path} theme={theme} />}
        {face && <Face value={face} theme={theme} />}
        {start && <Start start={start} curve={curve} carry={carry} theme={theme} />}
      </g>
      <circle cx={ball.x} cy={ball.y} r="7" fill={theme.paper} stroke={theme.ink} stroke-width="1.5" />
      <Callouts
        callouts={[
          ...(path ? [calloutOf('path', path.value, reach.path)] : []),
          ...(face ? [calloutOf('face', face.value, reach.face)] : []),
          ...(start ? [calloutOf('ball', landingOf(start, curve, carry), reach.start)] : []),
          ...bands.map(({ of, sector, radii }) => bandCallout(of, sector, radii)),
        ]}
        {...columns}
        from={24}
        to={field.height - 20}
        theme={theme}
      />
      <IntervalRows
        rows={rows}
        tick={(value) => `${value}°`}
        ends={['left', 'right']}
        x={rowsAt.x}
        y={rowsAt.y}
        labelWidth={rowsAt.labelWidth}
        scaleWidth={rowsAt.scaleWidth}
        picture={name}
        theme={theme}
      />
      <Lines lines={below} x={rowsAt.x} y={height - linesHeight(below) + 6} theme={theme} />
    </Frame>
  );
}

function missingOf(path: Value | undefined, face: Value | undefined, start: Value | undefined): string[] {
  return [...(path ? [] : ['path']), ...(face ? [] : ['face']), ...(start ? [] : ['start of the ball'])];
}

function rowsOf(analysis: Analysis): readonly IntervalRow[] {
  const { registry } = analysis.subject;
  const allowed = flightWindowsOf(analysis);
  const goal = firstGoalWindows(analysis);
  return rowIds.flatMap((id) => {
    const value = valueOf(analysis, id);
    const isWindowed = id !== 'flight.start';
    const [flights, goals] = isWindowed
      ? [id === 'delivery.face_to_path' ? allowed.get(id) : undefined, goal?.get(id)]
      : [undefined, undefined];
    const about = aboutWindow[id];
    return [
      ...(value ? [rowOf(value, 'deg', registry)] : []),
      ...(flights ? [windowRow('allowed', `${about}: flight allows`, id, flights, 'deg', registry)] : []),
      ...(goals ? [windowRow('goal', `${about}: goal asks`, id, goals, 'deg', registry)] : []),
    ];
  });
}

const aboutWindow: Readonly<Record<(typeof rowIds)[number], string>> = {
  'delivery.path': 'Path',
  'delivery.face': 'Face',
  'delivery.face_to_path': 'Face to path',
  'flight.start': 'Start',
};

interface Band {
  readonly of: 'allowed' | 'goal';
  readonly sector: Interval;
  readonly radii: readonly [number, number];
}

/** Where the face has to point, by this path. */
function bandsOf(analysis: Analysis, { value: path }: Value): readonly Band[] {
  const allowed = flightWindowsOf(analysis).get('delivery.face_to_path');
  const goal = firstGoalWindows(analysis)?.get('delivery.face_to_path');
  const sectorOf = ({ min, max }: Interval): Interval => {
    const [from, to] = [Math.max(-widest, path + min), Math.min(widest, path + max)];
    return { min: Math.min(from, widest), max: Math.max(to, -widest) };
  };
  return [
    ...(allowed ? [{ of: 'allowed' as const, sector: sectorOf(allowed), radii: reach.allowed }] : []),
    ...(goal ? [{ of: 'goal' as const, sector: sectorOf(goal), radii: reach.goal }] : []),
  ];
}

function calloutOf(text: string, direction: number, radius: number): Callout {
  const end = toward(ball, direction, radius);
  return {
    text,
    end: {
      x: Math.max(columns.left + 12, Math.min(columns.right - 12, end.x)),
      y: Math.max(0, Math.min(field.height, end.y)),
    },
    side: end.x < ball.x ? 'left' : 'right',
  };
}

function bandCallout(of: Band['of'], { min, max }: Interval, [inner, outer]: Band['radii']): Callout {
  const text = of === 'goal' ? 'goal asks' : 'flight allows';
  const edge = min + max < 0 ? min : max;
  return { ...calloutOf(text, edge, (inner + outer) / 2), side: min + max < 0 ? 'left' : 'right' };
}

/** An arrow through the ball. */
function Path({ value, theme }: { readonly value: Value; readonly theme: Theme }): Picture {
  const style = lineStyle(kindOf(value), theme);
  const end = toward(ball, value.value, reach.path);
  return (
    <g data-id={value.id} data-angle={fixed(degrees(value.value))}>
      <path d={lineThrough([toward(ball, value.value, -reach.back), end])} {...style} />
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
  const half = Math.min(u, widest);
  return (
    <path
      d={ringSector(ball, [value - half, value + half], [0, radius])}
      fill={theme.faint}
      fill-opacity="0.4"
    />
  );
}

/** A bar across its own direction, and the line that it points along. */
function Face({ value, theme }: { readonly value: Value; readonly theme: Theme }): Picture {
  const style = lineStyle(kindOf(value), theme);
  const middle = toward(ball, value.value, -10);
  const ends = [-1, 1].map((side) => toward(middle, value.value + (side * Math.PI) / 2, reach.bar));
  return (
    <g data-id={value.id} data-angle={fixed(degrees(value.value))}>
      <path d={lineThrough(ends)} {...style} stroke-width="5" stroke-dasharray="none" />
      <path d={lineThrough([middle, toward(ball, value.value, reach.face)])} {...style} stroke-width="1.2" />
    </g>
  );
}

/** Leaves the ball along its start and arrives where it comes down: in the direction start + asin(curve / carry). */
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
  const end = toward(ball, landingOf(start, curve, carry), reach.start);
  const bend = toward(ball, start.value, reach.start / 2);
  return (
    <g data-id={start.id} data-angle={fixed(degrees(start.value))}>
      <path
        d={`M ${ball.x} ${ball.y} Q ${fixed(bend.x)} ${fixed(bend.y)} ${fixed(end.x)} ${fixed(end.y)}`}
        {...lineStyle(kindOf(start), theme)}
        stroke={theme.ink}
        stroke-width="1.4"
      />
      <circle cx={fixed(end.x)} cy={fixed(end.y)} r="3.5" fill={theme.ink} />
    </g>
  );
}

function landingOf(start: Value, curve: Value | undefined, carry: Value | undefined): number {
  const share = curve && carry && carry.value > 0 ? curve.value / carry.value : 0;
  return start.value + Math.asin(Math.max(-1, Math.min(1, share)));
}

function degrees(angle: number): number {
  return (angle * 180) / Math.PI;
}
