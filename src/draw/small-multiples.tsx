// Where the balls of each lesson came down, one small picture a lesson, all to one scale; says so where a lesson does not tell.
import type { GoalSeries } from '../analysis/progress.ts';
import type { Lesson } from '../analysis/lessons.ts';
import { fixed } from './geometry.ts';
import { boxOf, cell, scalesFor, wantedAt, type LessonLandings, type Scales } from './landing-scales.ts';
import { carryAlone, landingsOf, type Landings } from './landings.ts';
import { counted } from '../measure/counted.ts';
import { areaStyle, Frame, type Picture } from './picture.tsx';
import type { Theme } from './theme.ts';

const edge = { left: 44, top: 28, bottom: 46 } as const;
const mostInRow = 6;

export interface SmallMultiplesProps {
  /** With a date, the oldest first. */
  readonly lessons: readonly Lesson[];
  /** What goals ask, among other things of carry and finish. */
  readonly goals: readonly GoalSeries[];
  readonly name: string;
  readonly theme: Theme;
}

/** Whether there is anything to draw. */
export function hasLandings(lessons: readonly Lesson[]): boolean {
  return lessons.some(
    ({ analysis }) => landingsOf(analysis) !== undefined || carryAlone(analysis) !== undefined,
  );
}

export function SmallMultiples({ lessons, goals, name, theme }: SmallMultiplesProps): Picture {
  const all = lessons.map((lesson): LessonLandings => ({
    lesson,
    landings: landingsOf(lesson.analysis),
    carry: carryAlone(lesson.analysis),
    zone: {
      carry: wantedAt(goals, 'flight.carry', lesson),
      finish: wantedAt(goals, 'flight.finish', lesson),
    },
  }));
  const scales = scalesFor(all);
  const columns = Math.max(1, Math.min(mostInRow, all.length));
  const rows = Math.max(1, Math.ceil(all.length / columns));
  const width = edge.left + columns * (cell.width + cell.gap);
  return (
    <Frame
      name={name}
      title="Where the balls came down, lesson by lesson"
      words={all.map(wordsOf).join(' ')}
      width={width}
      height={rows * (edge.top + cell.height + edge.bottom)}
      theme={theme}
    >
      {all.map((one, i) => (
        <g
          key={one.lesson.uri}
          transform={`translate(${edge.left + (i % columns) * (cell.width + cell.gap)} ${edge.top + Math.floor(i / columns) * (edge.top + cell.height + edge.bottom)})`}
          data-day={one.lesson.date}
        >
          <Cell
            {...one}
            withLabels={i % columns === 0 ? 'yes' : 'no'}
            scales={scales}
            name={name}
            theme={theme}
          />
        </g>
      ))}
    </Frame>
  );
}

function Cell({
  lesson,
  landings,
  carry,
  zone,
  withLabels,
  scales: { across, along, unit },
  name,
  theme,
}: LessonLandings & {
  readonly withLabels: 'yes' | 'no';
  readonly scales: Scales;
  readonly name: string;
  readonly theme: Theme;
}): Picture {
  const line = across(0);
  const wanted = boxOf(zone, across, along);
  return (
    <g>
      <text x={cell.width / 2} y="-10" text-anchor="middle" fill={theme.ink} font-weight="600" font-size="11">
        {lesson.date ?? ''}
      </text>
      {wanted && (
        <rect
          {...wanted}
          {...areaStyle('goal', name, theme)}
          stroke="none"
          fill-opacity="0.5"
          data-part="goal"
        />
      )}
      {along.ticks(4).map((value) => (
        <g key={value}>
          <path d={`M 0 ${fixed(along(value))} H ${cell.width}`} stroke={theme.faint} stroke-width="0.8" />
          {withLabels === 'yes' && (
            <text x="-6" y={fixed(along(value) + 3.5)} text-anchor="end" fill={theme.soft} font-size="10">
              {`${value} m`}
            </text>
          )}
        </g>
      ))}
      <rect width={cell.width} height={cell.height} stroke={theme.faint} rx="4" />
      {line > 0 && line < cell.width && (
        <path
          d={`M ${fixed(line)} ${cell.height} V 0`}
          stroke={theme.soft}
          stroke-dasharray="10 4 2 4"
          data-part="target-line"
        />
      )}
      {landings && <Marks landings={landings} across={across} along={along} unit={unit} theme={theme} />}
      {carry !== undefined && (
        <path
          d={`M 0 ${fixed(along(carry))} H ${cell.width}`}
          stroke={theme.entered}
          stroke-width="1.6"
          data-part="carry"
        />
      )}
      {sidesOf(across).map(({ value, text }) => (
        <g key={value}>
          <path d={`M ${fixed(across(value))} ${cell.height} v 4`} stroke={theme.soft} />
          <text
            x={fixed(across(value))}
            y={cell.height + 15}
            text-anchor="middle"
            fill={theme.soft}
            font-size="9"
            data-part="side"
          >
            {text}
          </text>
        </g>
      ))}
      <text x={cell.width / 2} y={cell.height + 31} text-anchor="middle" fill={theme.soft} font-size="10">
        {countWords({ landings, carry })}
      </text>
    </g>
  );
}

