// How far a change may lead: what is seen in practice with this kind of club and what a template teaches toward; proposes nothing.
import { mirroredNumber } from '../model/mirror.ts';
import type { Situation } from '../model/value.ts';
import type { Quantity, Range } from '../registry/quantity.ts';
import { practiceWith } from '../registry/registry.ts';

/** The edges of a template's windows by quantity; SI, as this player sees left and right. */
export type Windows = ReadonlyMap<string, { readonly from: number; readonly to: number }>;

export type Room = Pick<Range, 'min' | 'max'>;

/**
 * A ball that lies on the turf is not hit upward on purpose, and no club with the head ahead of the hands (common practice, no
 * source).
 */
const fromTurf: ReadonlySet<string> = new Set(['fairway', 'hybrid', 'iron', 'wedge']);

/**
 * How far ahead of the ball the low point stays with a club that meets a ball on the turf, m; 5 to 12 cm with irons (common practice,
 * no source). Undefined of other clubs.
 */
export function leastAhead({ clubKind }: Situation): number | undefined {
  if (clubKind === undefined || !fromTurf.has(clubKind)) return undefined;
  return clubKind === 'iron' || clubKind === 'wedge' ? 0.05 : 0;
}

export function roomFor(quantity: Quantity, situation: Situation, windows: Windows): Room {
  const { clubKind } = situation;
  const usual = practiceWith(quantity, clubKind) ?? quantity.bounds;
  const ends = [usual.min, usual.max].map((end) => mirroredNumber(quantity.id, end, situation));
  let [min, max] = [Math.min(...ends), Math.max(...ends)];
  if (quantity.id === 'checkpoints.impact.shaft_lean') min = Math.max(min, 0);
  if (quantity.id === 'delivery.attack' && clubKind !== undefined && fromTurf.has(clubKind))
    max = Math.min(max, 0);
  const taught = windows.get(quantity.id);
  if (taught === undefined) return { min, max };
  const both = { min: Math.max(min, taught.from), max: Math.min(max, taught.to) };
  return both.min <= both.max ? both : { min: taught.from, max: taught.to };
}

/** The aim, or the edge that it would cross; undefined where it leads farther out than the record is. */
export function heldIn({ min, max }: Room, now: number | undefined, aim: number): number | undefined {
  const held = Math.min(max, Math.max(min, aim));
  if (now === undefined || (now >= min && now <= max)) return held;
  const outside = (value: number): number => Math.max(min - value, value - max, 0);
  if (outside(aim) >= outside(now)) return undefined;
  return now < min ? Math.min(aim, max) : Math.max(aim, min);
}
