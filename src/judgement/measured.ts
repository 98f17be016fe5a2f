// What was measured in a lesson, and nothing that only usual swings would say; as the player sees left and right. Knows no plan.
import type { Account } from '../model/account.ts';
import { jointOf, type Joint } from '../model/joint.ts';
import { mirroredNumber } from '../model/mirror.ts';
import type { ShotStatistic, ShotSummary } from '../model/shots.ts';

export interface MeasuredValue {
  /** SI, signed. */
  readonly value: number;
  /** Standard uncertainty, SI, > 0. */
  readonly u: number;
  /** An entry, computed from entries alone, or the mean of the shots. */
  readonly how: 'entered' | 'computed' | 'shots';
  /** How many shots; undefined of anything else. */
  readonly shots: number | undefined;
  /** Whether it does not fit the rest of its record. */
  readonly isInDoubt: boolean;
}

export interface Measured {
  readonly of: (id: string) => MeasuredValue | undefined;
  /** Missing ones have the mean NaN. */
  readonly joint: (ids: readonly string[]) => Joint;
}

/** Below four the uncertainty of a mean from repeated readings is not finite (JCGM 101:2008, 6.4.9.4). */
const fewestShots = 4;

/**
 * The number that stands for each quantity: an entry, else the mean of the shots, else what follows from entries alone. Values that
 * are `expected` lean on what bodies, clubs and swings usually are, and are left out.
 */
export function measuredOf(account: Account, shots: ShotSummary | undefined): Measured {
  const doubted = new Set(account.agreement.conflicts.map(({ id }) => id));
  const of = (id: string): MeasuredValue | undefined => {
    const value = account.derivation.values.get(id);
    const isInDoubt = doubted.has(id);
    if (value?.kind === 'entered') return known(value.value, value.u, 'entered', isInDoubt);
    const mean = meanOfShots(id, shots);
    if (mean !== undefined) return mean;
    return value?.kind === 'derived' ? known(value.value, value.u, 'computed', isInDoubt) : undefined;
  };
  return { of, joint: (ids) => jointMeasured(ids, ids.map(of), account) };
}

function known(
  value: number,
  u: number | null,
  how: MeasuredValue['how'],
  isInDoubt: boolean,
): MeasuredValue | undefined {
  if (!Number.isFinite(value) || u === null || !(u > 0 && u < Infinity)) return undefined;
  return { value, u, how, shots: undefined, isInDoubt };
}

function meanOfShots(id: string, shots: ShotSummary | undefined): MeasuredValue | undefined {
  const statistic = shots?.statistics.get(id);
  const u = statistic && uncertaintyOfMean(statistic);
  if (statistic === undefined || u === undefined) return undefined;
  return { value: statistic.mean, u, how: 'shots', shots: statistic.count, isInDoubt: false };
}

/**
 * u = √((n − 1)/(n − 3)) s/√n, the standard deviation of Student's distribution of the mean (JCGM 101:2008, 6.4.9.4); undefined
 * below four shots, and where they do not differ.
 */
export function uncertaintyOfMean({ count, u }: Pick<ShotStatistic, 'count' | 'u'>): number | undefined {
  if (u === undefined || count < fewestShots) return undefined;
  const ofMean = Math.sqrt((count - 1) / (count - 3)) * u;
  return ofMean > 0 ? ofMean : undefined;
}

/** Entries are independent readings. What is computed has the correlations of the fit, since it shares entries with others. */
function jointMeasured(
  ids: readonly string[],
  values: readonly (MeasuredValue | undefined)[],
  { outcome, situation }: Account,
): Joint {
  const size = ids.length;
  const means = Float64Array.from(values, (value) => value?.value ?? NaN);
  const covariance = new Float64Array(size * size);
  for (const [i, value] of values.entries()) covariance[i * (size + 1)] = (value?.u ?? 0) ** 2;
  const fitted = [...values.keys()].filter((i) => values[i] !== undefined && values[i].how !== 'shots');
  if (outcome === undefined || !fitted.some((i) => values[i]!.how === 'computed'))
    return { means, covariance };
  const inFit = fitted.filter((i) => outcome.last.forward.nodeOf.has(ids[i]!));
  const fit = jointOf(
    outcome,
    inFit.map((i) => ids[i]!),
  );
  if (fit === undefined) return { means, covariance };
  const sides = inFit.map((i) => mirroredNumber(ids[i]!, 1, situation));
  const u = (a: number): number => Math.sqrt(fit.covariance[a * (inFit.length + 1)]!);
  for (const [a, i] of inFit.entries())
    for (const [b, j] of inFit.entries()) {
      if (i === j || (values[i]!.how === 'entered' && values[j]!.how === 'entered')) continue;
      const scale = u(a) * u(b);
      const correlation = scale > 0 ? fit.covariance[a * inFit.length + b]! / scale : 0;
      covariance[i * size + j] = sides[a]! * sides[b]! * correlation * values[i]!.u * values[j]!.u;
    }
  return { means, covariance };
}
