// Who speaks for the value that others imply for a reading, and how alike two readings' misfits are; passes no verdict.
import { dot } from './linear-algebra.ts';
import type { Reconciliation } from './reconciliation.ts';

export interface Votes {
  /** Ids of the entries that carry the implied value, the strongest first. */
  readonly ids: readonly string[];
  /** Share of the variance of the implied value that comes from nothing but windows of practice; 1 where nothing is implied. */
  readonly windows: number;
}

/** A vote this much weaker than the strongest is not named. */
const faintest = 0.03;

/** The slopes of the prediction of measurement `i` by the parameters. */
export function gradientOf({ problem, fit }: Reconciliation, i: number): Float64Array {
  const size = problem.priors.length;
  return fit.slopes.subarray(i * size, (i + 1) * size);
}

/**
 * With y = A⁻¹ Jᵢᵀ, measurement k has the share (Jₖ y)²/uₖ² in the variance of what the others imply for i. How much the implied
 * value leans on it is the variance that leaving it out would add: that share over its own redundancy without i.
 */
export function votesFor(at: Reconciliation, i: number): Votes {
  const { problem, statistics, measured, readings } = at;
  const { priors, measurements } = problem;
  const own = measurements[i]!.u;
  const gradient = gradientOf(at, i);
  const y = statistics.spread(gradient);
  const carried = dot(gradient, y);
  if (!(carried > 0)) return { ids: [], windows: 1 };
  let windows = 0;
  for (let j = 0; j < priors.length; j++) {
    const { u, kind } = priors[j]!;
    if (kind === 'window' && u < Infinity) windows += (y[j]! / u) ** 2;
  }
  // Without i itself every share is larger by 1/r, and so is the whole: 1/r² in the parts, 1/r in the sum.
  const { redundancy } = statistics.judgements[i]!;
  const whole = own === Infinity ? carried : carried * redundancy;
  const strengths = new Map<string, number>();
  for (const [k, { u }] of measurements.entries()) {
    if (k === i || u === Infinity) continue;
    const shared = dot(gradientOf(at, k), y) / u;
    const lost = own === Infinity ? 0 : (shared / own) ** 2 / Math.max(redundancy, 1e-9);
    const free = Math.max(1e-4, statistics.judgements[k]!.redundancy - lost);
    const { id } = readings[measured[k]!]!;
    strengths.set(id, (strengths.get(id) ?? 0) + (shared * shared) / free);
  }
  const sorted = [...strengths].sort(([, a], [, b]) => b - a);
  const strongest = sorted[0]?.[1] ?? 0;
  const ids = sorted
    .filter(([, strength]) => strength > 0 && strength >= faintest * strongest)
    .map(([id]) => id);
  return { ids, windows: whole > 0 ? Math.min(1, windows / whole) : 1 };
}

/** Correlation of the residuals of two measurements. */
export function likenessOf(at: Reconciliation, i: number, k: number): number {
  const { measurements } = at.problem;
  const { judgements, spread } = at.statistics;
  const product = dot(gradientOf(at, k), spread(gradientOf(at, i)));
  const size = Math.sqrt(judgements[i]!.redundancy * judgements[k]!.redundancy);
  return size > 0 ? -product / (measurements[i]!.u * measurements[k]!.u * size) : 0;
}
