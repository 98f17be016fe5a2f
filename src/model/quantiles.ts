// Quantiles and tail probabilities of the normal, Student's and the χ² distribution; knows nothing of what they judge.

/** Probability that a standard normal variable is below z. */
export function normalBelow(z: number): number {
  if (Number.isNaN(z)) return 0.5;
  const tail = gammaUpper(0.5, (z * z) / 2) / 2;
  return z > 0 ? 1 - tail : tail;
}

/**
 * The z below which a standard normal variable lies with probability p, to some 1e-14 relative; ∓Infinity at 0 and 1.
 * Acklam's rational start (2003; 1e-9 relative), then two steps of Halley's rule on `normalBelow`.
 */
export function normalQuantile(p: number): number {
  if (!(p > 0)) return -Infinity;
  if (p >= 1) return Infinity;
  if (p > 0.5) return -normalQuantile(1 - p);
  let z = acklam(p);
  for (let k = 0; k < 2; k++) {
    const excess = (normalBelow(z) - p) * Math.sqrt(2 * Math.PI) * Math.exp((z * z) / 2);
    z -= excess / (1 + (z * excess) / 2);
  }
  return z;
}

/** Probability that a χ² variable with so many degrees of freedom (> 0, whole or not) is at least x. */
export function chiSquaredTail(x: number, freedom: number): number {
  if (!(x > 0)) return 1;
  return x === Infinity ? 0 : gammaUpper(freedom / 2, x / 2);
}

/** The x below which a χ² variable lies with probability p; 0 and Infinity at 0 and 1. */
export function chiSquaredQuantile(p: number, freedom: number): number {
  if (!(p > 0)) return 0;
  if (p >= 1) return Infinity;
  return inverted((x) => 1 - chiSquaredTail(x, freedom), p, 0, freedom + 10 * Math.sqrt(freedom) + 10);
}

/** Probability that a variable of Student's distribution with so many degrees of freedom (> 0) is below t. */
export function studentBelow(t: number, freedom: number): number {
  const tail = studentTail(Math.abs(t), freedom);
  return t > 0 ? 1 - tail : tail;
}

/** The t below which a variable of Student's distribution lies with probability p; ∓Infinity at 0 and 1. */
export function studentQuantile(p: number, freedom: number): number {
  if (!(p > 0)) return -Infinity;
  if (p >= 1) return Infinity;
  if (freedom === Infinity) return normalQuantile(p);
  const tail = Math.min(p, 1 - p);
  const t = inverted((x) => 1 - studentTail(x, freedom) / tail, 0, 0, 10);
  return p < 0.5 ? -t : t;
}

function studentTail(t: number, freedom: number): number {
  return betaBelow(freedom / (freedom + t * t), freedom / 2, 0.5) / 2;
}

/** Bisects a rising function after doubling the upper end until it is above p. */
function inverted(below: (x: number) => number, p: number, from: number, to: number): number {
  let [low, high] = [from, to];
  while (below(high) < p && high < 1e300) [low, high] = [high, high * 2];
  for (let k = 0; k < 200; k++) {
    const middle = (low + high) / 2;
    if (middle <= low || middle >= high) break;
    if (below(middle) < p) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** Regularised upper incomplete gamma function Q(a, x): series below a + 1, Lentz's continued fraction above (DLMF 8.7, 8.9). */
function gammaUpper(a: number, x: number): number {
  if (x <= 0) return 1;
  const front = Math.exp(a * Math.log(x) - x - logGamma(a));
  if (x < a + 1) {
    let term = 1 / a;
    let sum = term;
    for (let n = 1; n < 10000 && term > sum * 1e-17; n++) {
      term *= x / (a + n);
      sum += term;
    }
    return Math.max(0, 1 - front * sum);
  }
  return front / continuedFraction(x + 1 - a, (n) => [-n * (n - a), x + 1 - a + 2 * n]);
}

/** Regularised incomplete beta function I_x(a, b) by its continued fraction (DLMF 8.17.22). */
function betaBelow(x: number, a: number, b: number): number {
  if (!(x > 0)) return 0;
  if (x >= 1) return 1;
  if (x > (a + 1) / (a + b + 2)) return 1 - betaBelow(1 - x, b, a);
  const front = Math.exp(logGamma(a + b) - logGamma(a) - logGamma(b) + a * Math.log(x) + b * Math.log1p(-x));
  const coefficient = (n: number): number => {
    const m = Math.floor(n / 2);
    return n % 2 === 0
      ? (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m))
      : (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
  };
  return front / (a * continuedFraction(1, (n) => [coefficient(n), 1]));
}

/** b₀ + a₁/(b₁ + a₂/(b₂ + …)) by Lentz's method; `terms` gives the n-th aₙ and bₙ. */
function continuedFraction(first: number, terms: (n: number) => readonly [number, number]): number {
  const tiny = 1e-300;
  let value = Math.abs(first) < tiny ? tiny : first;
  let c = value;
  let d = 0;
  for (let n = 1; n < 10000; n++) {
    const [a, b] = terms(n);
    const below = b + a * d;
    d = 1 / (Math.abs(below) < tiny ? tiny : below);
    const above = b + a / c;
    c = Math.abs(above) < tiny ? tiny : above;
    value *= c * d;
    if (Math.abs(c * d - 1) < 1e-15) break;
  }
  return value;
}

/** Lanczos' approximation with g = 7 and nine coefficients (Godfrey 2001), about 1e-15 relative for x > 0. */
function logGamma(x: number): number {
  if (x < 0.5) return Math.log(Math.PI / Math.sin(Math.PI * x)) - logGamma(1 - x);
  const z = x - 1;
  let sum = lanczos[0]!;
  for (let k = 1; k < lanczos.length; k++) sum += lanczos[k]! / (z + k);
  const t = z + 7.5;
  return 0.5 * Math.log(2 * Math.PI) + (z + 0.5) * Math.log(t) - t + Math.log(sum);
}

const lanczos = [
  0.99999999999980993, 676.5203681218851, -1259.1392167224028, 771.32342877765313, -176.61502916214059,
  12.507343278686905, -0.13857109526572012, 9.9843695780195716e-6, 1.5056327351493116e-7,
];

/** Peter Acklam's lower-half approximation, 2003; relative error below 1.15e-9. */
function acklam(p: number): number {
  if (p < 0.02425) {
    const q = Math.sqrt(-2 * Math.log(p));
    return polynomial(tailAbove, q) / (polynomial(tailBelow, q) * q + 1);
  }
  const q = p - 0.5;
  const r = q * q;
  return (polynomial(centreAbove, r) * q) / (polynomial(centreBelow, r) * r + 1);
}

function polynomial(coefficients: readonly number[], x: number): number {
  return coefficients.reduce((sum, c) => sum * x + c, 0);
}

const centreAbove = [
  -39.69683028665376, 220.9460984245205, -275.9285104469687, 138.357751867269, -30.66479806614716,
  2.506628277459239,
];
const centreBelow = [
  -54.47609879822406, 161.5858368580409, -155.6989798598866, 66.80131188771972, -13.28068155288572,
];
const tailAbove = [
  -0.007784894002430293, -0.3223964580411365, -2.400758277161838, -2.549732539343734, 4.374664141464968,
  2.938163982698783,
];
const tailBelow = [0.007784695709041462, 0.3224671290700398, 2.445134137142996, 3.754408661416];
