// How far one planned change takes back one effect that a fault is believed to have, with how surely; knows no other change.
import { mirroredNumber } from '../model/mirror.ts';
import type { BelievedEffect } from '../record/document.ts';
import type { Quantity } from '../registry/quantity.ts';
import { beliefOf } from './belief.ts';
import { evidenceOf, type BookFault } from './book.ts';
import { favours } from './causes.ts';
import { perQuantity } from './cause-quantity.ts';
import type { Foreseer, Made } from './foreseer.ts';

/** SI, above zero where the effect is taken back; what it is of may be a plain share. */
export interface Amount {
  readonly amount: number;
  readonly u: number;
}

export interface TakenBack {
  /** Of the `fault`, of which nobody takes away more than the whole, or of its `cause`, which may be changed as far as one likes to both sides. */
  readonly of: 'fault' | 'cause';
  readonly share: Amount;
  /** The effect of a share of 1. */
  readonly whole: Amount;
}

/** An effect that is believed in without a number of its own is good to half of itself (a judgement). */
const unsureShare = 0.5;

/** How far the effect is taken back by the change; undefined where the belief says nothing of it. */
export function takenBack(
  one: Made,
  effect: BelievedEffect,
  known: BookFault,
  foreseer: Foreseer,
): TakenBack | undefined {
  const { size } = effect;
  if (size === undefined) return undefined;
  const whole: Amount = {
    amount: size.amount,
    u: size.stated === undefined ? unsureShare * size.amount : size.stated / foreseer.coverage,
  };
  const share = shareOf(one, known, foreseer);
  if (size.per === undefined) return share && { share, whole, of: 'fault' };
  const cause = perQuantity(known.fault, effect, foreseer.registry);
  if (cause === undefined) return undefined;
  const own = cause.id === one.quantity.id ? awayFrom(one, known, foreseer) : undefined;
  const over = ({ amount, u }: Amount, per: number): Amount => ({ amount: amount / per, u: u / per });
  if (own !== undefined) return { share: over(own, size.per.amount), whole, of: 'cause' };
  const beyond = share && beyondOf(cause, known, foreseer);
  return beyond && { share, whole: product(over(beyond, size.per.amount), whole), of: 'fault' };
}

/** Of independent numbers, to first order. */
export function product(a: Amount, b: Amount): Amount {
  return { amount: a.amount * b.amount, u: Math.hypot(a.u * b.amount, a.amount * b.u) };
}

/** How far the change goes, as exactly as it is made, from a number that is known as exactly as it is. */
function goneOf({ quantity, to, u }: Made, { account }: Foreseer): Amount | undefined {
  const now = account.derivation.values.get(quantity.id);
  return now && { amount: to - now.value, u: Math.hypot(u, now.u ?? 0) };
}

/** How much of what the book asks for the change goes, above 0; more than 1 where it goes farther. */
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
  return { amount, u: gone.u / Math.abs(step) };
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
