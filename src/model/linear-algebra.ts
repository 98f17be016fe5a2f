// Factors and solves small symmetric systems that may lack rank; knows nothing of what the unknowns are.

/** The factor of a symmetric matrix scaled to a unit diagonal: D⁻¹ A D⁻¹ = Uᵀ U. */
export interface Factor {
  readonly size: number;
  /** Of U; Infinity at a column that depends on those before it. */
  readonly diagonal: Float64Array;
  /** U beyond its diagonal without the zeros: of row k, from `starts[k]` to before `starts[k + 1]`. */
  readonly values: Float64Array;
  readonly columns: Int32Array;
  readonly starts: Int32Array;
  /** D, the square roots of the diagonal of A; 1 where that is zero. */
  readonly scale: Float64Array;
  /** The columns that depend on those before them, in order. */
  readonly dependent: readonly number[];
}

/** What is left of a unit diagonal below which a column counts as dependent: some thousand roundings. */
const smallestPivot = 1e-12;

/** Room for what is being factored; grows with the largest, so that factors themselves stay small. */
let room = new Float64Array(0);
let roomForColumns = new Int32Array(0);

/**
 * Cholesky's factor of A + damping · diag(A), with A symmetric, not negative, row by row (only the upper triangle is
 * read). A column that depends on those before it is set aside: solving leaves its unknown at zero. Zeros are passed
 * over, so that unknowns which few measurements share cost little if they stand first.
 */
export function factorOf(a: Float64Array, size: number, damping = 0): Factor {
  const scale = new Float64Array(size);
  for (let j = 0; j < size; j++) {
    const d = Math.sqrt(a[j * size + j]!);
    scale[j] = d > 0 && Number.isFinite(d) ? d : 1;
  }
  if (room.length < size * size) {
    room = new Float64Array(size * size);
    roomForColumns = new Int32Array(size * size);
  }
  const [upper, columns] = [room, roomForColumns];
  for (let i = 0; i < size; i++) {
    const row = i * size;
    for (let j = i; j < size; j++) {
      const x = a[row + j]!;
      upper[row + j] = x === 0 ? 0 : x / (scale[i]! * scale[j]!);
    }
    upper[row + i]! += damping;
  }
  const diagonal = new Float64Array(size);
  const starts = new Int32Array(size + 1);
  const dependent: number[] = [];
  for (let k = 0; k < size; k++) {
    const row = k * size;
    const first = starts[k]!;
    const rest = upper[row + k]!;
    starts[k + 1] = first;
    if (!(rest > smallestPivot)) {
      dependent.push(k);
      diagonal[k] = Infinity;
      continue;
    }
    const pivot = Math.sqrt(rest);
    diagonal[k] = pivot;
    let end = first;
    for (let j = k + 1; j < size; j++) {
      if (upper[row + j] === 0) continue;
      upper[row + j]! /= pivot;
      columns[end++] = j;
    }
    starts[k + 1] = end;
    for (let p = first; p < end; p++) {
      const below = columns[p]! * size;
      const factor = upper[row + columns[p]!]!;
      for (let q = p; q < end; q++) upper[below + columns[q]!]! -= factor * upper[row + columns[q]!]!;
    }
  }
  const values = new Float64Array(starts[size]!);
  for (let k = 0; k < size; k++)
    for (let p = starts[k]!; p < starts[k + 1]!; p++) values[p] = upper[k * size + columns[p]!]!;
  return { size, diagonal, values, columns: columns.slice(0, values.length), starts, scale, dependent };
}

/** U⁻ᵀ D⁻¹ b, in place. */
export function solveLower(
  { size, diagonal, values, columns, starts, scale }: Factor,
  b: Float64Array,
): Float64Array {
  for (let k = 0; k < size; k++) if (b[k] !== 0) b[k]! /= scale[k]!;
  for (let k = 0; k < size; k++) {
    if (b[k] === 0) continue;
    const x = b[k]! / diagonal[k]!;
    b[k] = x;
    if (x === 0) continue;
    for (let p = starts[k]!, end = starts[k + 1]!; p < end; p++) b[columns[p]!]! -= values[p]! * x;
  }
  return b;
}

/** D⁻¹ U⁻¹ b, in place. */
export function solveUpper(
  { size, diagonal, values, columns, starts, scale }: Factor,
  b: Float64Array,
): Float64Array {
  for (let i = size - 1; i >= 0; i--) {
    let rest = b[i]!;
    for (let p = starts[i]!, end = starts[i + 1]!; p < end; p++) rest -= values[p]! * b[columns[p]!]!;
    b[i] = rest / diagonal[i]!;
  }
  for (let i = 0; i < size; i++) b[i]! /= scale[i]!;
  return b;
}

/** A⁻¹ b, as a new vector; zero where an unknown is set aside as dependent. */
export function solved(factor: Factor, b: Float64Array): Float64Array {
  return solveUpper(factor, solveLower(factor, b.slice()));
}

/** A⁻¹ row by row, all of it; zero in the rows and columns that are set aside as dependent. */
export function inverseOf(factor: Factor): Float64Array {
  const { size } = factor;
  const inverse = new Float64Array(size * size);
  for (let j = 0; j < size; j++) {
    const row = inverse.subarray(j * size, (j + 1) * size);
    row[j] = 1;
    solveUpper(factor, solveLower(factor, row));
  }
  return inverse;
}

/** The element of A⁻¹ on its diagonal at unknown `j`; 0 where that is set aside as dependent. */
export function inverseDiagonal(factor: Factor, j: number): number {
  const half = new Float64Array(factor.size);
  half[j] = 1;
  solveLower(factor, half);
  return dot(half, half);
}

/** One vector for each dependent column that A takes to zero; together they span what A cannot see. */
export function nullVectors(factor: Factor): readonly Float64Array[] {
  const { size, diagonal, values, columns, starts, scale } = factor;
  return factor.dependent.map((column) => {
    const vector = new Float64Array(size);
    vector[column] = 1;
    for (let i = column - 1; i >= 0; i--) {
      let rest = 0;
      for (let p = starts[i]!; p < starts[i + 1]!; p++) rest -= values[p]! * vector[columns[p]!]!;
      vector[i] = rest / diagonal[i]!;
    }
    return vector.map((x, i) => x / scale[i]!);
  });
}

export function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += a[i]! * b[i]!;
  return sum;
}
