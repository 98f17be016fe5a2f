// Factors and solves small symmetric systems that may lack rank; knows nothing of what the unknowns are.

/** The factor of a symmetric matrix scaled to a unit diagonal: D⁻¹ A D⁻¹ = Uᵀ U. */
export interface Factor {
  readonly size: number;
  /** Row by row, upper triangle; Infinity on the diagonal of a column that depends on those before it. */
  readonly upper: Float64Array;
  /** D, the square roots of the diagonal of A; 1 where that is zero. */
  readonly scale: Float64Array;
  /** The columns that depend on those before them, in order. */
  readonly dependent: readonly number[];
}

/** What is left of a unit diagonal below which a column counts as dependent: some thousand roundings. */
const smallestPivot = 1e-12;

/**
 * Cholesky's factor of A + damping · diag(A), with A symmetric, not negative, row by row (only the upper triangle is
 * read). A column that depends on those before it is set aside: solving leaves its unknown at zero. Zeros are passed
 * over, so that unknowns which few measurements share cost little if they stand first.
 */
export function factorOf(a: Float64Array, size: number, damping = 0): Factor {
  const upper = new Float64Array(size * size);
  const scale = new Float64Array(size);
  const dependent: number[] = [];
  for (let j = 0; j < size; j++) {
    const d = Math.sqrt(a[j * size + j]!);
    scale[j] = d > 0 && Number.isFinite(d) ? d : 1;
  }
  for (let i = 0; i < size; i++) {
    const row = i * size;
    for (let j = i; j < size; j++) upper[row + j] = a[row + j]! / (scale[i]! * scale[j]!);
    upper[row + i]! += damping;
  }
  for (let k = 0; k < size; k++) {
    const row = k * size;
    const rest = upper[row + k]!;
    if (!(rest > smallestPivot)) {
      dependent.push(k);
      upper.fill(0, row + k + 1, row + size);
      upper[row + k] = Infinity;
      continue;
    }
    const pivot = Math.sqrt(rest);
    upper[row + k] = pivot;
    for (let j = k + 1; j < size; j++) if (upper[row + j] !== 0) upper[row + j]! /= pivot;
    for (let j = k + 1; j < size; j++) {
      const factor = upper[row + j]!;
      if (factor === 0) continue;
      const below = j * size;
      for (let i = j; i < size; i++) upper[below + i]! -= factor * upper[row + i]!;
    }
  }
  return { size, upper, scale, dependent };
}

/** U⁻ᵀ D⁻¹ b, in place. */
export function solveLower({ size, upper, scale }: Factor, b: Float64Array): Float64Array {
  for (let k = 0; k < size; k++) if (b[k] !== 0) b[k]! /= scale[k]!;
  for (let k = 0; k < size; k++) {
    if (b[k] === 0) continue;
    const row = k * size;
    const x = b[k]! / upper[row + k]!;
    b[k] = x;
    if (x !== 0) for (let i = k + 1; i < size; i++) b[i]! -= upper[row + i]! * x;
  }
  return b;
}

/** D⁻¹ U⁻¹ b, in place. */
export function solveUpper({ size, upper, scale }: Factor, b: Float64Array): Float64Array {
  for (let i = size - 1; i >= 0; i--) {
    const row = i * size;
    let rest = b[i]!;
    for (let k = i + 1; k < size; k++) rest -= upper[row + k]! * b[k]!;
    b[i] = rest / upper[row + i]!;
  }
  for (let i = 0; i < size; i++) b[i]! /= scale[i]!;
  return b;
}

/** A⁻¹ row by row, all of it; zero in the rows and columns that are set aside as dependent. */
export function inverseOf({ size, upper, scale }: Factor): Float64Array {
  const inverse = new Float64Array(size * size);
  // V = U⁻¹ first, then V Vᵀ.
  const v = new Float64Array(size * size);
  for (let i = size - 1; i >= 0; i--) {
    const row = i * size;
    const pivot = upper[row + i]!;
    v[row + i] = 1;
    for (let k = i + 1; k < size; k++) {
      const factor = upper[row + k]!;
      if (factor === 0) continue;
      for (let j = k, other = k * size; j < size; j++) v[row + j]! -= factor * v[other + j]!;
    }
    for (let j = i; j < size; j++) v[row + j]! /= pivot;
  }
  for (let i = 0; i < size; i++) {
    for (let j = i; j < size; j++) {
      let sum = 0;
      for (let k = j, a = i * size, b = j * size; k < size; k++) sum += v[a + k]! * v[b + k]!;
      sum /= scale[i]! * scale[j]!;
      inverse[i * size + j] = sum;
      inverse[j * size + i] = sum;
    }
  }
  return inverse;
}

/** One vector for each dependent column that A takes to zero; together they span what A cannot see. */
export function nullVectors(factor: Factor): readonly Float64Array[] {
  const { size, upper, scale } = factor;
  return factor.dependent.map((column) => {
    const vector = new Float64Array(size);
    for (let i = column - 1; i >= 0; i--) {
      let rest = -upper[i * size + column]!;
      for (let k = i + 1; k < column; k++) rest -= upper[i * size + k]! * vector[k]!;
      vector[i] = rest / upper[i * size + i]!;
    }
    vector[column] = 1;
    return vector.map((x, i) => x / scale[i]!);
  });
}

export function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += a[i]! * b[i]!;
  return sum;
}