function Marks({
  landings: { places, ellipse },
  across,
  along,
  unit,
  theme,
}: Scales & { readonly landings: Landings; readonly theme: Theme }): Picture {
  const [x, y] = [fixed(across(ellipse.right)), fixed(along(ellipse.ahead))];
  const isOne = places.length === 1;
  return (
    <g>
      {places.map(({ right, ahead }, i) => (
        <circle
          key={i}
          cx={fixed(across(right))}
          cy={fixed(along(ahead))}
          r={isOne ? 4 : 2.6}
          fill={theme.entered}
          data-part="shot"
        />
      ))}
      <ellipse
        cx={x}
        cy={y}
        rx={fixed(ellipse.short * unit)}
        ry={fixed(ellipse.long * unit)}
        transform={`rotate(${fixed((ellipse.direction * 180) / Math.PI)} ${x} ${y})`}
        stroke={theme.entered}
        stroke-width="1.6"
        stroke-dasharray={isOne ? '2 3' : undefined}
        data-part="ellipse"
      />
    </g>
  );
}

/** So much room the words of a distance take to each side, and between two of them, in units of the picture. */
const sideRoom = { edge: 27, between: 58, target: 44 } as const;

/** The target line, and how far to the side, in words, as far out as there is room on either side. */
function sidesOf(across: Scales['across']): readonly { readonly value: number; readonly text: string }[] {
  const ticks = across
    .ticks(6)
    .filter((value) => across(value) >= sideRoom.edge && across(value) <= cell.width - sideRoom.edge);
  const [left, right] = [ticks.find((value) => value < 0), ticks.findLast((value) => value > 0)];
  const sides = [
    ...(left === undefined || (right !== undefined && across(right) - across(left) < sideRoom.between)
      ? []
      : [{ value: left, text: `${-left} m left` }]),
    ...(right === undefined ? [] : [{ value: right, text: `${right} m right` }]),
  ];
  const line = across(0);
  const hasRoom =
    line > 16 &&
    line < cell.width - 16 &&
    sides.every(({ value }) => Math.abs(across(value) - line) >= sideRoom.target);
  return hasRoom ? [...sides, { value: 0, text: 'target' }] : sides;
}

function countWords({ landings, carry }: Pick<LessonLandings, 'landings' | 'carry'>): string {
  if (landings !== undefined)
    return landings.places.length === 1 ? 'one flight' : counted(landings.places.length, 'shot');
  return carry === undefined ? 'not known' : 'side not known';
}

function wordsOf({ lesson: { date }, landings, carry }: LessonLandings): string {
  if (carry !== undefined) return `${date}: ${carry.toFixed(0)} m, to which side is not known.`;
  if (landings === undefined) return `${date}: not known.`;
  const { ahead, right, long, short } = landings.ellipse;
  const side =
    Math.abs(right) < 0.05
      ? 'on the target line'
      : `${Math.abs(right).toFixed(1)} m ${right < 0 ? 'left' : 'right'}`;
  return `${date}: ${countWords({ landings, carry })}, ${ahead.toFixed(0)} m ahead and ${side} in the middle, within ${long.toFixed(0)} m by ${short.toFixed(0)} m of it (95 %).`;
}
