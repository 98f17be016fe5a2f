// Days along a picture, the same on all pictures of one club, so that they can stand below one another; knows no quantity.
import { scaleUtc } from 'd3-scale';
import { fixed } from './geometry.ts';
import { widthOf } from './lettering.ts';
import type { Picture } from './picture.tsx';
import type { Theme } from './theme.ts';

export const axisWidth = 560;
export const axisEdge = { left: 74, right: 22 } as const;

/** Units of the picture for a day, as `YYYY-MM-DD`; a single day stands in the middle. */
export function placeOfDay([first, last]: readonly [string, string]): (day: string) => number {
  const [from, to] = [axisEdge.left, axisWidth - axisEdge.right];
  const days = scaleUtc([midnightOf(first), midnightOf(last)], [from + 14, to - 14]);
  return (day) => (first === last ? (from + to) / 2 : days(midnightOf(day)));
}

export function DayTicks({
  days,
  x,
  y,
  theme,
}: {
  readonly days: readonly string[];
  readonly x: (day: string) => number;
  /** Where the ticks begin; their words stand below. */
  readonly y: number;
  readonly theme: Theme;
}): Picture {
  return (
    <g>
      {[...new Set(days)].map((day) => (
        <path key={day} d={`M ${fixed(x(day))} ${y} v 5`} stroke={theme.soft} />
      ))}
      {labelsOf(days, x).map(({ day, label }) => (
        <text
          key={day}
          x={fixed(x(day))}
          y={y + 17}
          text-anchor="middle"
          fill={theme.soft}
          font-size="10"
          data-part="day"
        >
          {label}
        </text>
      ))}
    </g>
  );
}

/** So much stays free between two days, in units of the picture. */
const leastGap = 8;

/** Days as they are written, and the year where it is another than the one before: the first, the last, and all between that have room. */
function labelsOf(
  days: readonly string[],
  x: (day: string) => number,
): readonly { readonly day: string; readonly label: string }[] {
  const all = [...new Set(days)].sort();
  const [first, last] = [all[0], all.at(-1)];
  if (first === undefined || last === undefined) return [];
  const apart = widthOf(first, 10) + leastGap;
  const kept = [first];
  for (const day of all.slice(1, -1))
    if (x(day) - x(kept.at(-1)!) >= apart && x(last) - x(day) >= apart) kept.push(day);
  if (last !== first && x(last) - x(first) >= apart) kept.push(last);
  return kept.map((day, i) => ({
    day,
    label: kept[i - 1]?.slice(0, 4) === day.slice(0, 4) ? day.slice(5) : day,
  }));
}

/** Midnight of UTC, so that the picture is the same everywhere. */
function midnightOf(day: string): Date {
  return new Date(`${day}T00:00:00Z`);
}
