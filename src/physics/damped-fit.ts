// Finds the numbers that make a list of residuals small (Gauss–Newton with Levenberg's damping); knows nothing of what they mean.

/** Residuals over their standard deviations; always as many. */
export type Residuals = (numbers: Float64Array) => Float64Array;

const firstDamping = 1e-3;
const mostDamping = 1e10;
/** A step that brings the sum of squares down by less than this, and than this share of it, is the last. */
const leastGain = { absolute: 0.01, share: 0.002 } as const;

/**
 * The numbers, kept within their limits, at which the sum of squares of the residuals is smallest near `start`.
 * Levenberg 1944, Quart. Appl. Math. 2:164, with slopes by forward differences and Marquardt's scaling by the diagonal.
 *
 * @param limits lowest and highest of each number. @param most steps. @returns the best point met.
 */
export function dampedFit(
  residuals: Residuals,
  start: Float64Array,
  limits: readonly (readonly [number, number])[],
  most = 60,
): Float64Array {
  const held = (numbers: Float64Array): Float64Array =>
    numbers.map((number, i) => Math.min(limits[i]![1], Math.max(limits[i]![0], number)));
  let at = held(start);
  let now = residuals(at);
  let sum = squares(now);
  let damping = firstDamping;
  for (let step = 0; step < most; step++) {
    const { matrix, gradient } = normal(residuals, at, now);
    let gained = 0;
    while (damping < mostDamping) {
      const move = solved(matrix, gradient, damping);
      const next = move && held(at.map((number, i) => number - move[i]!));
      const there = next && residuals(next);
      const then = there ? squares(there) : Infinity;
      if (next && there && then < sum) {
        gained = sum - then;
        [at, now, sum] = [next, there, then];
        damping = Math.max(1e-9, damping / 8);
        break;
      }
      damping *= 6;
    }
    if (!(gained > leastGain.absolute + leastGain.share * sum)) break;
  }
  return at;
}

function squares(residuals: Float64Array): number {
  let sum = 0;
  for (const residual of residuals) sum += residual * residual;
  return Number.isFinite(sum) ? sum : Infinity;
}

/** JᵀJ, row after row, and Jᵀr. */
function normal(
  residuals: Residuals,
  at: Float64Array,
  now: Float64Array,
): { readonly matrix: Float64Array; readonly gradient: Float64Array } {
  const count = at.length;
  const slopes: Float64Array[] = [];
  for (let i = 0; i < count; i++) {
    const beside = Float64Array.from(at);
    const step = 1e-7;
    beside[i] = at[i]! + step;
    const then = residuals(beside);
    slopes.push(then.map((value, k) => (value - now[k]!) / step));
  }
  const matrix = new Float64Array(count * count);
  const gradient = new Float64Array(count);
  for (let i = 0; i < count; i++) {
    gradient[i] = product(slopes[i]!, now);
    for (let k = 0; k <= i; k++) {
      matrix[i * count + k] = matrix[k * count + i] = product(slopes[i]!, slopes[k]!);
    }
  }
  return { matrix, gradient };
}

function product(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += a[i]! * b[i]!;
  return sum;
}

/** Cholesky's method; undefined where the damped matrix is not positive definite. */
function solved(matrix: Float64Array, right: Float64Array, damping: number): Float64Array | undefined {
  const count = right.length;
  const factor = new Float64Array(count * count);
  for (let i = 0; i < count; i++) {
    for (let k = 0; k <= i; k++) {
      let sum = matrix[i * count + k]!;
      if (i === k) sum += damping * sum + 1e-12;
      for (let j = 0; j < k; j++) sum -= factor[i * count + j]! * factor[k * count + j]!;
      if (i === k) {
        if (!(sum > 0)) return undefined;
        factor[i * count + i] = Math.sqrt(sum);
      } else factor[i * count + k] = sum / factor[k * count + k]!;
    }
  }
  const solution = Float64Array.from(right);
  for (let i = 0; i < count; i++) {
    for (let k = 0; k < i; k++) solution[i]! -= factor[i * count + k]! * solution[k]!;
    solution[i]! /= factor[i * count + i]!;
  }
  for (let i = count - 1; i >= 0; i--) {
    for (let k = i + 1; k < count; k++) solution[i]! -= factor[k * count + i]! * solution[k]!;
    solution[i]! /= factor[i * count + i]!;
  }
  return solution.every(Number.isFinite) ? solution : undefined;
}
