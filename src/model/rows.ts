// Rows of numbers of which most are zero; knows nothing of what they are.

/** Row i holds `values[p]` in column `columns[p]`, for p from `from[i]` to before `to[i]`, columns rising; zeros elsewhere. */
export interface Rows {
  /** How many columns there are. */
  readonly size: number;
  readonly from: Int32Array;
  readonly to: Int32Array;
  readonly columns: Int32Array;
  readonly values: Float64Array;
}

/** The rows of a matrix that is given row by row, zeros and all. */
export function rowsOf(dense: ArrayLike<number>, size: number): Rows {
  const count = Math.floor(dense.length / Math.max(1, size));
  const [from, to] = [new Int32Array(count), new Int32Array(count)];
  const columns: number[] = [];
  const values: number[] = [];
  for (let i = 0; i < count; i++) {
    from[i] = columns.length;
    for (let j = 0; j < size; j++) {
      const value = dense[i * size + j]!;
      if (value === 0) continue;
      columns.push(j);
      values.push(value);
    }
    to[i] = columns.length;
  }
  return { size, from, to, columns: Int32Array.from(columns), values: Float64Array.from(values) };
}

/** The rows at these places, in this order; shares their numbers. */
export function picked(rows: Rows, places: readonly number[]): Rows {
  const from = Int32Array.from(places, (place) => rows.from[place]!);
  const to = Int32Array.from(places, (place) => rows.to[place]!);
  return { ...rows, from, to };
}

/** Row i with its zeros. */
export function denseRow({ size, from, to, columns, values }: Rows, i: number): Float64Array {
  const row = new Float64Array(size);
  for (let p = from[i]!; p < to[i]!; p++) row[columns[p]!] = values[p]!;
  return row;
}

export function rowDot({ from, to, columns, values }: Rows, i: number, vector: Float64Array): number {
  let sum = 0;
  for (let p = from[i]!; p < to[i]!; p++) sum += values[p]! * vector[columns[p]!]!;
  return sum;
}
