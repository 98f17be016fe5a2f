// How far a change may lead: what is seen in practice with this kind of club and what a template teaches toward; proposes nothing.
import { mirroredNumber, type Player } from '../model/mirror.ts';
import type { Situation } from '../model/value.ts';
import type { Quantity, Range } from '../registry/quantity.ts';
import { practiceWith } from '../registry/registry.ts';

/** The edges of a template's windows by quantity; SI, as this player sees left and right. */
export type Windows = ReadonlyMap<string, { readonly from: number; readonly to: number }>;

/** SI, as this player sees left and right. */
export type Room = Pick<Range, 'min' | 'max'>;

/** A player as far as a range may hang on hand and club. */
export type Reader = Player & Pick<Situation, 'clubKind'>;

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

/** What is seen in practice with this kind of club; the registry says it as for a right-handed player. */
export function practiceFor(quantity: Quantity, player: Reader): Range | undefined {
  const usual = practiceWith(quantity, player.clubKind);
  return usual && seenBy(quantity, usual, player);
}

/** What is possible. */
export function boundsFor(quantity: Quantity, player: Player): Room {
  return seenBy(quantity, quantity.bounds, player);
}

/** Of left and right, while the hand is not known, what either hand may have. */
function seenBy({ id, lateral }: Quantity, range: Range, player: Player): Range {
  if (!lateral || player.hand === 'right') return range;
  const turned = [range.min, range.max].map((end) => mirroredNumber(id, end, { ...player, hand: 'left' }));
  const ends = player.hand === 'left' ? turned : [range.min, range.max, ...turned];
  return { ...range, min: Math.min(...ends), max: Math.max(...ends) };
}

export function roomFor(quantity: Quantity, situation: Situation, windows: Windows): Room {
  const { clubKind } = situation;
  let { min, max } = practiceFor(quantity, situation) ?? boundsFor(quantity, situation);
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
