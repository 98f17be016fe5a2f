// The number that stands for a quantity nobody entered, so that goals and predictions start from what hints and hovers show; predicts nothing.
import type { Account } from '../model/account.ts';
import { hasEntryBefore } from '../model/entry-before.ts';
import { intervene } from '../model/intervention.ts';
import type { Joint } from '../model/joint.ts';
import { mirroredNumber } from '../model/mirror.ts';
import { builtIn } from '../registry/registry.ts';
import { beliefOf, type Belief } from './belief.ts';

/** SI, as this player sees left and right; undefined of what was entered, and of what the record says nothing of. */
export function standsFor(id: string, { derivation }: Account): number | undefined {
  const value = derivation.values.get(id);
  return value === undefined || value.kind === 'entered' || value.u === null ? undefined : value.value;
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
