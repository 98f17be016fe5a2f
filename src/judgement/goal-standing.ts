// Holds goals against what is known of a swing, now or after a plan: each as windows with the chance of landing in them; knows no file.
import { mirroredNumber } from '../model/mirror.ts';
import { normalBelow } from '../model/quantiles.ts';
import type { Player } from '../model/mirror.ts';
import { windowsOfShape, type Interval } from '../model/windows.ts';
import type { Goal } from '../record/document.ts';
import type { Measure, Span, Window } from '../measure/measure.ts';
import type { Quantity, Shape } from '../registry/quantity.ts';
import { findContact, findShape, type Registry } from '../registry/registry.ts';
import type { Belief } from './belief.ts';
import { chanceInAll } from './chance.ts';
import { isImpossible } from './foreseer.ts';

/** One thing that a goal asks for: SI, as this player sees left and right. */
export interface Wanted extends Interval {
  /** `carry`, `finish`, …, `shape` or `contact`: by which a reason may name it. */
  readonly key: string;
  readonly quantity: Quantity;
  /** The words that ask for it, where the window alone would not say it. */
  readonly asked?: string;
  /** Of a goal that is a single number: that number, and how far from it still counts. */
  readonly single?: { readonly value: number; readonly leeway: number; readonly by: 'written' | 'reading' };
  /** Where it stands, in the file of the goal. */
  readonly span: Span;
}

export interface Standing {
  readonly wanted: Wanted;
  /** Undefined where the record says too little. */
  readonly value: number | undefined;
  readonly u: number | undefined;
  /** Of being inside the window. */
  readonly chance: number | undefined;
}

/** What meets a goal's window or number, in SI: a number as exactly as it is written, or else as its quantity is read without an instrument. */
export function intervalOf(target: Measure | Window, quantity: Quantity): Interval {
  if (target.kind === 'window') return { min: target.from, max: target.to };
  const leeway = leewayOf(target, quantity);
  return { min: target.value - leeway, max: target.value + leeway };
}

function leewayOf({ stated }: Measure, { uncertainty }: Quantity): number {
  return stated ?? uncertainty.otherwise;
}

/** Nothing of a side while the hand is not known. */
export function wantedOf(goal: Goal, belief: Belief, player: Player, registry: Registry): readonly Wanted[] {
  const possible = [...goal.targets].filter(([, { quantity, target }]) => !isImpossible(target, quantity));
  const found = possible.map(([key, { quantity, target, span }]): Wanted => {
    // It is answered in the unit in which it was asked.
    const asked = target.unit === undefined ? quantity : { ...quantity, shown: target.unit };
    const bare = {
      key,
      quantity: asked,
      span,
      ...intervalOf(target, quantity),
    };
    if (target.kind === 'window') return bare;
    const { value, stated } = target;
    const by = stated === undefined ? 'reading' : 'written';
    return { ...bare, single: { value, leeway: leewayOf(target, quantity), by } };
  });
  const shape = wantedOfShape(goal, found, belief, player, registry);
  return [...found, ...wantedOfContact(goal, registry), ...shape];
}

/** An open end is as far as there is anything. */
export function wantedOfContact({ contact: written }: Goal, registry: Registry): readonly Wanted[] {
  const contact = written && findContact(written.value);
  if (contact === undefined) return [];
  return contact.windows.flatMap(({ id, min, max }) => {
    const quantity = registry.find(id);
    if (quantity === undefined) return [];
    const ends = { min: min ?? quantity.bounds.min, max: max ?? quantity.bounds.max };
    return [{ key: 'contact', asked: contact.word, quantity, ...ends, span: written!.span }];
  });
}

function wantedOfShape(
  { shape: word }: Goal,
  numbers: readonly Wanted[],
  belief: Belief,
  player: Player,
  registry: Registry,
): readonly Wanted[] {
  const shape = word && findShape(word.value);
  const carry = numbers.find(({ key }) => key === 'carry')?.min ?? belief.of(['flight.carry']).means[0]!;
  if (word === undefined || shape === undefined || player.hand === undefined) return [];
  const windows = windowsOfShape(shape, carry);
  const open = askedOf(shape).filter((key) => !numbers.some((one) => one.key === key));
  // What a shape asks of the curve is a share of the carry; held by half, it would seem met.
  if (open.includes('curve') && Number.isNaN(carry)) return [];
  return open.flatMap((key) => {
    const [quantity, window] = [registry.find(`flight.${key}`), windows[key]];
    if (quantity === undefined || window === undefined) return [];
    const ends = [window.min, window.max].map((end) => mirroredNumber(quantity.id, end, player));
    return [{ key: 'shape', quantity, min: Math.min(...ends), max: Math.max(...ends), span: word.span }];
  });
}

/** What the word for a shape says something of. */
export function askedOf(shape: Shape): readonly ('start' | 'curve')[] {
  return (['start', 'curve'] as const).filter((key) => shape[key] !== undefined);
}

export function standingOf(wanted: Wanted, belief: Belief, player: Player): Standing {
  const { means, covariance } = belief.of([wanted.quantity.id]);
  if (Number.isNaN(means[0]!)) return { wanted, value: undefined, u: undefined, chance: undefined };
  const value = mirroredNumber(wanted.quantity.id, means[0]!, player);
  const u = Math.sqrt(covariance[0]!);
  return { wanted, value, u, chance: chanceIn(wanted, value, u) };
}

/** Φ((max − x)/u) − Φ((min − x)/u). */
export function chanceIn({ min, max }: Interval, value: number, u: number): number {
  if (!(u > 0)) return value >= min && value <= max ? 1 : 0;
  return normalBelow((max - value) / u) - normalBelow((min - value) / u);
}

/** Of all windows at once, with what their quantities have in common; those of which the record says too little are left out. */
export function chanceOfAll(wanted: readonly Wanted[], belief: Belief, player: Player): number {
  const { means } = belief.of(wanted.map(({ quantity }) => quantity.id));
  const known = wanted.filter((_, i) => !Number.isNaN(means[i]!));
  const windows = known.map(({ quantity: { id }, min, max }) => {
    const ends = [min, max].map((end) => mirroredNumber(id, end, player));
    return { min: Math.min(...ends), max: Math.max(...ends) };
  });
  return chanceInAll(belief.of(known.map(({ quantity }) => quantity.id)), windows);
}
