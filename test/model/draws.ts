// Seeded draws for the tests of the model: the same numbers in every run.

/** Uniform in [0, 1): Mulberry32, 32 bits of state, enough for a test. */
export function uniforms(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
}

/** Standard normal: Box & Muller 1958. */
export function normals(seed: number): () => number {
  const next = uniforms(seed);
  return () => Math.sqrt(-2 * Math.log(1 - next())) * Math.cos(2 * Math.PI * next());
}

/** The largest distance between the empirical distribution of numbers in [0, 1] and the uniform one (Kolmogorov). */
export function distanceFromUniform(numbers: readonly number[]): number {
  const sorted = numbers.toSorted((a, b) => a - b);
  const n = sorted.length;
  return Math.max(...sorted.map((p, i) => Math.max(Math.abs(p - i / n), Math.abs(p - (i + 1) / n))));
}
