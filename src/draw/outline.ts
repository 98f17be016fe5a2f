// Smooth outlines of round things: limbs that taper, and bodies told by how wide they are at each height; knows no anatomy.
import type { Place } from './geometry.ts';

/** A place along a line and how far its outline is from it there. */
export interface Girth {
  readonly at: Place;
  readonly half: number;
}

/** A limb from one place to another; `girths` are pairs of a share of the way and half the breadth there. */
export function taperedOutline(
  from: Place,
  to: Place,
  girths: readonly (readonly [share: number, half: number])[],
): string {
  const across = acrossOf(from, to);
  const side = (sign: 1 | -1): Place[] =>
    girths.map(([share, half]) => ({
      x: from.x + share * (to.x - from.x) + sign * half * across.x,
      y: from.y + share * (to.y - from.y) + sign * half * across.y,
    }));
  const [there, back] = [side(1), side(-1).reverse()];
  const [first, last] = [girths[0]![1], girths.at(-1)![1]];
  return `M ${text(there[0]!)} ${curveThrough(there)} A ${short(last)} ${short(last)} 0 0 0 ${text(back[0]!)} ${curveThrough(back)} A ${short(first)} ${short(first)} 0 0 0 ${text(there[0]!)} Z`;
}

/** A body along a line of places, each with half its breadth square to the line. */
export function bodyOutline(girths: readonly Girth[]): string {
  const side = (sign: 1 | -1): Place[] =>
    girths.map(({ at, half }, i) => {
      const across = acrossOf((girths[i - 1] ?? girths[i]!).at, (girths[i + 1] ?? girths[i]!).at);
      return { x: at.x + sign * half * across.x, y: at.y + sign * half * across.y };
    });
  return closedThrough([...side(1), ...side(-1).reverse()]);
}

/** A smooth closed line through the places. */
export function closedThrough(places: readonly Place[]): string {
  const count = places.length;
  const round = (i: number): Place => places[(i + count) % count]!;
  const parts = places.map((_, i) => bezier(round(i - 1), round(i), round(i + 1), round(i + 2)));
  return `M ${text(places[0]!)} ${parts.join(' ')} Z`;
}

/** A smooth open line through the places. */
export function openThrough(places: readonly Place[]): string {
  return `M ${text(places[0]!)} ${curveThrough(places)}`;
}

function curveThrough(places: readonly Place[]): string {
  return places
    .slice(1)
    .map((to, i) => bezier(places[i - 1] ?? places[i]!, places[i]!, to, places[i + 2] ?? to))
    .join(' ');
}

/** From the second place to the third, as Catmull and Rom have it: tangents along the neighbours. */
function bezier(before: Place, from: Place, to: Place, after: Place): string {
  const first = { x: from.x + (to.x - before.x) / 6, y: from.y + (to.y - before.y) / 6 };
  const second = { x: to.x - (after.x - from.x) / 6, y: to.y - (after.y - from.y) / 6 };
  return `C ${text(first)} ${text(second)} ${text(to)}`;
}

function acrossOf(from: Place, to: Place): Place {
  const [x, y] = [to.x - from.x, to.y - from.y];
  const length = Math.hypot(x, y);
  return length > 1e-6 ? { x: -y / length, y: x / length } : { x: 1, y: 0 };
}

function text({ x, y }: Place): string {
  return `${short(x)} ${short(y)}`;
}

/** A tenth of a unit is finer than any line. */
function short(value: number): number {
  return Number.isFinite(value) ? Math.round(value * 10) / 10 + 0 : 0;
}
