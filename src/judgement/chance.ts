// How probable it is that an expression holds, given what is known of its quantities; knows no record and no fault.
import type { Joint } from '../model/joint.ts';
import { normalBelow } from '../model/quantiles.ts';
import type { Expression } from './expression.ts';

export interface Chance {
  /** Undefined where it cannot be told. */
  readonly probability: number | undefined;
  /** Ids without a value. */
  readonly missing: readonly string[];
}

/** Even, so that the points come in pairs; their share differs from the true probability by less than a hundredth. */
const draws = 2048;

/** What an unknown part may move the probability by before it is said that nobody can tell. */
const indifferent = 0.05;

/**
 * A single comparison that is linear: Φ(d/u), d the distance of its sides at the means and u² = gᵀ C g with their slopes g and the
 * covariance C (JCGM 102:2011, 6.2), which is exact for normal quantities. Anything else: the share of a fixed set of draws from
 * the joint normal distribution in which it holds (propagation of distributions, JCGM 101:2008, with points of an additive
 * recurrence in place of chance, so that the same record always gives the same number).
 */
export function chanceOf(expression: Expression, { means, covariance }: Joint): Chance {
  const ids = expression.quantities.map(({ id }) => id);
  const missing = ids.filter((_, i) => Number.isNaN(means[i]!));
  const { margin } = expression;
  if (missing.length > 0 && margin !== undefined) return { probability: undefined, missing };
  if (margin !== undefined) return { probability: marginChance(margin, means, covariance), missing };
  return { probability: drawnChance(expression, means, covariance), missing };
}

/**
 * That every quantity lies in its window at once: Φ((max − x)/u) − Φ((min − x)/u) for one; for more the share of the same draws from
 * their joint normal distribution that lie in all windows.
 */
export function chanceInAll(
  { means, covariance }: Joint,
  windows: readonly { readonly min: number; readonly max: number }[],
): number {
  if (windows.length === 0) return 1;
  if (windows.length === 1) {
    const [{ min, max }, mean, u] = [windows[0]!, means[0]!, Math.sqrt(covariance[0]!)];
    if (!(u > 0)) return mean >= min && mean <= max ? 1 : 0;
    return normalBelow((max - mean) / u) - normalBelow((min - mean) / u);
  }
  let inside = 0;
  for (const values of drawsFrom(means, covariance))
    if (windows.every(({ min, max }, i) => values[i]! >= min && values[i]! <= max)) inside += 1;
  return inside / draws;
}

function marginChance(
  margin: (values: ArrayLike<number>) => number,
  means: Float64Array,
  covariance: Float64Array,
): number | undefined {
  const size = means.length;
  const distance = margin(means);
  const slopes = means.map((mean, i) => {
    const u = Math.sqrt(covariance[i * (size + 1)]!);
    return u > 0 ? (margin(means.with(i, mean + u)) - distance) / u : 0;
  });
  let variance = 0;
  for (const [i, a] of slopes.entries())
    for (const [j, b] of slopes.entries()) variance += a * b * covariance[i * size + j]!;
  if (!Number.isFinite(distance) || !Number.isFinite(variance)) return undefined;
  if (!(variance > 0)) return distance > 0 ? 1 : 0;
  return normalBelow(distance / Math.sqrt(variance));
}

function drawnChance(
  { holds }: Expression,
  means: Float64Array,
  covariance: Float64Array,
): number | undefined {
  let surely = 0;
  let perhaps = 0;
  for (const values of drawsFrom(means, covariance)) {
    const truth = holds(values);
    if (truth === 1) surely += 1;
    if (truth !== 0) perhaps += 1;
  }
  const [least, most] = [surely / draws, perhaps / draws];
  return most - least > indifferent ? undefined : (least + most) / 2;
}

/** The same array each time, with what is known drawn anew. */
function* drawsFrom(means: Float64Array, covariance: Float64Array): Generator<Float64Array> {
  const known = [...means.keys()].filter((i) => !Number.isNaN(means[i]!));
  const factor = lowerFactor(known, covariance, means.length);
  const values = new Float64Array(means);
  const standard = new Float64Array(known.length);
  const steps = recurrenceSteps(2 * Math.ceil(known.length / 2));
  for (let draw = 0; draw < draws; draw++) {
    fillStandard(standard, draw, steps);
    for (const [i, at] of known.entries()) {
      let value = means[at]!;
      for (let j = 0; j <= i; j++) value += factor[i * known.length + j]! * standard[j]!;
      values[at] = value;
    }
    yield values;
  }
}

/** Cholesky's factor of the covariance of the known ones, row by row; a row without variance of its own stays zero there. */
function lowerFactor(known: readonly number[], covariance: Float64Array, size: number): Float64Array {
  const count = known.length;
  const factor = new Float64Array(count * count);
  for (let i = 0; i < count; i++)
    for (let j = 0; j <= i; j++) {
      let rest = covariance[known[i]! * size + known[j]!]!;
      for (let k = 0; k < j; k++) rest -= factor[i * count + k]! * factor[j * count + k]!;
      if (i === j) factor[i * count + i] = Math.sqrt(Math.max(0, rest));
      else {
        const pivot = factor[j * count + j]!;
        factor[i * count + j] = pivot > 0 ? rest / pivot : 0;
      }
    }
  return factor;
}

/**
 * Standard normal numbers from the point of the additive recurrence with the given number (Roberts 2018, the unreasonable
 * effectiveness of quasirandom sequences), by Box & Muller 1958; every second draw is the mirror image of the one before.
 */
function fillStandard(standard: Float64Array, draw: number, steps: readonly number[]): void {
  const mirror = draw % 2 === 0 ? 1 : -1;
  const point = Math.floor(draw / 2) + 1;
  for (let i = 0; i < standard.length; i += 2) {
    const radius = Math.sqrt(-2 * Math.log(1 - fraction(0.5 + point * steps[i]!)));
    const turn = 2 * Math.PI * fraction(0.5 + point * steps[i + 1]!);
    standard[i] = mirror * radius * Math.cos(turn);
    if (i + 1 < standard.length) standard[i + 1] = mirror * radius * Math.sin(turn);
  }
}

/** The powers −1 to −d of the positive root of x^(d + 1) = x + 1. */
function recurrenceSteps(dimension: number): readonly number[] {
  let root = 2;
  for (let k = 0; k < 40; k++) root = (1 + root) ** (1 / (dimension + 1));
  return Array.from({ length: dimension }, (_, i) => root ** -(i + 1));
}

function fraction(x: number): number {
  return x - Math.floor(x);
}
