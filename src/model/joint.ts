// Means and covariances of several quantities at once, from a fit of the whole record; as for a right-handed player.
import type { Outcome } from './elimination.ts';
import { dot } from './linear-algebra.ts';
import { denseRow } from './rows.ts';

export interface Joint {
  /** SI; in the order of the ids asked for. */
  readonly means: Float64Array;
  /** Row by row, SI. */
  readonly covariance: Float64Array;
}

/**
 * With gᵢ the slopes of quantity i and A the information matrix of the fit, covariance ij is gᵢᵀ A⁻¹ gⱼ (linear propagation,
 * JCGM 102:2011, 6.2). Undefined where the fit has no such quantity.
 */
export function jointOf({ last }: Pick<Outcome, 'last'>, ids: readonly string[]): Joint | undefined {
  const nodes = ids.map((id) => last.forward.nodeOf.get(id));
  if (nodes.includes(undefined)) return undefined;
  const gradients = nodes.map((node) => denseRow(last.slopes, node!));
  const moves = gradients.map((gradient) => last.statistics.spread(gradient));
  const covariance = new Float64Array(ids.length ** 2);
  for (const [i, gradient] of gradients.entries())
    for (const [j, move] of moves.entries()) covariance[i * ids.length + j] = dot(gradient, move);
  return { means: Float64Array.from(nodes, (node) => last.values[node!]!), covariance };
}
