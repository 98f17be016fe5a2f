// Rows of one dimension against one scale: a dot with its spread, or a window, each with name and number; knows no quantity.
import { scaleLinear } from 'd3-scale';
import { fixed } from './geometry.ts';
import { fitted, widthOf } from './lettering.ts';
import { Label } from './label.tsx';
import { EdgeArrow, offScale } from './off-scale.tsx';
import { areaStyle, lineStyle, type Hatched, type Picture } from './picture.tsx';
import type { Theme } from './theme.ts';

export interface IntervalRow {
  readonly name: string;
  readonly number: string;
  /** The quantity's id, for whoever wants to go to its entry. */
  readonly id?: string | undefined;
  readonly mark: Mark;
}

/** In the unit of the scale; `u` is one standard uncertainty. */
export type Mark =
  | {
      readonly kind: 'entered' | 'expected';
      readonly value: number;
      readonly u: number | undefined;
      /** Of what reaches from its value to here. */
      readonly to?: number | undefined;
    }
  | { readonly kind: Hatched; readonly min: number; readonly max: number };

export interface RowsProps {
  readonly rows: readonly IntervalRow[];
  /** Of a number on the scale, without its side: "5°". */
  readonly tick: (value: number) => string;
  /** What the two ends of the scale are called: "left", "right". */
  readonly ends: readonly [string, string];
  /** Where the positive end lies on the picture; to the right where left out. */
  readonly positive?: 'rightward' | 'leftward';
  readonly x: number;
  readonly y: number;
  /** Of names and numbers; the scale is to the right of them. */
  readonly labelWidth: number;
  readonly scaleWidth: number;
  /** From where to where the scale goes, where it is that of a drawing; else as the rows need it. */
  readonly domain?: readonly [number, number];
  /** The name of the picture, whose hatching is used. */
  readonly picture: string;
  readonly theme: Theme;
}

const rowHeight = 36;
const head = 36;

export function rowsHeight(rows: readonly IntervalRow[]): number {
  return head + rows.length * rowHeight;
}

export function IntervalRows({
  rows,
  tick,
  ends,
  positive = 'rightward',
  x,
  y,
  labelWidth,
  scaleWidth,
  domain,
  picture,
  theme,
}: RowsProps): Picture | null {
  if (rows.length === 0) return null;
  const range =
    positive === 'rightward' ? [labelWidth, labelWidth + scaleWidth] : [labelWidth + scaleWidth, labelWidth];
  const scale = domain ? scaleLinear(domain, range).clamp(true) : scaleLinear(domainOf(rows), range).nice(4);
  const ticks = apart(scale.ticks(4), (value) => scale(value), tick);
  const bottom = rowsHeight(rows);
  const [from, to] = scale.domain();
  return (
    <g transform={`translate(${x} ${y})`}>
      {from! < 0 && (
        <text
          x={fixed(scale(from!))}
          y="10"
          text-anchor={positive === 'rightward' ? 'start' : 'end'}
          fill={theme.soft}
          font-size="11"
        >
          {positive === 'rightward' ? `← ${ends[0]}` : `${ends[0]} →`}
        </text>
      )}
      {to! > 0 && (
        <text
          x={fixed(scale(to!))}
          y="10"
          text-anchor={positive === 'rightward' ? 'end' : 'start'}
          fill={theme.soft}
          font-size="11"
        >
          {positive === 'rightward' ? `${ends[1]} →` : `← ${ends[1]}`}
        </text>
      )}
      {ticks.map((value) => (
        <g key={value}>
          <path
            d={`M ${fixed(scale(value))} ${head - 6} L ${fixed(scale(value))} ${bottom}`}
            stroke={value === 0 ? theme.soft : theme.faint}
            stroke-width={value === 0 ? 1.2 : 0.8}
          />
          <text x={fixed(scale(value))} y={head - 12} text-anchor="middle" fill={theme.soft} font-size="11">
            {tick(Math.abs(value))}
          </text>
        </g>
      ))}
      {rows.map((row, i) => (
        <g key={i} transform={`translate(0 ${head + i * rowHeight})`} data-id={row.id}>
          <text x="0" y="14" fill={theme.soft} font-size="11">
            {fitted(row.name, labelWidth - 8, 11)}
          </text>
          <text x="0" y="28" fill={theme.ink}>
            {fitted(row.number, labelWidth - 8, 12)}
          </text>
          <Marked mark={row.mark} at={scale} ends={[from!, to!]} picture={picture} theme={theme} />
        </g>
      ))}
    </g>
  );
}

/** Where on a scale of these ends all of it lies beyond one of them; undefined where any of it is on the scale. */
function beyond(mark: Mark, [from, to]: readonly [number, number]): number | undefined {
  const [least, most] = 'value' in mark ? [mark.value, mark.value] : [mark.min, mark.max];
  if (least > to) return to;
  return most < from ? from : undefined;
}

