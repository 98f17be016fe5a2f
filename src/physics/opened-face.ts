// What turning a face about its shaft does to its direction and loft, exactly; knows nothing of where it strikes the ball.
import { add, cross, directionOf, dot, scale, vector, type Vector } from './vector.ts';

/** How a club stands with its face square. */
export interface SquareClub {
  /** Elevation of the face normal with the face square, rad: the loft as delivered before opening. */
  readonly loft: number;
  /** Angle of the shaft above the ground seen down the line, rad, in (0, π/2]. */
  readonly lie: number;
  /** Lean of the shaft seen face-on, rad, forward positive; 0 if left out. */
  readonly lean?: number;
}

export interface TurnedFace {
  /** Direction of the face normal, rad, right positive. */
  readonly face: number;
  /** Elevation of the face normal, rad. */
  readonly loft: number;
}

/**
 * Direction and loft of a face that is turned about the shaft's axis by an angle, open (to the right of a right-hander's line)
 * positive. Exact rotation (Rodrigues). To first order, with no lean, face = ψ sin(lie), gained loft = ψ cos(lie) =
 * face · cot(lie): a face 1° open gains some 0.6° at a lie of 60°, as `loftFromOpening` has it.
 *
 * @param turn ψ, rad.
 * @returns undefined for a lie or lean that no club has, or where the face looks straight up or backward.
 */
export function turnedFace(club: SquareClub, turn: number): TurnedFace | undefined {
  const axis = shaftAxis(club);
  if (axis === undefined || !Number.isFinite(turn)) return undefined;
  const normal = turnedNormal(directionOf(0, club.loft), axis, turn);
  if (!(normal.x > 1e-9)) return undefined;
  const face = Math.atan2(-normal.y, normal.x);
  const loft = Math.atan2(normal.z, Math.hypot(normal.x, normal.y));
  return Number.isFinite(face + loft) ? { face, loft } : undefined;
}

/**
 * Loft of a club whose face, turned about the shaft, looks in a direction: the exact counterpart of `loftFromOpening`.
 * The turn follows in closed form: the wanted direction asks that n(ψ) have no part across it, and that part
 * is P cos ψ + Q sin ψ + S.
 *
 * @param face rad, right positive, within ±85°.
 * @returns rad; undefined where no turn brings the face there.
 */
export function loftWithFaceAt(club: SquareClub, face: number): number | undefined {
  const axis = shaftAxis(club);
  if (axis === undefined || !(Math.abs(face) < (85 / 180) * Math.PI)) return undefined;
  const square = directionOf(0, club.loft);
  const across = vector(Math.sin(face), Math.cos(face), 0);
  const still = dot(across, axis) * dot(axis, square);
  const cosine = dot(across, square) - still;
  const sine = -dot(across, cross(axis, square));
  const size = Math.hypot(cosine, sine);
  if (!(size > Math.abs(still))) return undefined;
  const towards = Math.atan2(sine, cosine);
  const apart = Math.acos(-still / size);
  const turn = nearerToNone(towards + apart, towards - apart);
  return turnedFace(club, turn)?.loft;
}

/** Along the shaft from the head to the grip; the right-handed player stands to the left of the line. */
function shaftAxis({ loft, lie, lean = 0 }: SquareClub): Vector | undefined {
  if (!(lie > 0 && lie <= Math.PI / 2 && Math.abs(lean) < Math.PI / 2 && Math.abs(loft) < Math.PI / 2)) {
    return undefined;
  }
  const axis = vector(Math.tan(lean) * Math.sin(lie), Math.cos(lie), Math.sin(lie));
  return scale(axis, 1 / Math.sqrt(dot(axis, axis)));
}

/** Opening turns clockwise seen from the grip, hence the minus before the cross product. */
function turnedNormal(normal: Vector, axis: Vector, turn: number): Vector {
  const cosine = Math.cos(turn);
  return add(
    add(scale(normal, cosine), scale(cross(axis, normal), -Math.sin(turn))),
    scale(axis, dot(axis, normal) * (1 - cosine)),
  );
}

function nearerToNone(first: number, second: number): number {
  const [a, b] = [wrapped(first), wrapped(second)];
  return Math.abs(a) <= Math.abs(b) ? a : b;
}

function wrapped(angle: number): number {
  return Math.atan2(Math.sin(angle), Math.cos(angle));
}
