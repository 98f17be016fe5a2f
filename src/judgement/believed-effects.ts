// What a fault book believes that planned changes bring about where the model does not know it, with how far and how surely; runs no prediction.
import { faceIds } from '../model/held-face.ts';
import { intervene, type Change } from '../model/intervention.ts';
import { mirroredNumber } from '../model/mirror.ts';
import type { BelievedEffect } from '../record/document.ts';
import type { Quantity } from '../registry/quantity.ts';
import { beliefOf } from './belief.ts';
import { evidenceOf, type BookFault } from './book.ts';
import { favours } from './causes.ts';
import { perQuantity } from './cause-quantity.ts';
import { changeOf, changesOf, type Foreseer, type Made } from './foreseer.ts';

export interface Believed extends Change {
  /** The change that brings it about. */
  readonly by: string;
}

/** SI, above zero where the effect is taken back; what it is of may be a plain share. */
interface Amount {
  readonly amount: number;
  readonly u: number;
}

/** An effect that is believed in without a number of its own is good to half of itself (a judgement). */
const unsureShare = 0.5;

/** Of all changes, each in the terms of its own. */
export function believedEffects(made: readonly Made[], foreseer: Foreseer): readonly Believed[] {
  const groups = made.map((one) => effectsOf(one, foreseer, made));
  return groups.flatMap((group) => group.map((effect) => countedOnce(effect, group, groups, made, foreseer)));
}

/**
 * A fault that the change is for, or any stated one where its reasons name none, and whose `changes` name the quantity, goes as far
 * as the change goes of what the book says that it takes; with it go the effects that it tends to. Only those that the model does
 * not know from the change itself.
 */
function effectsOf(one: Made, foreseer: Foreseer, all: readonly Made[]): readonly Believed[] {
  const { account, faults } = foreseer;
  const set = new Set(all.map(({ quantity }) => quantity.id));
  const found = new Map<string, Believed>();
  const meant = faults.filter(({ fault }) => one.because.includes(fault.id.value));
  const withHeld = changesOf([one], account);
  for (const known of meant.length > 0 ? meant : faults) {
    for (const effect of known.fault.tendsTo) {
      const { quantity, sign } = effect;
      if (quantity === undefined || sign === undefined || set.has(quantity.id)) continue;
      if (found.has(quantity.id)) continue;
      const back = takenBack(one, effect, known, foreseer);
      if (back === undefined || isOfModel(quantity, one, withHeld, foreseer)) continue;
      const amount = mirroredNumber(quantity.id, -sign * back.amount, account.situation);
      found.set(quantity.id, { id: quantity.id, kind: 'by', amount, u: back.u, by: one.quantity.id });
    }
  }
  return [...found.values()];
}

/** Of a face that is only kept since nobody says anything of it, a belief says something. */
function isOfModel({ id }: Quantity, one: Made, withHeld: readonly Change[], { account }: Foreseer): boolean {
  if (withHeld.length > 1 && id === 'delivery.face') return false;
  const asked = faceIds.includes(id) ? [changeOf(one)] : withHeld;
  return (intervene(account, asked)?.effects.get(id)?.difference ?? null) !== null;
}

/**
 * What a belief states of a quantity itself is how far the change moves it: what the model makes of the other beliefs that the
 * same change brings into play is no more on top of it, as that of the attack on a low point, or of a path on a face that comes along.
 */
function countedOnce(
  effect: Believed,
  group: readonly Believed[],
  groups: readonly (readonly Believed[])[],
  made: readonly Made[],
  { account }: Foreseer,
): Believed {
  const { id } = effect;
  const rest = group.filter((other) => other !== effect);
  const linked = rest.length > 0 && (intervene(account, rest)?.effects.get(id)?.difference ?? 0) !== 0;
  if (!linked && id !== 'delivery.face') return effect;
  const ofGroup = new Set(group.map((one) => one.id));
  const further = groups.flatMap((other) =>
    other === group ? [] : other.filter((one) => !ofGroup.has(one.id)),
  );
  const besides = intervene(account, changesOf(made, account, further))?.effects.get(id);
  return {
    ...effect,
    kind: 'shifted',
    amount: effect.amount + (besides?.difference ?? 0),
    u: Math.hypot(effect.u, besides?.uDifference ?? 0),
  };
}

