// Words in a column beside a picture, each joined to its place by a line that crosses no other; knows no quantity.
import { fixed, lineThrough, type Place } from '../geometry.ts';
import { fitted, keptApart } from '../lettering.ts';
import type { Picture } from '../picture.tsx';
import type { Theme } from '../theme.ts';

export interface Leader {
  readonly head: string;
  readonly lines: readonly string[];
  readonly colour: string;
  /** The place on the picture that it speaks of. */
  readonly from: Place;
}

interface Column {
  readonly x: number;
  readonly width: number;
  /** Between which heights the heads stand. */
  readonly between: readonly [top: number, bottom: number];
}

/** Of a head with two lines below it. */
const gap = 46;
/** From the middle of a mark to where its line begins, and from where the line ends to its words. */
const clear = { mark: 7, words: 5 } as const;

export function Leaders({
  leaders,
  column,
  theme,
}: {
  readonly leaders: readonly Leader[];
  readonly column: Column;
  readonly theme: Theme;
}): Picture {
  const heights = heightsOf(
    leaders.map(({ from }) => from),
    column,
  );
  return (
    <g data-part="leaders">
      {leaders.map(({ head, lines, colour, from }, i) => (
        <g key={head}>
          <path
            d={lineThrough(lineOf(from, heights[i]!, column))}
            stroke={theme.faint}
            stroke-width="1.2"
            data-part="leader"
          />
          <text x={column.x} y={fixed(heights[i]! + 4)} fill={colour} font-size="12.5" font-weight="600">
            {fitted(head, column.width, 12.5)}
          </text>
          {lines.map((line, n) => (
            <text
              key={n}
              x={column.x}
              y={fixed(heights[i]! + 4 + 14 * (n + 1))}
              fill={theme.ink}
              font-size="12"
            >
              {fitted(line, column.width, 12)}
            </text>
          ))}
        </g>
      ))}
    </g>
  );
}

function lineOf(from: Place, height: number, { x }: Column): readonly [Place, Place] {
  return [
    { x: Math.min(from.x + clear.mark, x - 8), y: from.y },
    { x: x - clear.words, y: height },
  ];
}

/** Of all orders, the one whose lines cross least, and of those the one whose lines are shortest. */
export function heightsOf(places: readonly Place[], column: Column): readonly number[] {
  const ys = places.map(({ y }) => y).toSorted((a, b) => a - b);
  const slots = keptApart(ys, gap, column.between);
  let best: { readonly heights: readonly number[]; readonly cost: number } | undefined;
  for (const order of ordersOf(places.map((_, i) => i))) {
    const heights = places.map((_, i) => slots[order.indexOf(i)]!);
    const lines = places.map((place, i) => lineOf(place, heights[i]!, column));
    const length = lines.reduce((sum, [a, b]) => sum + Math.hypot(b.x - a.x, b.y - a.y), 0);
    const cost = length + 1e4 * crossingsOf(lines, places);
    if (best === undefined || cost < best.cost) best = { heights, cost };
  }
  return best?.heights ?? [];
}

function ordersOf(items: readonly number[]): readonly (readonly number[])[] {
  if (items.length === 0) return [[]];
  return items.flatMap((first) =>
    ordersOf(items.filter((one) => one !== first)).map((rest) => [first, ...rest]),
  );
}

/** Lines that meet, and lines that run over the mark of another. */
function crossingsOf(lines: readonly (readonly [Place, Place])[], places: readonly Place[]): number {
  return lines.reduce(
    (sum, line, i) =>
      sum +
      lines.slice(i + 1).filter((other) => meet(line, other)).length +
      places.filter((place, n) => n !== i && distanceTo(place, line) < clear.mark).length,
    0,
  );
}

function meet([a, b]: readonly [Place, Place], [c, d]: readonly [Place, Place]): boolean {
  const side = (p: Place, q: Place, r: Place): number =>
    Math.sign((q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x));
  return side(a, b, c) !== side(a, b, d) && side(c, d, a) !== side(c, d, b);
}

function distanceTo({ x, y }: Place, [a, b]: readonly [Place, Place]): number {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const along = ((x - a.x) * dx + (y - a.y) * dy) / (dx * dx + dy * dy || 1);
  const kept = Math.max(0, Math.min(1, along));
  return Math.hypot(x - a.x - kept * dx, y - a.y - kept * dy);
}