/** Round for what was written down, a diamond for what was computed: the two differ without colour. */
function Marked({
  mark,
  at,
  ends,
  picture,
  theme,
}: {
  readonly mark: Mark;
  readonly at: (value: number) => number;
  /** Of the scale. */
  readonly ends: readonly [number, number];
  readonly picture: string;
  readonly theme: Theme;
}): Picture {
  const middle = rowHeight / 2;
  const end = beyond(mark, ends);
  if (end !== undefined) return <Beyond {...{ mark, at, end, ends, theme }} />;
  if (!('value' in mark)) {
    const [from, to] = [fixed(at(mark.min)), fixed(at(mark.max))];
    return (
      <rect
        x={Math.min(from, to)}
        y={middle - 6}
        width={fixed(Math.max(2, Math.abs(to - from)))}
        height="12"
        {...areaStyle(mark.kind, picture, theme)}
      />
    );
  }
  const [x, u] = [fixed(at(mark.value)), mark.u ?? 0];
  const colour = mark.kind === 'entered' ? theme.entered : theme.expected;
  const to = mark.to === undefined ? undefined : fixed(at(mark.to));
  return (
    <g>
      {to !== undefined && (
        <path
          d={`M ${x} ${middle} L ${to} ${middle} M ${to} ${middle - 5} L ${to} ${middle + 5}`}
          {...lineStyle(mark.kind, theme)}
          stroke-width="1.4"
          data-part="reach"
        />
      )}
      {u > 0 && (
        <path
          d={`M ${fixed(at(mark.value - u))} ${middle} L ${fixed(at(mark.value + u))} ${middle}`}
          {...lineStyle(mark.kind, theme)}
        />
      )}
      {mark.kind === 'entered' ? (
        <circle cx={x} cy={middle} r="5" fill={colour} />
      ) : (
        <path
          d={`M ${x} ${middle - 6} l 6 6 l -6 6 l -6 -6 Z`}
          fill={theme.paper}
          stroke={colour}
          stroke-width="1.8"
        />
      )}
    </g>
  );
}

/** An arrow at the end, and what reaches back onto the scale from there. */
function Beyond({
  mark,
  at,
  end,
  ends: [from, to],
  theme,
}: {
  readonly mark: Mark;
  readonly at: (value: number) => number;
  readonly end: number;
  readonly ends: readonly [number, number];
  readonly theme: Theme;
}): Picture {
  const [x, y, centre] = [at(end), rowHeight / 2, at((from + to) / 2)];
  const isRight = x > centre;
  const reaches = 'value' in mark && mark.to !== undefined && Math.abs(at(mark.to) - x) > 1;
  return (
    <g>
      {reaches && (
        <path
          d={`M ${fixed(x)} ${y} L ${fixed(at(mark.to))} ${y}`}
          {...lineStyle(mark.kind, theme)}
          stroke-width="1.4"
          data-part="reach"
        />
      )}
      <EdgeArrow
        at={{ x: x - (isRight ? 8 : -8), y }}
        way={isRight ? 'right' : 'left'}
        colour={'value' in mark ? theme[mark.kind] : theme.soft}
      />
      <Label
        at={{ x: x + (isRight ? -14 : 14), y: y + 4 }}
        text={offScale}
        anchor={isRight ? 'end' : 'start'}
        isBoxed
        theme={theme}
      />
    </g>
  );
}

/** Numbers of a size that nobody can read anyway have no words. */
const widestTick = 38;

/** Those that leave room for the words of the one before. */
function apart(
  ticks: readonly number[],
  at: (value: number) => number,
  tick: RowsProps['tick'],
): readonly number[] {
  const kept: number[] = [];
  for (const value of ticks) {
    if (widthOf(tick(Math.abs(value)), 11) > widestTick) continue;
    const last = kept.at(-1);
    const room =
      last === undefined ? 0 : widthOf(tick(Math.abs(last)), 11) / 2 + widthOf(tick(Math.abs(value)), 11) / 2;
    if (last === undefined || Math.abs(at(value) - at(last)) > room + 4) kept.push(value);
  }
  return kept;
}

/** Zero is always on the scale, since all offsets and directions are told from it. */
function domainOf(rows: readonly IntervalRow[]): readonly [number, number] {
  const ends = rows.flatMap(({ mark }) =>
    'value' in mark
      ? [mark.value - (mark.u ?? 0), mark.value + (mark.u ?? 0), mark.to ?? mark.value]
      : [mark.min, mark.max],
  );
  const known = ends.filter(Number.isFinite);
  const [from, to] = [Math.min(0, ...known), Math.max(0, ...known)];
  return from < to ? [from, to] : [-1, 1];
}
