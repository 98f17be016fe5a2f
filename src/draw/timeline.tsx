// One quantity over the lessons: each measured value with its interval of 95 %, joined by a line, before the window of the goal; draws no judgement.
import { scaleLinear } from 'd3-scale';
import type { GoalSeries, ProgressPoint, Series } from '../analysis/progress.ts';
import { movedWords, pointWords, targetWords } from '../analysis/progress-words.ts';
import { nameWithin } from '../checks/agreement.ts';
import { showWindow } from '../measure/show.ts';
import { fromSI } from '../measure/units.ts';
import { axisEdge, axisWidth, DayTicks, placeOfDay } from './day-axis.tsx';
import { fixed, lineThrough } from './geometry.ts';
import { areaStyle, Frame, type Picture } from './picture.tsx';
import type { Theme } from './theme.ts';

const [width, height] = [axisWidth, 190];
const edge = { ...axisEdge, top: 30, bottom: 34 } as const;
/** Of a single planned number, which has no width of its own. */
const leastHigh = 4;

export interface TimelineProps {
  readonly series: Series;
  /** What a goal asks of the quantity; undefined where none does. */
  readonly goal: GoalSeries | undefined;
  /** First and last day of all time lines of the club, as `YYYY-MM-DD`, so that they stand below one another. */
  readonly span: readonly [string, string];
  /** Unique among the pictures of a page. */
  readonly name: string;
  readonly theme: Theme;
}

export function Timeline({ series, goal, span, name, theme }: TimelineProps): Picture {
  const { quantity, points, targets } = series;
  const unit = quantity.shown ?? quantity.unit;
  const shown = (value: number): number => fromSI(value, unit);
  const windows = (goal?.points ?? []).map(({ lesson, standing: { wanted } }) => ({
    day: lesson.date!,
    min: shown(wanted.min),
    max: shown(wanted.max),
  }));
  const x = placeOfDay(span);
  const ends = points.flatMap(({ low, high }) => [shown(low), shown(high)]);
  // A goal such as "ahead of the ball" has no far end to speak of: it does not stretch the scale.
  const reach = [
    ...ends,
    ...windows.flatMap(({ min, max }) => [min, max].filter((end) => isNear(end, ends))),
    ...targets.flatMap((one) => [shown(one.from), shown(one.to)].filter((end) => isNear(end, ends))),
  ];
  const [from, to] = widened(Math.min(...reach), Math.max(...reach));
  const y = scaleLinear([from, to], [height - edge.bottom, edge.top]).nice(4);
  const [bottom, top] = y.domain() as [number, number];
  const signs = [1, -1].map(
    (sign) => quantity.directions.find((one) => one.bearing === undefined && one.sign === sign)?.word,
  );
  const words = [
    `${nameWithin(quantity)}.`,
    ...points.map((point) => `${point.lesson.date}: ${pointWords(series, point)}.`),
    `${movedWords(series)}.`,
    ...targets.map((target) => `${targetWords(series, target)}.`),
    ...(goal === undefined
      ? []
      : [
          `Wanted: ${showWindow(quantity, goal.points.at(-1)!.standing.wanted.min, goal.points.at(-1)!.standing.wanted.max)}.`,
        ]),
  ].join(' ');
  return (
    <Frame name={name} title={nameWithin(quantity)} words={words} width={width} height={height} theme={theme}>
      <g data-id={quantity.id}>
        {windows.map(({ day, min, max }, i) => {
          const left = i === 0 ? edge.left : (x(windows[i - 1]!.day) + x(day)) / 2;
          const right = i === windows.length - 1 ? width - edge.right : (x(day) + x(windows[i + 1]!.day)) / 2;
          const [low, high] = [Math.max(bottom, Math.min(top, min)), Math.max(bottom, Math.min(top, max))];
          return (
            high > low && (
              <rect
                key={day}
                x={fixed(left)}
                y={fixed(y(high))}
                width={fixed(right - left)}
                height={fixed(y(low) - y(high))}
                {...areaStyle('goal', name, theme)}
                stroke="none"
                fill-opacity="0.55"
                data-part="goal"
              />
            )
          );
        })}
        {targets.map((target) => {
          const [low, high] = [target.from, target.to].map((value) =>
            Math.max(bottom, Math.min(top, shown(value))),
          );
          // What lies beyond the scale is told in words alone.
          if (shown(target.to) < bottom || shown(target.from) > top) return null;
          const tall = Math.max(leastHigh, y(low!) - y(high!));
          const from = x(target.lesson.date!);
          const until = target.next === undefined ? width - edge.right : x(target.next.date!);
          return (
            <rect
              key={`${target.lesson.uri} ${target.from}`}
              x={fixed(from)}
              y={fixed((y(low!) + y(high!)) / 2 - tall / 2)}
              width={fixed(until - from)}
              height={fixed(tall)}
              fill={theme.goal}
              fill-opacity="0.16"
              stroke={theme.goal}
              stroke-width="1.2"
              data-part="planned"
            />
          );
        })}
        {y.ticks(4).map((value) => (
          <g key={value}>
            <path
              d={`M ${edge.left} ${fixed(y(value))} H ${width - edge.right}`}
              stroke={value === 0 ? theme.soft : theme.faint}
              stroke-width={value === 0 ? 1.2 : 0.8}
            />
            <text
              x={edge.left - 8}
              y={fixed(y(value) + 3.5)}
              text-anchor="end"
              fill={theme.soft}
              font-size="10"
            >
              {`${signs[value < 0 ? 1 : 0] === undefined ? value : Math.abs(value)} ${unit}`}
            </text>
          </g>
        ))}
        {signs[0] !== undefined && top > 0 && (
          <text x={edge.left} y={edge.top - 12} fill={theme.soft} font-size="10">{`↑ ${signs[0]}`}</text>
        )}
        {signs[1] !== undefined && bottom < 0 && (
          <text x={edge.left} y={height - 4} fill={theme.soft} font-size="10">{`↓ ${signs[1]}`}</text>
        )}
        {points.length > 1 && (
          <path
            d={lineThrough(
              points.map(({ lesson, value }) => ({ x: x(lesson.date!), y: y(shown(value.value)) })),
            )}
            stroke={theme.entered}
            stroke-width="1.4"
            stroke-opacity="0.7"
          />
        )}
        {points.map((point, i) => (
          <Point
            key={i}
            point={point}
            x={x(point.lesson.date!)}
            y={(value) => y(shown(value))}
            theme={theme}
          />
        ))}
        <DayTicks
          days={points.map(({ lesson }) => lesson.date!)}
          x={x}
          y={height - edge.bottom}
          theme={theme}
        />
      </g>
    </Frame>
  );
}

