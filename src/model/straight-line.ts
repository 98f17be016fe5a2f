// The best straight line through points that are uncertain in both directions, and how sure its slope is; knows no quantity.
import { chiSquaredTail } from './quantiles.ts';

export interface Point {
  readonly x: number;
  readonly ux: number;
  readonly y: number;
  readonly uy: number;
}

export interface Line {
  readonly slope: number;
  /** One standard uncertainty from those of the points alone. */
  readonly u: number;
  readonly intercept: number;
  /** The weighted sum of the squares of what is left over; about `freedom` where the uncertainties are right and the line is straight. */
  readonly chiSquared: number;
  readonly freedom: number;
}

/** So improbable must it be that all x are the same, or else the slope would be one of noise over noise. */
const same = 0.05;

const mostRounds = 200;

/**
 * York, Evensen, López Martínez & De Basabe Delgado 2004, Am. J. Phys. 72, 367, equations (13a) to (13d) without correlation:
 * with ω = 1/u², W = ωx ωy/(ωx + b² ωy) and U, V the distances from the weighted means, b = Σ W β V / Σ W β U with
 * β = W (U/ωy + b V/ωx), again and again until b stays; u² = 1/Σ W (x′ − x̄′)² of the adjusted x′ = x̄ + β. Uncertain x would pull
 * the slope of an ordinary line toward zero.
 *
 * Undefined of fewer than three points, where x may be the same in all of them, and where no slope is found.
 */
export function straightLine(points: readonly Point[]): Line | undefined {
  if (points.length < 3 || !moves(points)) return undefined;
  let slope = ordinarySlope(points);
  for (let round = 0; round < mostRounds; round++) {
    const next = rounded(points, slope).next;
    if (!Number.isFinite(next)) return undefined;
    const isSettled = Math.abs(next - slope) <= 1e-12 * Math.abs(next);
    slope = next;
    if (isSettled || round === mostRounds - 1) return isSettled ? lineOf(points, slope) : undefined;
  }
  return undefined;
}

function moves(points: readonly Point[]): boolean {
  const weights = points.map(({ ux }) => 1 / (ux * ux));
  const mean = weightedMean(
    points.map(({ x }) => x),
    weights,
  );
  const spread = points.reduce((sum, { x }, i) => sum + weights[i]! * (x - mean) ** 2, 0);
  return Number.isFinite(spread) && chiSquaredTail(spread, points.length - 1) < same;
}

function ordinarySlope(points: readonly Point[]): number {
  const weights = points.map(({ uy }) => 1 / (uy * uy));
  const x = weightedMean(
    points.map((point) => point.x),
    weights,
  );
  const y = weightedMean(
    points.map((point) => point.y),
    weights,
  );
  let [above, below] = [0, 0];
  for (const [i, point] of points.entries()) {
    above += weights[i]! * (point.x - x) * (point.y - y);
    below += weights[i]! * (point.x - x) ** 2;
  }
  return above / below;
}

function rounded(points: readonly Point[], b: number) {
  const weights = points.map(({ ux, uy }) => 1 / (uy * uy + b * b * ux * ux));
  const x = weightedMean(
    points.map((point) => point.x),
    weights,
  );
  const y = weightedMean(
    points.map((point) => point.y),
    weights,
  );
  const betas = points.map(
    (point, i) => weights[i]! * ((point.x - x) * point.uy ** 2 + b * (point.y - y) * point.ux ** 2),
  );
  let [above, below] = [0, 0];
  for (const [i, point] of points.entries()) {
    above += weights[i]! * betas[i]! * (point.y - y);
    below += weights[i]! * betas[i]! * (point.x - x);
  }
  return { next: above / below, weights, betas, x, y };
}

function lineOf(points: readonly Point[], slope: number): Line | undefined {
  const { weights, betas, x, y } = rounded(points, slope);
  const middle = weightedMean(betas, weights);
  const spread = betas.reduce((sum, beta, i) => sum + weights[i]! * (beta - middle) ** 2, 0);
  const intercept = y - slope * x;
  const chiSquared = points.reduce(
    (sum, point, i) => sum + weights[i]! * (point.y - intercept - slope * point.x) ** 2,
    0,
  );
  const u = 1 / Math.sqrt(spread);
  return Number.isFinite(u) ? { slope, u, intercept, chiSquared, freedom: points.length - 2 } : undefined;
}

function weightedMean(values: readonly number[], weights: readonly number[]): number {
  const sum = weights.reduce((all, weight) => all + weight, 0);
  return values.reduce((all, value, i) => all + weights[i]! * value, 0) / sum;
}
