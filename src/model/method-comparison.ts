// How far two ways of measuring agree, and how far one agrees with itself: Bland and Altman's limits; knows no record.
import { studentQuantile } from './quantiles.ts';

/** Two measurements of one thing, in one unit; of what was measured again by one way the mean. */
export interface Pair {
  readonly one: number;
  readonly other: number;
}

export interface Interval95 {
  readonly from: number;
  readonly to: number;
}

export interface MethodComparison {
  readonly count: number;
  /** Mean of one − other, with its 95 % interval. */
  readonly bias: number;
  readonly biasInterval: Interval95;
  /** Standard deviation of the differences between one measurement each, also where means of several were compared. */
  readonly deviation: number;
  /** Between which 95 % of differences are expected, each end with its 95 % interval. */
  readonly limits: Interval95;
  readonly limitIntervals: { readonly from: Interval95; readonly to: Interval95 };
  /** Slope of the differences over the means, with its 95 % interval: where it does not hold zero, the limits grow or shrink with the size. */
  readonly trend: number | undefined;
  readonly trendInterval: Interval95 | undefined;
}

/** Fewer pairs say nothing of how differences scatter. */
export const fewestPairs = 3;

/** 95 % of a normal distribution lie within so many standard deviations. */
const within95 = 1.96;

/** By how much one measurement scatters about the mean of those that were taken: a variance, and how well it is known. */
export interface Scatter {
  readonly variance: number;
  /** The variance of that variance. */
  readonly doubt: number;
}

/** Of what was measured once each there is no mean to scatter about. */
const noScatter: Scatter = { variance: 0, doubt: 0 };

/**
 * Each thing as often as it was measured by one way: (1 − mean of 1/mᵢ) s_w², with the variance 2 (…)² s_w⁴ / Σ (mᵢ − 1)
 * (Bland & Altman 1999, Stat. Methods Med. Res. 8:135, sections 5.1 and 5.2). Of two measurements each it is s_w²/2, which their
 * paper of 1986 writes as a quarter of the variance of the differences between the two.
 */
export function scatterOf(things: readonly (readonly number[])[]): Scatter {
  const repeated = repeatabilityOf(things);
  if (repeated === undefined) return noScatter;
  const share = 1 - mean(things.map(({ length }) => 1 / Math.max(1, length)));
  const variance = share * repeated.within ** 2;
  return { variance, doubt: (2 * variance ** 2) / (repeated.measurements - repeated.things) };
}

/**
 * Bland & Altman 1986, Lancet 327:307–310: limits d̄ ± 1.96 s; standard errors √(s²/n) of the mean and √(3 s²/n) of a limit,
 * with Student's t of n − 1 degrees of freedom. Holds for differences that are about normal and do not grow with the size;
 * the trend of differences over means (Bland & Altman 1999, Stat. Methods Med. Res. 8:135, section 3.2) says whether they do.
 * Means differ by less than single measurements do, so that of repeated ones the scatter of both ways is added to the variance of the
 * differences; a limit then has the standard error √(s_d̄²/n + 1.96² var(s)), var(s) = var(s²)/(4 s²) (the paper of 1999, section 5.1).
 * Undefined for fewer than three pairs or values that are not finite.
 */
export function compareMethods(
  pairs: readonly Pair[],
  scatters: readonly Scatter[] = [],
): MethodComparison | undefined {
  const count = pairs.length;
  if (count < fewestPairs || pairs.some(({ one, other }) => !Number.isFinite(one - other))) return undefined;
  const differences = pairs.map(({ one, other }) => one - other);
  const bias = mean(differences);
  const ofMeans = squares(differences, bias) / (count - 1);
  const variance = scatters.reduce((sum, scatter) => sum + scatter.variance, ofMeans);
  const deviation = Math.sqrt(variance);
  const t = studentQuantile(0.975, count - 1);
  const around = (middle: number, error: number): Interval95 => ({
    from: middle - t * error,
    to: middle + t * error,
  });
  const limits = { from: bias - within95 * deviation, to: bias + within95 * deviation };
  const doubt = scatters.reduce((sum, scatter) => sum + scatter.doubt, (2 * ofMeans ** 2) / (count - 1));
  const ofLimit =
    variance === ofMeans
      ? deviation * Math.sqrt(3 / count)
      : Math.sqrt(ofMeans / count + (within95 ** 2 * doubt) / (4 * variance));
  const slope = slopeOf(pairs, differences, bias);
  return {
    count,
    bias,
    biasInterval: around(bias, Math.sqrt(ofMeans / count)),
    deviation,
    limits,
    limitIntervals: { from: around(limits.from, ofLimit), to: around(limits.to, ofLimit) },
    trend: slope?.value,
    trendInterval: slope?.interval,
  };
}

function slopeOf(
  pairs: readonly Pair[],
  differences: readonly number[],
  bias: number,
): { readonly value: number; readonly interval: Interval95 } | undefined {
  const means = pairs.map(({ one, other }) => (one + other) / 2);
  const middle = mean(means);
  const spread = squares(means, middle);
  const freedom = pairs.length - 2;
  // All of one size: nothing can grow with it.
  if (!(spread > 0) || freedom < 1) return undefined;
  const products = means.reduce((sum, m, i) => sum + (m - middle) * (differences[i]! - bias), 0);
  const value = products / spread;
  const left = means.reduce((sum, m, i) => sum + (differences[i]! - bias - value * (m - middle)) ** 2, 0);
  const error = studentQuantile(0.975, freedom) * Math.sqrt(left / freedom / spread);
  return { value, interval: { from: value - error, to: value + error } };
}

export interface Repeatability {
  /** Things that were measured several times, and the measurements of them in all. */
  readonly things: number;
  readonly measurements: number;
  /** Standard deviation of one measurement of the same thing. */
  readonly within: number;
  /** 95 % of differences between two measurements of the same thing are below it. */
  readonly coefficient: number;
}

/**
 * One-way analysis of variance: s_w² = Σ Σ (x − x̄ᵢ)² / Σ (nᵢ − 1); the coefficient is 1.96 √2 s_w (Bland & Altman 1999, section
 * 2; ISO 5725-6:1994, 4.1.4 calls it the repeatability limit). Things that were measured once say nothing. Undefined where none was
 * measured twice.
 */
export function repeatabilityOf(things: readonly (readonly number[])[]): Repeatability | undefined {
  const repeated = things.filter((values) => values.length > 1 && values.every(Number.isFinite));
  const freedom = repeated.reduce((sum, values) => sum + values.length - 1, 0);
  if (freedom === 0) return undefined;
  const total = repeated.reduce((sum, values) => sum + squares(values, mean(values)), 0);
  const withinThing = Math.sqrt(total / freedom);
  return {
    things: repeated.length,
    measurements: repeated.reduce((sum, values) => sum + values.length, 0),
    within: withinThing,
    coefficient: within95 * Math.SQRT2 * withinThing,
  };
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

function squares(values: readonly number[], middle: number): number {
  return values.reduce((sum, value) => sum + (value - middle) ** 2, 0);
}
