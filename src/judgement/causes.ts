// From faults through what they tend to do to other faults and to misses: a graph of the coach's beliefs; knows no physics and no record.
import type { Fault, Located } from '../record/document.ts';
import type { Miss, Quantity } from '../registry/quantity.ts';
import { findQuantity } from '../registry/registry.ts';
import { evidenceOf } from './book.ts';
import type { Expression } from './expression.ts';

export interface Link {
  readonly from: string;
  readonly to: string;
  /** The quantity through which it works, and where the book says so. */
  readonly through: Quantity;
  readonly effect: Located<string>;
}

/** Which fault brings about which: an effect of the one moves a quantity so that evidence of the other is nearer to holding. */
export function linksBetween(faults: readonly Fault[]): readonly Link[] {
  return faults.flatMap((cause) =>
    cause.tendsTo.flatMap(({ quantity, sign, effect }) => {
      if (quantity === undefined || sign === undefined) return [];
      return faults
        .filter((other) => other !== cause && isBroughtAbout(other, quantity, sign))
        .map((other): Link => ({ from: cause.id.value, to: other.id.value, through: quantity, effect }));
    }),
  );
}

/** Each loop once, as the links that close it, begun at the fault that comes first. */
export function loopsOf(links: readonly Link[]): readonly (readonly Link[])[] {
  const loops: Link[][] = [];
  const done = new Set<string>();
  for (const start of new Set(links.map(({ from }) => from))) {
    const loop = shortestWay(links, start, start, done);
    if (loop !== undefined) loops.push(loop);
    done.add(start);
  }
  return loops;
}

export interface ExplainedMiss {
  readonly miss: string;
  /** Faults that tend to it by themselves, and those behind them, each with the way to the miss. */
  readonly by: readonly { readonly fault: string; readonly way: readonly string[] }[];
}

/**
 * Which faults explain a miss, at first hand or through one another.
 *
 * @param hand only for misses that name a side of the target line: what a book calls right is left for a left-handed player.
 */
export function explainMiss(
  miss: Miss,
  faults: readonly Fault[],
  links: readonly Link[],
  hand: 'left' | 'right' | undefined,
): ExplainedMiss {
  const direct = faults.filter((fault) => tendsToMiss(fault, miss, hand)).map(({ id }) => id.value);
  const by = faults.flatMap(({ id: { value: fault } }) => {
    if (direct.includes(fault)) return [{ fault, way: [] }];
    const ways = direct.flatMap((near) => {
      const way = shortestWay(links, fault, near, new Set());
      return way === undefined ? [] : [way.map(({ to }) => to)];
    });
    ways.sort((a, b) => a.length - b.length);
    return ways[0] === undefined ? [] : [{ fault, way: ways[0] }];
  });
  return { miss: miss.word, by: by.sort((a, b) => a.way.length - b.way.length) };
}

export function tendsToMiss(fault: Fault, miss: Miss, hand: 'left' | 'right' | undefined): boolean {
  return miss.signs.some(({ id, sign }) => {
    const isTurned = miss.absolute && findQuantity(id)?.lateral === true;
    if (isTurned && hand === undefined) return false;
    const wanted = isTurned && hand === 'left' ? -sign : sign;
    return fault.tendsTo.some((effect) => effect.quantity?.id === id && effect.sign === wanted);
  });
}

function isBroughtAbout(fault: Fault, quantity: Quantity, sign: 1 | -1): boolean {
  return evidenceOf(fault).some(
    ({ compiled }) => compiled !== undefined && favours(compiled, quantity, sign),
  );
}

/** More quantities than this in one expression are not tried in all their corners. */
const mostCorners = 5;

/**
 * Whether the evidence holds more easily when the quantity goes this way: a linear comparison by its slope; anything else by
 * whether it begins to hold from one end of what is usual to the other, in some corner of the other quantities and against none.
 */
function favours({ quantities, margin, holds }: Expression, quantity: Quantity, sign: 1 | -1): boolean {
  const slot = quantities.findIndex(({ id }) => id === quantity.id);
  if (slot < 0) return false;
  const ranges = quantities.map(({ practice, bounds }) => practice ?? bounds);
  const corners = Array.from({ length: 2 ** Math.min(quantities.length, mostCorners) }, (_, corner) =>
    ranges.map(({ min, max }, i) => ((corner >> i) & 1 ? max : min)),
  );
  const { min, max } = ranges[slot]!;
  const test = margin ?? holds;
  const rises = corners.map((corner) => sign * (test(corner.with(slot, max)) - test(corner.with(slot, min))));
  return rises.some((rise) => rise > 0) && !rises.some((rise) => rise < 0);
}

/** Breadth first; from a fault to itself only round a loop. */
function shortestWay(
  links: readonly Link[],
  from: string,
  to: string,
  without: ReadonlySet<string>,
): Link[] | undefined {
  const seen = new Set<string>();
  let ways: Link[][] = links
    .filter((link) => link.from === from && !without.has(link.to))
    .map((link) => [link]);
  while (ways.length > 0) {
    const arrived = ways.find((way) => way.at(-1)!.to === to);
    if (arrived !== undefined) return arrived;
    ways = ways.flatMap((way) => {
      const last = way.at(-1)!.to;
      if (seen.has(last)) return [];
      seen.add(last);
      return links
        .filter((link) => link.from === last && !without.has(link.to))
        .map((link) => [...way, link]);
    });
  }
  return undefined;
}
