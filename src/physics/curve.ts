// A smooth monotone curve through given points; knows nothing of what they are.

/**
 * The monotone piecewise cubic through the points, held constant beyond both ends.
 * Source: Fritsch & Butland 1984, SIAM J. Sci. Stat. Comput. 5:300 (harmonic mean of the slopes to both sides).
 *
 * @param at increasing, at least two. @param values as many as `at`.
 */
export function createCurve(at: readonly number[], values: readonly number[]): (x: number) => number {
  const last = Math.min(at.length, values.length) - 1;
  const knots = Float64Array.from(at);
  const heights = Float64Array.from(values);
  const slopes = new Float64Array(last + 1);
  const secant = (i: number) => (heights[i + 1]! - heights[i]!) / (knots[i + 1]! - knots[i]!);
  // Level at the ends, so that the curve joins the constants beyond them without a kink.
  for (let i = 1; i < last; i++) {
    const [before, after] = [secant(i - 1), secant(i)];
    if (before * after <= 0) continue;
    const left = knots[i]! - knots[i - 1]!;
    const right = knots[i + 1]! - knots[i]!;
    slopes[i] = (3 * (left + right)) / ((2 * right + left) / before + (right + 2 * left) / after);
  }
  return (x) => {
    if (!(x > knots[0]!)) return heights[0]!;
    if (x >= knots[last]!) return heights[last]!;
    let i = 0;
    while (knots[i + 1]! < x) i++;
    const width = knots[i + 1]! - knots[i]!;
    const share = (x - knots[i]!) / width;
    const rest = 1 - share;
    return (
      rest * rest * ((1 + 2 * share) * heights[i]! + share * width * slopes[i]!) +
      share * share * ((3 - 2 * share) * heights[i + 1]! - rest * width * slopes[i + 1]!)
    );
  };
}
