// What a fault book believes that planned changes bring about where the model does not know it, with how far and how surely; runs no prediction.
import { faceIds, heldId } from '../model/held-face.ts';
import { intervene, type Change } from '../model/intervention.ts';
import { mirroredNumber } from '../model/mirror.ts';
import type { BelievedEffect } from '../record/document.ts';
import type { Quantity } from '../registry/quantity.ts';
import { changeOf, changesOf, type Foreseer, type Made } from './foreseer.ts';
import { grouped } from './grouped.ts';
import { product, takenBack, type Amount, type TakenBack } from './taken-back.ts';

export interface Believed extends Change {
  /** The changes that bring it about. */
  readonly by: readonly string[];
}

/** What one change takes back of one effect. */
interface Part extends TakenBack {
  readonly id: string;
  readonly by: string;
  readonly sign: 1 | -1;
  readonly effect: BelievedEffect;
}

/** Of all changes together, each quantity once. */
export function believedEffects(made: readonly Made[], foreseer: Foreseer): readonly Believed[] {
  const groups = made.map((one) => partsOf(one, foreseer, made));
  return together(groups.flat(), foreseer).map((effect) => countedOnce(effect, groups, made, foreseer));
}

/**
 * A fault that the change is for, or any stated one where its reasons name none, and whose `changes` name the quantity, goes as far
 * as the change goes of what the book says that it takes; with it go the effects that it tends to. Only those that the model does
 * not know from the change itself.
 */
function partsOf(one: Made, foreseer: Foreseer, all: readonly Made[]): readonly Part[] {
  const { account, faults } = foreseer;
  const set = new Set(all.map(({ quantity }) => quantity.id));
  const found = new Map<string, Part>();
  const meant = faults.filter(({ fault }) => one.because.includes(fault.id.value));
  const withHeld = changesOf([one], account);
  for (const known of meant.length > 0 ? meant : faults) {
    for (const effect of known.fault.tendsTo) {
      const { quantity, sign } = effect;
      if (quantity === undefined || sign === undefined || set.has(quantity.id)) continue;
      if (found.has(quantity.id)) continue;
      const back = takenBack(one, effect, known, foreseer);
      if (back === undefined || isOfModel(quantity, one, withHeld, foreseer)) continue;
      found.set(quantity.id, { ...back, id: quantity.id, by: one.quantity.id, sign, effect });
    }
  }
  return [...found.values()];
}

/** Of a face that is only kept since nobody says anything of it, a belief says something. */
function isOfModel({ id }: Quantity, one: Made, withHeld: readonly Change[], { account }: Foreseer): boolean {
  if (withHeld.length > 1 && id === heldId) return false;
  const asked = faceIds.includes(id) ? [changeOf(one)] : withHeld;
  return (intervene(account, asked)?.effects.get(id)?.difference ?? null) !== null;
}

/** What different faults do to one quantity adds up, as independent numbers. */
function together(parts: readonly Part[], { account }: Foreseer): readonly Believed[] {
  return [...grouped(parts, ({ id }) => id)].map(([id, own]): Believed => {
    const ofEffects = [...grouped(own, ({ effect }) => effect).values()];
    const { amount, u } = sumOf(
      ofEffects.map((same): Amount => {
        const back = pooled(same);
        return { amount: -same[0]!.sign * back.amount, u: back.u };
      }),
    );
    const by = [...new Set(own.map((part) => part.by))];
    return { id, kind: 'by', amount: mirroredNumber(id, amount, account.situation), u, by };
  });
}

/** How far one effect is taken back by all changes: not farther than all of it, but for the part of a change of its very cause. */
function pooled(parts: readonly Part[]): Amount {
  const each = [...new Map(parts.map((part) => [part.by, part])).values()];
  const atRate = sumOf(
    each.filter(({ of }) => of === 'cause').map(({ share, whole }) => product(share, whole)),
  );
  const shares = each.filter(({ of }) => of === 'fault');
  const whole = shares[0]?.whole;
  if (whole === undefined) return atRate;
  const asked = sumOf(shares.map(({ share }) => share));
  const left = whole.amount === 0 ? 1 : Math.max(0, Math.min(1, 1 - atRate.amount / whole.amount));
  const amount = Math.min(left, asked.amount);
  // What goes beyond all of it is in reserve: a change made that much less still takes all of it back (a judgement).
  const u = Math.max(0, asked.u - (asked.amount - amount));
  return sumOf([atRate, product({ amount, u }, whole)]);
}

/** Of independent numbers. */
function sumOf(amounts: readonly Amount[]): Amount {
  return {
    amount: amounts.reduce((sum, one) => sum + one.amount, 0),
    u: Math.hypot(...amounts.map((one) => one.u)),
  };
}

/**
 * What a belief states of a quantity itself is how far the change moves it: what the model makes of the other beliefs that the
 * same change brings into play is no more on top of it, as that of the attack on a low point, or of a path on a face that comes along.
 */
function countedOnce(
  effect: Believed,
  groups: readonly (readonly Part[])[],
  made: readonly Made[],
  foreseer: Foreseer,
): Believed {
  const { account } = foreseer;
  const { id } = effect;
  const speaks = (group: readonly Part[]): boolean => group.some((part) => part.id === id);
  const isLinked = groups.filter(speaks).some((group) => {
    const rest = together(
      group.filter((part) => part.id !== id),
      foreseer,
    );
    return rest.length > 0 && (intervene(account, rest)?.effects.get(id)?.difference ?? 0) !== 0;
  });
  if (!isLinked && id !== heldId) return effect;
  const further = together(groups.filter((group) => !speaks(group)).flat(), foreseer);
  const besides = intervene(account, changesOf(made, account, further))?.effects.get(id);
  return {
    ...effect,
    kind: 'shifted',
    amount: effect.amount + (besides?.difference ?? 0),
    u: Math.hypot(effect.u, besides?.uDifference ?? 0),
  };
}