/** How far the effect is taken back by the change; undefined where the belief says nothing of it. */
function takenBack(
  one: Made,
  effect: BelievedEffect,
  known: BookFault,
  foreseer: Foreseer,
): Amount | undefined {
  const { size } = effect;
  if (size === undefined) return undefined;
  const whole: Amount = {
    amount: size.amount,
    u: size.stated === undefined ? unsureShare * size.amount : size.stated / foreseer.coverage,
  };
  const share = shareOf(one, known, foreseer);
  if (size.per === undefined) return share && product(share, whole);
  const cause = perQuantity(known.fault, effect, foreseer.registry);
  if (cause === undefined) return undefined;
  const own = cause.id === one.quantity.id ? awayFrom(one, known, foreseer) : undefined;
  if (own !== undefined) return over(own, size.per.amount, whole);
  const beyond = share && beyondOf(cause, known, foreseer);
  return beyond && product(share, over(beyond, size.per.amount, whole));
}

function over({ amount, u }: Amount, per: number, whole: Amount): Amount {
  return product({ amount: amount / per, u: u / per }, whole);
}

/** Of independent numbers, to first order. */
function product(a: Amount, b: Amount): Amount {
  return { amount: a.amount * b.amount, u: Math.hypot(a.u * b.amount, a.amount * b.u) };
}

/** How far the change goes, as exactly as it is made, from a number that is known as exactly as it is. */
function goneOf({ quantity, to, u }: Made, { account }: Foreseer): Amount | undefined {
  const now = account.derivation.values.get(quantity.id);
  return now && { amount: to - now.value, u: Math.hypot(u, now.u ?? 0) };
}

/**
 * How much of the fault the change takes away, from above 0 to 1. A change that goes farther than the book asks for takes no more
 * than all of it, and has that much in reserve.
 */
function shareOf(one: Made, { fault }: BookFault, foreseer: Foreseer): Amount | undefined {
  const { quantity, u } = one;
  const change = fault.changes.find((known) => known.quantity?.id === quantity.id);
  if (change === undefined) return undefined;
  const gone = goneOf(one, foreseer);
  if (change.by === undefined) {
    // Nobody knows how far it goes where nobody knows where it is.
    const far = Math.max(Math.abs(gone?.amount ?? 0), gone?.u ?? u);
    return { amount: 1, u: far === 0 ? 0 : Math.min(1, (gone?.u ?? u) / far) };
  }
  const step = mirroredNumber(quantity.id, change.by.difference, foreseer.account.situation);
  if (gone === undefined || step === 0) return undefined;
  const amount = gone.amount / step;
  if (!(amount > 0)) return undefined;
  return { amount: Math.min(1, amount), u: Math.max(0, gone.u / Math.abs(step) - Math.max(0, amount - 1)) };
}

/** How far a change of the very quantity of the evidence goes away from the fault; below zero where it goes farther into it. */
function awayFrom(one: Made, { fault }: BookFault, foreseer: Foreseer): Amount | undefined {
  const { account, registry } = foreseer;
  if (!fault.changes.some(({ quantity }) => quantity?.id === one.quantity.id)) return undefined;
  const gone = goneOf(one, foreseer);
  const toward = evidenceOf(fault, registry)
    .map(({ compiled }) =>
      ([1, -1] as const).find((sign) => compiled && favours(compiled, one.quantity, sign)),
    )
    .find((sign) => sign !== undefined);
  if (gone === undefined || toward === undefined || gone.amount === 0) return undefined;
  const amount = 0 - toward * mirroredNumber(one.quantity.id, gone.amount, account.situation);
  return { amount, u: gone.u };
}

/** How far the cause lies beyond what the evidence allows. */
function beyondOf(cause: Quantity, { fault }: BookFault, foreseer: Foreseer): Amount | undefined {
  const belief = beliefOf(foreseer.account, foreseer.hand);
  for (const { compiled } of evidenceOf(fault, foreseer.registry)) {
    const slot = compiled?.quantities.findIndex(({ id }) => id === cause.id) ?? -1;
    if (slot < 0 || compiled?.margin === undefined) continue;
    const { means, covariance } = belief.of(compiled.quantities.map(({ id }) => id));
    const margin = compiled.margin(means);
    const slope = Math.abs(compiled.margin(means.with(slot, means[slot]! + 1)) - margin);
    const beyond = margin / slope;
    if (!Number.isFinite(beyond)) continue;
    return { amount: Math.max(0, beyond), u: Math.sqrt(covariance[slot * (means.length + 1)]!) };
  }
  return undefined;
}
