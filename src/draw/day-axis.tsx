// Days along a picture, the same on all pictures of one club, so that they can stand below one another; knows no quantity.
import { scaleUtc } from 'd3-scale';
import { fixed } from './geometry.ts';
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
      {ticksOf(days).map(({ day, label }) => (
        <g key={day}>
          <path d={`M ${fixed(x(day))} ${y} v 5`} stroke={theme.soft} />
          <text x={fixed(x(day))} y={y + 17} text-anchor="middle" fill={theme.soft} font-size="10">
            {label}
          </text>
        </g>
      ))}
    </g>
  );
}

/** Days as they are written, and the year where it is another than the one before. At most eight, for their words to have room. */
function ticksOf(all: readonly string[]): readonly { readonly day: string; readonly label: string }[] {
  const days = [...new Set(all)];
  const step = Math.ceil(days.length / 8);
  const kept = days.filter((_, i) => i % step === 0);
  return kept.map((day, i) => ({
    day,
    label: kept[i - 1]?.slice(0, 4) === day.slice(0, 4) ? day.slice(5) : day,
  }));
}

/** Midnight of UTC, so that the picture is the same everywhere. */
function midnightOf(day: string): Date {
  return new Date(`${day}T00:00:00Z`);
}
