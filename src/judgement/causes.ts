// From faults through what they tend to do to other faults and to misses: a graph of the coach's beliefs; knows no physics and no record.
import type { Fault, Located } from '../record/document.ts';
import type { Miss, Quantity } from '../registry/quantity.ts';
import type { Registry } from '../registry/registry.ts';
import { evidenceOf } from './book.ts';
import type { Expression } from './expression.ts';

export interface Link {
  readonly from: string;
  readonly to: string;
  /** The quantity through which it works, and where the book says so. */
  readonly through: Quantity;
  readonly effect: Located<string>;
}

/** More than anybody could follow; a book beyond these is looked at no further, so that no text costs time without end. */
const mostPairs = 50_000;
const mostLinks = 2000;
const mostLoops = 50;

/** Which fault brings about which: an effect of the one moves a quantity so that evidence of the other is nearer to holding. */
export function linksBetween(faults: readonly Fault[], registry: Registry): readonly Link[] {
  const speaking = new Map<string, Set<Fault>>();
  for (const fault of faults)
    for (const { compiled } of evidenceOf(fault, registry))
      for (const { id } of compiled?.quantities ?? [])
        speaking.set(id, (speaking.get(id) ?? new Set()).add(fault));
  const links: Link[] = [];
  let pairs = 0;
  for (const cause of faults)
    for (const { quantity, sign, effect } of cause.tendsTo) {
      if (quantity === undefined || sign === undefined) continue;
      for (const other of speaking.get(quantity.id) ?? []) {
        if (++pairs > mostPairs || links.length === mostLinks) return links;
        if (other === cause || !isBroughtAbout(other, quantity, sign, registry)) continue;
        links.push({ from: cause.id.value, to: other.id.value, through: quantity, effect });
      }
    }
  return links;
}

/** Each loop once, as the links that close it, begun at the fault that comes first. */
export function loopsOf(links: readonly Link[]): readonly (readonly Link[])[] {
  const leaving = leavingFrom(links);
  const loops: (readonly Link[])[] = [];
  const done = new Set<string>();
  for (const start of leaving.keys()) {
    const loop = shortestWay(leaving, start, start, done);
    if (loop !== undefined) loops.push(loop);
    if (loops.length === mostLoops) break;
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
  const leaving = leavingFrom(links);
  const by = faults.flatMap(({ id: { value: fault } }) => {
    if (direct.includes(fault)) return [{ fault, way: [] }];
    const ways = direct.flatMap((near) => {
      const way = shortestWay(leaving, fault, near, new Set());
      return way === undefined ? [] : [way.map(({ to }) => to)];
    });
    ways.sort((a, b) => a.length - b.length);
    return ways[0] === undefined ? [] : [{ fault, way: ways[0] }];
  });
  return { miss: miss.word, by: by.sort((a, b) => a.way.length - b.way.length) };
}

export function tendsToMiss(fault: Fault, miss: Miss, hand: 'left' | 'right' | undefined): boolean {
  return miss.signs.some(({ id, sign }) =>
    fault.tendsTo.some((effect) => {
      if (effect.quantity?.id !== id) return false;
      const isTurned = miss.absolute && effect.quantity.lateral;
      if (isTurned && hand === undefined) return false;
      return effect.sign === (isTurned && hand === 'left' ? -sign : sign);
    }),
  );
}

function isBroughtAbout(fault: Fault, quantity: Quantity, sign: 1 | -1, registry: Registry): boolean {
  return evidenceOf(fault, registry).some(
    ({ compiled }) => compiled !== undefined && favours(compiled, quantity, sign),
  );
}

/** More quantities than this in one expression are not tried in all their corners. */
const mostCorners = 5;

/**
 * Whether the evidence holds more easily when the quantity goes this way: a linear comparison by its slope; anything else by
 * whether it begins to hold from one end of what is usual to the other, in some corner of the other quantities and against none.
 */
export function favours(
  { quantities, margin, holds }: Expression,
  quantity: Quantity,
  sign: 1 | -1,
): boolean {
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

type Leaving = ReadonlyMap<string, readonly Link[]>;

function leavingFrom(links: readonly Link[]): Leaving {
  const leaving = new Map<string, Link[]>();
  for (const link of links) leaving.set(link.from, [...(leaving.get(link.from) ?? []), link]);
  return leaving;
}

/** Breadth first; from a fault to itself only round a loop. */
function shortestWay(
  leaving: Leaving,
  from: string,
  to: string,
  without: ReadonlySet<string>,
): readonly Link[] | undefined {
  const arrivedBy = new Map<string, Link>();
  let edge: readonly string[] = [from];
  while (edge.length > 0 && !arrivedBy.has(to)) {
    const next: string[] = [];
    for (const place of edge)
      for (const link of leaving.get(place) ?? []) {
        if (arrivedBy.has(link.to) || without.has(link.to)) continue;
        arrivedBy.set(link.to, link);
        next.push(link.to);
      }
    edge = next;
  }
  const way: Link[] = [];
  for (let link = arrivedBy.get(to); link !== undefined; link = arrivedBy.get(link.from)) {
    way.unshift(link);
    if (link.from === from) return way;
  }
  return undefined;
}
