// Finds the parameters that fit measurements and priors best (damped Gauss–Newton); knows nothing of what they mean.
import { dot, factorOf, solveLower, solveUpper, type Factor } from './linear-algebra.ts';
import type { Rows } from './rows.ts';

/** What is known of a parameter before any measurement. */
export interface Prior {
  readonly mean: number;
  /** Standard uncertainty, > 0; Infinity where nothing is known. */
  readonly u: number;
  /** `evidence` is held against the measurements like one of them; a `window` only keeps the fit in the region of sense. */
  readonly kind: 'evidence' | 'window';
}

export interface Measurement {
  readonly value: number;
  /** Standard uncertainty, > 0; Infinity for one that is taken out and only predicted. */
  readonly u: number;
}

/** Predictions of the measurements; either may be undefined outside the range where the model holds. */
export interface Model {
  /** One prediction for each measurement. */
  readonly predict: (parameters: Float64Array) => Float64Array | undefined;
  /** Partial derivatives of the predictions, a row for each measurement; called at the point predicted last. */
  readonly slopes: (parameters: Float64Array) => Rows | undefined;
}

export interface Problem {
  readonly model: Model;
  readonly priors: readonly Prior[];
  readonly measurements: readonly Measurement[];
}

export interface Options {
  /** Where to begin; the means of the priors if left out. */
  readonly start?: Float64Array;
  /** A step is the last one if it is shorter than this many standard uncertainties of the solution. */
  readonly tolerance?: number;
  /** As an earlier fit left it. */
  readonly damping?: number;
  /** Most evaluations of the model; the best point so far is the answer then. */
  readonly limit?: number;
}

export interface Fit {
  readonly status: 'converged' | 'stopped';
  readonly parameters: Float64Array;
  readonly predictions: Float64Array;
  /** A row for each measurement, at the solution or one step before it. */
  readonly slopes: Rows;
  /** The factor of the information matrix A = Jᵀ R⁻¹ J + P⁻¹. */
  readonly factor: Factor;
  readonly evaluations: number;
  /** With which another fit of the same problem may go on. */
  readonly damping: number;
}

const firstDamping = 1e-6;
const leastDamping = 1e-9;
const mostDamping = 1e12;

/**
 * Minimises Σ ((z − h(x))/u)² + Σ ((x − mean)/u)² by Gauss–Newton steps, damped along the diagonal of the information
 * matrix as long as they do not help (Levenberg 1944, Q. Appl. Math. 2:164; Marquardt 1963, J. SIAM 11:431). Ends after `limit`
 * evaluations at the latest. Directions that neither a measurement nor a prior sees stay where they began.
 *
 * @returns undefined where the model gives no number at the start.
 */
export function fit(problem: Problem, options: Options = {}): Fit | undefined {
  const { model, priors } = problem;
  const { tolerance = 1e-6, limit = 100 } = options;
  let parameters = options.start?.slice() ?? Float64Array.from(priors, (prior) => prior.mean);
  let predictions = model.predict(parameters);
  let slopes = predictions && model.slopes(parameters);
  if (!predictions || !slopes) return undefined;
  let cost = costOf(problem, parameters, predictions);
  if (!Number.isFinite(cost)) return undefined;

  let evaluations = 1;
  let damping = options.damping ?? firstDamping;
  const information = informationOf(problem, slopes, new Float64Array(priors.length ** 2));
  let gradient = gradientOf(problem, parameters, predictions, slopes);
  let status: Fit['status'] = 'stopped';
  while (evaluations < limit && damping < mostDamping) {
    const damped = factorOf(information, priors.length, damping);
    const lengths = solveLower(damped, gradient.slice());
    const expected = dot(lengths, lengths);
    // A short step under strong damping says nothing of how far the solution is.
    const isShorterThan = (length: number): boolean =>
      expected < length ** 2 &&
      (damping < 2 * firstDamping || undampedLength(information, gradient) < length);
    const step = solveUpper(damped, lengths);
    const next = parameters.map((x, j) => x + step[j]!);
    const predicted = model.predict(next);
    evaluations += 1;
    const nextCost = predicted ? costOf(problem, next, predicted) : Infinity;
    // Near the solution rounding may raise the cost by nothing that matters.
    if (predicted === undefined || !(nextCost <= cost * (1 + 1e-12))) {
      // Slopes by differences point downhill only as exactly as they are; ten steps' length is as near as they lead.
      if (isShorterThan(10 * tolerance)) {
        status = 'converged';
        break;
      }
      damping *= 10;
      continue;
    }
    const isLast = isShorterThan(tolerance);
    const renewed = model.slopes(next);
    if (!renewed) break;
    [parameters, predictions, slopes, cost] = [next, predicted, renewed, nextCost];
    damping = Math.max(leastDamping, damping / 10);
    informationOf(problem, slopes, information);
    if (isLast) {
      status = 'converged';
      break;
    }
    gradient = gradientOf(problem, parameters, predictions, slopes);
  }
  const factor = factorOf(information, priors.length);
  return { status, parameters, predictions, slopes, factor, evaluations, damping };
}

