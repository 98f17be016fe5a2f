// Where the balls of each lesson came down, one small picture a lesson, all to one scale; says so where a lesson does not tell.
import { scaleLinear } from 'd3-scale';
import type { GoalSeries } from '../analysis/progress.ts';
import type { Lesson } from '../analysis/lessons.ts';
import { fixed } from './geometry.ts';
import { landingsOf, type Landings } from './landings.ts';
import { areaStyle, Frame, type Picture } from './picture.tsx';
import type { Theme } from './theme.ts';

const cell = { width: 150, height: 200, gap: 14 } as const;
const edge = { left: 44, top: 28, bottom: 46 } as const;
const mostInRow = 6;

export interface SmallMultiplesProps {
  /** With a date, the oldest first. */
  readonly lessons: readonly Lesson[];
  /** What a goal asks of the finish; undefined where none does. */
  readonly goal: GoalSeries | undefined;
  readonly name: string;
  readonly theme: Theme;
}

export function SmallMultiples({ lessons, goal, name, theme }: SmallMultiplesProps): Picture {
  const all = lessons.map((lesson) => ({ lesson, landings: landingsOf(lesson.analysis) }));
  const known = all.flatMap(({ landings }) => landings ?? []);
  const scales = scalesFor(known);
  const columns = Math.max(1, Math.min(mostInRow, all.length));
  const rows = Math.max(1, Math.ceil(all.length / columns));
  const width = edge.left + columns * (cell.width + cell.gap);
  return (
    <Frame
      name={name}
      title="Where the balls came down, lesson by lesson"
      words={all.map(({ lesson, landings }) => wordsOf(lesson, landings)).join(' ')}
      width={width}
      height={rows * (edge.top + cell.height + edge.bottom)}
      theme={theme}
    >
      {all.map(({ lesson, landings }, i) => (
        <g
          key={lesson.uri}
          transform={`translate(${edge.left + (i % columns) * (cell.width + cell.gap)} ${edge.top + Math.floor(i / columns) * (edge.top + cell.height + edge.bottom)})`}
          data-day={lesson.date}
        >
          <Cell
            title={lesson.date ?? ''}
            landings={landings}
            wanted={goal?.points.find((point) => point.lesson === lesson)?.standing.wanted}
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

interface Scales {
  readonly across: ((value: number) => number) & { ticks: (count: number) => number[] };
  readonly along: ((value: number) => number) & { ticks: (count: number) => number[] };
  /** Of the picture for a metre, the same both ways. */
  readonly unit: number;
}

function scalesFor(known: readonly Landings[]): Scales {
  const edges = known.flatMap(({ places, ellipse }) => [
    ...places,
    { right: ellipse.right - ellipse.long, ahead: ellipse.ahead - ellipse.long },
    { right: ellipse.right + ellipse.long, ahead: ellipse.ahead + ellipse.long },
  ]);
  const [rights, aheads] = [
    [...edges.map(({ right }) => right), -2, 2],
    known.length === 0 ? [0, 10] : edges.map(({ ahead }) => ahead),
  ];
  const [left, right] = [Math.min(...rights), Math.max(...rights)];
  const [near, far] = [Math.min(...aheads) - 1, Math.max(...aheads) + 1];
  const unit = Math.min(cell.width / (right - left), cell.height / (far - near));
  const [middle, centre] = [(left + right) / 2, (near + far) / 2];
  const [half, tall] = [cell.width / 2 / unit, cell.height / 2 / unit];
  return {
    across: scaleLinear([middle - half, middle + half], [0, cell.width]),
    along: scaleLinear([centre - tall, centre + tall], [cell.height, 0]),
    unit,
  };
}

function Cell({
  title,
  landings,
  wanted,
  withLabels,
  scales: { across, along, unit },
  name,
  theme,
}: {
  readonly title: string;
  readonly landings: Landings | undefined;
  readonly wanted: { readonly min: number; readonly max: number } | undefined;
  readonly withLabels: 'yes' | 'no';
  readonly scales: Scales;
  readonly name: string;
  readonly theme: Theme;
}): Picture {
  const within = (value: number): number => Math.max(0, Math.min(cell.width, across(value)));
  const line = across(0);
  return (
    <g>
      <text x={cell.width / 2} y="-10" text-anchor="middle" fill={theme.ink} font-weight="600" font-size="11">
        {title}
      </text>
      {wanted && within(wanted.max) > within(wanted.min) && (
        <rect
          x={fixed(within(wanted.min))}
          y="0"
          width={fixed(within(wanted.max) - within(wanted.min))}
          height={cell.height}
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
      {landings === undefined ? (
        <text x={cell.width / 2} y={cell.height / 2} text-anchor="middle" fill={theme.soft} font-size="11">
          not known
        </text>
      ) : (
        <Marks landings={landings} across={across} along={along} unit={unit} theme={theme} />
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
        {countWords(landings)}
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
const sideRoom = { edge: 27, between: 58 } as const;

/** How far to the side, in words, as far out as there is room on either side. */
function sidesOf(across: Scales['across']): readonly { readonly value: number; readonly text: string }[] {
  const ticks = across
    .ticks(6)
    .filter((value) => across(value) >= sideRoom.edge && across(value) <= cell.width - sideRoom.edge);
  const [left, right] = [ticks.find((value) => value < 0), ticks.findLast((value) => value > 0)];
  return [
    ...(left === undefined || (right !== undefined && across(right) - across(left) < sideRoom.between)
      ? []
      : [{ value: left, text: `${-left} m left` }]),
    ...(right === undefined ? [] : [{ value: right, text: `${right} m right` }]),
  ];
}

function countWords(landings: Landings | undefined): string {
  if (landings === undefined) return '';
  return landings.places.length === 1 ? 'one flight' : `${landings.places.length} shots`;
}

function wordsOf({ date }: Lesson, landings: Landings | undefined): string {
  if (landings === undefined) return `${date}: not known.`;
  const { ahead, right, long, short } = landings.ellipse;
  const side =
    Math.abs(right) < 0.05
      ? 'on the target line'
      : `${Math.abs(right).toFixed(1)} m ${right < 0 ? 'left' : 'right'}`;
  return `${date}: ${countWords(landings)}, ${ahead.toFixed(0)} m ahead and ${side} in the middle, within ${long.toFixed(0)} m by ${short.toFixed(0)} m of it (95 %).`;
}
