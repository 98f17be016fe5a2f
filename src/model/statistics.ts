// Judges a least-squares fit: how well it holds together and which measurement fits worst; knows nothing of what was measured.
import type { Fit, Prior, Problem } from './least-squares.ts';
import { dot, inverseDiagonal, nullVectors, solved, solveLower } from './linear-algebra.ts';
import { chiSquaredTail } from './quantiles.ts';
import { denseRow } from './rows.ts';

export interface Judgement {
  /** z − h, in the unit of the measurement. */
  readonly residual: number;
  /** Share of an error in this measurement that shows in its own residual, 0..1; 0 for one that is taken out. */
  readonly redundancy: number;
  /** Residual over its own standard deviation (Baarda 1968); undefined where the measurement is not checked at all. */
  readonly normalised: number | undefined;
  /** What all the others make of it; undefined where they say nothing. */
  readonly implied: { readonly value: number; readonly u: number } | undefined;
  /** Share of the variance of what is implied that comes from windows alone; 1 where nothing is implied. */
  readonly windows: number;
}

export interface Statistics {
  /** Σ (residual/u)² over the measurements and the priors that are evidence. */
  readonly chiSquared: number;
  /** Sum of the redundancies of the same measurements and priors. */
  readonly freedom: number;
  /** Probability of a χ² at least this large in a record that agrees with itself; 1 where nothing is checked. */
  readonly p: number;
  readonly rank: number;
  readonly judgements: readonly Judgement[];
  /** A⁻¹ g with the slopes of a measurement's prediction as g, worked out when first asked for. */
  readonly moves: (measurement: number) => Float64Array;
  /** Variance of a function of the parameters with this gradient; Infinity where it is not determined. */
  readonly variance: (gradient: Float64Array) => number;
  /** A⁻¹ g: how each parameter moves with a function that has this gradient. */
  readonly spread: (gradient: Float64Array) => Float64Array;
}

/** A redundancy below this is rounding. */
const noRedundancy = 1e-9;

/**
 * With A the information matrix, J the slopes and R⁻¹ the weights: redundancy r = 1 − (J A⁻¹ Jᵀ)ᵢᵢ/u², normalised
 * residual w = e/(u √r) (Baarda 1968, A testing procedure for use in geodetic networks), value implied by the others
 * z − e/r with variance u² (1 − r)/r (the usual leave-one-out identities of linear least squares).
 *
 * Degrees of freedom: the sum of the redundancies of all measurements and of those priors that are evidence. Without
 * windows that is exactly measurements + informative priors − rank. Windows are left out of χ² and of the sum, since no
 * swing is drawn from them.
 */
export function statisticsOf(problem: Problem, fit: Fit): Statistics {
  const { priors, measurements } = problem;
  const { factor, slopes, parameters, predictions } = fit;
  const size = priors.length;
  const unseen = nullVectors(factor);
  const spread = (gradient: Float64Array): Float64Array => solved(factor, gradient);
  const variance = (gradient: Float64Array): number =>
    unseen.every((v) => isOrthogonal(gradient, v)) ? Math.max(0, dot(gradient, spread(gradient))) : Infinity;

  let chiSquared = 0;
  let freedom = 0;
  const known: Float64Array[] = [];
  const moves = (i: number): Float64Array => (known[i] ??= spread(denseRow(slopes, i)));
  const judgements = measurements.map(({ value, u }, i): Judgement => {
    const residual = value - predictions[i]!;
    const gradient = denseRow(slopes, i);
    const isSeen = unseen.every((v) => isOrthogonal(gradient, v));
    const half = solveLower(factor, gradient);
    const carried = isSeen ? dot(half, half) : Infinity;
    if (u === Infinity) {
      const nothing = { residual, redundancy: 0, normalised: undefined, implied: undefined, windows: 1 };
      if (carried === Infinity) return nothing;
      const implied = { value: predictions[i]!, u: Math.sqrt(carried) };
      return { ...nothing, implied, windows: shareOf(windowVariance(priors, moves(i)), carried) };
    }
    const redundancy = Math.min(1, Math.max(0, 1 - carried / (u * u)));
    chiSquared += (residual / u) ** 2;
    freedom += redundancy;
    if (redundancy < noRedundancy) {
      return { residual, redundancy: 0, normalised: undefined, implied: undefined, windows: 1 };
    }
    return {
      residual,
      redundancy,
      normalised: residual / (u * Math.sqrt(redundancy)),
      implied: {
        value: value - residual / redundancy,
        u: u * Math.sqrt((1 - redundancy) / redundancy),
      },
      // Without the measurement itself its parts are larger by 1/r², the whole by 1/r.
      windows: shareOf(windowVariance(priors, moves(i)), carried * redundancy),
    };
  });
  for (const [j, { mean, u, kind }] of priors.entries()) {
    if (kind === 'window' || u === Infinity) continue;
    chiSquared += ((parameters[j]! - mean) / u) ** 2;
    freedom += Math.min(1, Math.max(0, 1 - inverseDiagonal(factor, j) / (u * u)));
  }
  const p = freedom > 1e-6 ? chiSquaredTail(chiSquared, freedom) : 1;
  const rank = size - factor.dependent.length;
  return { chiSquared, freedom, p, rank, judgements, moves, variance, spread };
}

/** The part of a variance that comes from windows alone, where A⁻¹ g is `moves`. */
export function windowVariance(priors: readonly Prior[], moves: Float64Array): number {
  let sum = 0;
  for (let j = 0; j < priors.length; j++) {
    const { kind, u } = priors[j]!;
    if (kind === 'window') sum += (moves[j]! / u) ** 2;
  }
  return sum;
}

function shareOf(part: number, whole: number): number {
  return whole > 0 ? Math.min(1, part / whole) : 1;
}

function isOrthogonal(gradient: Float64Array, vector: Float64Array): boolean {
  let sum = 0;
  let size = 0;
  for (let j = 0; j < gradient.length; j++) {
    const product = gradient[j]! * vector[j]!;
    sum += product;
    size += Math.abs(product);
  }
  return Math.abs(sum) <= 1e-6 * size;
}
