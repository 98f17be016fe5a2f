// Three-vectors and 3×3 systems as plain numbers; knows nothing of golf.

export interface Vector {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

export function vector(x: number, y: number, z: number): Vector {
  return { x, y, z };
}

export function add(a: Vector, b: Vector): Vector {
  return { x: a.x + b.x, y: a.y + b.y, z: a.z + b.z };
}

export function scale(a: Vector, factor: number): Vector {
  return { x: a.x * factor, y: a.y * factor, z: a.z * factor };
}

export function dot(a: Vector, b: Vector): number {
  return a.x * b.x + a.y * b.y + a.z * b.z;
}

export function cross(a: Vector, b: Vector): Vector {
  return { x: a.y * b.z - a.z * b.y, y: a.z * b.x - a.x * b.z, z: a.x * b.y - a.y * b.x };
}

export function norm(a: Vector): number {
  return Math.hypot(a.x, a.y, a.z);
}

/** The direction of a heading (right of the target line) and an elevation (up), as a unit vector in the world
 * frame: x toward the target, y to the left, z up. Radians. */
export function directionOf(heading: number, elevation: number): Vector {
  const level = Math.cos(elevation);
  return { x: level * Math.cos(heading), y: -level * Math.sin(heading), z: Math.sin(elevation) };
}

/** Solves `columns · solution = right` by Cramer's rule; undefined where the columns are dependent. */
export function solve(columns: readonly [Vector, Vector, Vector], right: Vector): Vector | undefined {
  const [a, b, c] = columns;
  const determinant = dot(a, cross(b, c));
  const size = norm(a) * norm(b) * norm(c);
  if (!(Math.abs(determinant) > 1e-14 * size)) return undefined;
  return {
    x: dot(right, cross(b, c)) / determinant,
    y: dot(a, cross(right, c)) / determinant,
    z: dot(a, cross(b, right)) / determinant,
  };
}