/** Round for an entry, a diamond for what was computed, a square for the mean of shots: told apart without colour. */
function Point({
  point: { lesson, value, low, high },
  x,
  y,
  theme,
}: {
  readonly point: ProgressPoint;
  readonly x: number;
  readonly y: (value: number) => number;
  readonly theme: Theme;
}): Picture {
  const [at, middle] = [fixed(x), fixed(y(value.value))];
  const colour = value.how === 'computed' ? theme.expected : theme.entered;
  return (
    <g data-day={lesson.date}>
      <path
        d={`M ${at} ${fixed(y(low))} V ${fixed(y(high))} M ${at - 5} ${fixed(y(low))} h 10 M ${at - 5} ${fixed(y(high))} h 10`}
        stroke={colour}
        stroke-width="1.8"
        stroke-dasharray={value.how === 'computed' ? '4 3' : undefined}
        data-part="interval"
      />
      {value.how === 'entered' && <circle cx={at} cy={middle} r="5" fill={colour} />}
      {value.how === 'shots' && <rect x={at - 4.5} y={middle - 4.5} width="9" height="9" fill={colour} />}
      {value.how === 'computed' && (
        <path
          d={`M ${at} ${middle - 6} l 6 6 l -6 6 l -6 -6 Z`}
          fill={theme.paper}
          stroke={colour}
          stroke-width="1.8"
        />
      )}
    </g>
  );
}

function isNear(end: number, ends: readonly number[]): boolean {
  const [low, high] = [Math.min(...ends), Math.max(...ends)];
  return end > low - 2 * (high - low) && end < high + 2 * (high - low);
}

function widened(from: number, to: number): readonly [number, number] {
  return to > from ? [from, to] : [from - 1, to + 1];
}