/** Of the step to the minimum of the linearised cost, in standard uncertainties of the solution. */
function undampedLength(information: Float64Array, gradient: Float64Array): number {
  const lengths = solveLower(factorOf(information, gradient.length, firstDamping), gradient.slice());
  return Math.sqrt(dot(lengths, lengths));
}

/** Σ ((z − h)/u)² + Σ ((x − mean)/u)². */
export function costOf(
  { priors, measurements }: Problem,
  parameters: Float64Array,
  predictions: Float64Array,
): number {
  let sum = 0;
  for (let i = 0; i < measurements.length; i++) {
    const { value, u } = measurements[i]!;
    if (u < Infinity) sum += ((value - predictions[i]!) / u) ** 2;
  }
  for (let j = 0; j < priors.length; j++) {
    const { mean, u } = priors[j]!;
    if (u < Infinity) sum += ((parameters[j]! - mean) / u) ** 2;
  }
  return sum;
}

/** A = Jᵀ R⁻¹ J + P⁻¹, upper triangle, written into `a`. */
function informationOf({ priors, measurements }: Problem, slopes: Rows, a: Float64Array): Float64Array {
  const size = priors.length;
  const { from, to, columns, values } = slopes;
  a.fill(0);
  for (let i = 0; i < measurements.length; i++) {
    const { u } = measurements[i]!;
    if (u === Infinity) continue;
    const end = to[i]!;
    for (let p = from[i]!; p < end; p++) {
      const row = columns[p]! * size;
      const weighted = values[p]! / (u * u);
      if (weighted === 0) continue;
      for (let q = p; q < end; q++) a[row + columns[q]!]! += weighted * values[q]!;
    }
  }
  for (let j = 0; j < size; j++) a[j * size + j]! += 1 / priors[j]!.u ** 2;
  return a;
}

/** Half the downhill slope of the cost: Jᵀ R⁻¹ (z − h) + P⁻¹ (mean − x). */
function gradientOf(
  { priors, measurements }: Problem,
  parameters: Float64Array,
  predictions: Float64Array,
  { from, to, columns, values }: Rows,
): Float64Array {
  const size = priors.length;
  const g = new Float64Array(size);
  for (let i = 0; i < measurements.length; i++) {
    const { value, u } = measurements[i]!;
    if (u === Infinity) continue;
    const weighted = (value - predictions[i]!) / (u * u);
    for (let p = from[i]!; p < to[i]!; p++) g[columns[p]!]! += weighted * values[p]!;
  }
  for (let j = 0; j < size; j++) {
    const { mean, u } = priors[j]!;
    if (u < Infinity) g[j]! += (mean - parameters[j]!) / (u * u);
  }
  return g;
}
