// Who speaks for the value that others imply for a reading, and how alike two readings' misfits are; passes no verdict.
import type { Reconciliation } from './reconciliation.ts';
import { rowDot } from './rows.ts';

/** A vote this much weaker than the strongest is not named. */
const faintest = 0.03;

/**
 * Ids of the entries that carry what the others imply for measurement `i`, the strongest first.
 *
 * With y = A⁻¹ Jᵢᵀ, measurement k has the share (Jₖ y)²/uₖ² in the variance of what the others imply for i. How much the implied
 * value leans on it is the variance that leaving it out would add: that share over its own redundancy without i.
 */
export function votesFor(at: Reconciliation, i: number): readonly string[] {
  const { problem, statistics, measured, readings } = at;
  const { measurements } = problem;
  const own = measurements[i]!.u;
  const y = statistics.moves(i);
  const { redundancy } = statistics.judgements[i]!;
  const strengths = new Map<string, number>();
  for (const [k, { u }] of measurements.entries()) {
    if (k === i || u === Infinity) continue;
    const shared = rowDot(at.fit.slopes, k, y) / u;
    const lost = own === Infinity ? 0 : (shared / own) ** 2 / Math.max(redundancy, 1e-9);
    const free = Math.max(1e-4, statistics.judgements[k]!.redundancy - lost);
    const { id } = readings[measured[k]!]!;
    strengths.set(id, (strengths.get(id) ?? 0) + (shared * shared) / free);
  }
  const sorted = [...strengths].sort(([, a], [, b]) => b - a);
  const strongest = sorted[0]?.[1] ?? 0;
  return sorted.filter(([, strength]) => strength > 0 && strength >= faintest * strongest).map(([id]) => id);
}

/** Correlation of the residuals of two measurements. */
export function likenessOf(at: Reconciliation, i: number, k: number): number {
  const { measurements } = at.problem;
  const { judgements, moves } = at.statistics;
  const product = rowDot(at.fit.slopes, k, moves(i));
  const size = Math.sqrt(judgements[i]!.redundancy * judgements[k]!.redundancy);
  return size > 0 ? -product / (measurements[i]!.u * measurements[k]!.u * size) : 0;
}
