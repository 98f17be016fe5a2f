// The number from which goals and predictions start: as hints and hovers show it where nobody entered one, else what all entries together say; predicts nothing.
import type { Account } from '../model/account.ts';
import { hasEntryBefore } from '../model/entry-before.ts';
import { intervene } from '../model/intervention.ts';
import type { Joint } from '../model/joint.ts';
import { mirroredNumber } from '../model/mirror.ts';
import { builtIn } from '../registry/registry.ts';
import { beliefOf, type Belief } from './belief.ts';

/** SI, as this player sees left and right; undefined of what was entered, and of what the record says nothing of. */
function standsFor(id: string, { derivation }: Account): number | undefined {
  const value = derivation.values.get(id);
  return value === undefined || value.kind === 'entered' || value.u === null ? undefined : value.value;
}

/** From where a prediction moves it: SI, as this player sees left and right; what all entries together say, of what was entered too. */
export function startsFrom(id: string, account: Account): number | undefined {
  const entry = account.derivation.values.get(id);
  return (
    standsFor(id, account) ??
    account.agreement.posterior.get(id)?.value ??
    (entry === undefined || entry.u === null ? undefined : entry.value)
  );
}

/** The same of what the record has a number of, whether it is known how sure that is or not. */
export function standsAt(id: string, account: Account): number | undefined {
  return startsFrom(id, account) ?? account.derivation.values.get(id)?.value;
}

/**
 * As `beliefOf`, but for the means of what nobody entered, and with what the fit says once it is led on to the whole swing, from
 * where predictions start.
 */
export function beliefAsItStands(account: Account, hand: 'left' | 'right' | undefined): Belief {
  const belief = beliefOf(account, hand);
  return {
    of: (ids) => {
      const narrow = belief.of(ids);
      const { means, covariance } = narrow.means.some(Number.isNaN)
        ? ledOn(ids, narrow, account, hand)
        : narrow;
      const standing = means.map((mean, at) => {
        const value = standsFor(ids[at]!, account);
        return Number.isNaN(mean) || value === undefined
          ? mean
          : mirroredNumber(ids[at]!, value, account.situation);
      });
      return { means: standing, covariance };
    },
  };
}

/**
 * What all entries together say of one quantity, from where predictions move it and goals are held against it: SI, as this player sees
 * left and right, which are told apart in the record itself even while the hand is not known. Where the fit says nothing of it, what was
 * entered or derived, with no uncertainty where that is not known.
 */
export function standingNumber(
  id: string,
  account: Account,
): { readonly value: number; readonly u: number | null } | undefined {
  const { hand = 'right' } = account.situation;
  const { means, covariance } = beliefAsItStands(account, hand).of([id]);
  return Number.isNaN(means[0]!)
    ? account.derivation.values.get(id)
    : { value: mirroredNumber(id, means[0]!, account.situation), u: Math.sqrt(covariance[0]!) };
}

/** What is known only there, and rests on anything entered; nothing of a side while the hand is not known. */
function ledOn(
  ids: readonly string[],
  narrow: Joint,
  account: Account,
  hand: 'left' | 'right' | undefined,
): Joint {
  const wide = intervene(account, [])?.joint(ids);
  const { registry = builtIn } = account.situation;
  const isMissing = ids.map(
    (id, at) =>
      Number.isNaN(narrow.means[at]!) &&
      (hand !== undefined || registry.find(id)?.lateral !== true) &&
      hasEntryBefore(account, id),
  );
  if (wide === undefined || !isMissing.some((missing, at) => missing && !Number.isNaN(wide.means[at]!)))
    return narrow;
  const size = ids.length;
  const means = narrow.means.map((mean, at) => (isMissing[at] ? wide.means[at]! : mean));
  const covariance = narrow.covariance.map((number, place) => {
    const [i, j] = [Math.floor(place / size), place % size];
    return (isMissing[i] || isMissing[j]) && !Number.isNaN(means[i]! + means[j]!)
      ? wide.covariance[place]!
      : number;
  });
  return { means, covariance };
}
