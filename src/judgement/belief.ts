// What is known of quantities together, as a fault book sees them: means and covariances as for a right-handed player; runs no model by itself.
import type { Account } from '../model/account.ts';
import { jointOf, type Joint } from '../model/joint.ts';
import { mirroredNumber } from '../model/mirror.ts';
import { builtIn } from '../registry/registry.ts';

export interface Belief {
  /** Missing ones have the mean NaN. */
  readonly of: (ids: readonly string[]) => Joint;
}

/**
 * Quantities of the model come from the fit of the whole record with all their covariances, where its entries and not only windows
 * speak of them; others are as entered or derived, and taken as independent. A book is written as for a right-handed player, so
 * that what is left and right changes places for a left-handed one and is not known while the hand is not.
 */
export function beliefOf(account: Account, hand: 'left' | 'right' | undefined): Belief {
  const { registry = builtIn } = account.situation;
  const isToldSide = (id: string): boolean => hand !== undefined || registry.find(id)?.lateral !== true;
  return {
    of: (ids) => {
      const joint = emptyJoint(ids.length);
      const asked = [...ids.entries()].filter(([, id]) => isToldSide(id));
      fillFitted(joint, asked, account);
      for (const [at, id] of asked) {
        const value = account.derivation.values.get(id);
        if (!Number.isNaN(joint.means[at]!) || value === undefined || value.u === null) continue;
        joint.means[at] = mirroredNumber(id, value.value, { hand, registry });
        joint.covariance[at * (ids.length + 1)] = value.u ** 2;
      }
      return joint;
    },
  };
}

function emptyJoint(size: number): Joint {
  return { means: new Float64Array(size).fill(NaN), covariance: new Float64Array(size * size) };
}

function fillFitted(
  { means, covariance }: Joint,
  asked: readonly (readonly [number, string])[],
  { agreement, outcome }: Account,
): void {
  const fitted = asked.filter(([, id]) => agreement.posterior.has(id));
  if (outcome === undefined || fitted.length === 0) return;
  const joint = jointOf(
    outcome,
    fitted.map(([, id]) => id),
  );
  if (joint === undefined) return;
  for (const [i, [at]] of fitted.entries()) {
    means[at] = joint.means[i]!;
    for (const [j, [other]] of fitted.entries())
      covariance[at * means.length + other] = joint.covariance[i * fitted.length + j]!;
  }
}
