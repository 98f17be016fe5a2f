// The loft that the face has at the strike, and the obliquity of the blow; knows nothing of what the ball does then.
import { directionOf, dot, cross, norm } from './vector.ts';
import type { HeadKind } from './heads.ts';

export interface LoftParts {
  /** Loft of the club as measured on a bench, rad. */
  readonly clubLoft: number;
  /** Lean of the shaft at the strike, rad, forward positive. */
  readonly shaftLean: number;
  /** What the bending of the shaft adds, rad. */
  readonly kick: number;
}

/**
 * Loft at the strike, rad: club loft − shaft lean + what the bent shaft adds.
 * Addition of small rotations about one horizontal axis; good to about 0.5° for leans below 20°.
 */
export function deliveredLoft(parts: LoftParts): number {
  return parts.clubLoft - parts.shaftLean + parts.kick;
}

/**
 * What opening the face about the shaft adds to the loft, rad: face · cot(lie), to first order in the face angle.
 * Rotating the face about a shaft that stands at the lie angle turns its normal by ψ sin(lie) to the side and by
 * ψ cos(lie) upward (own derivation; face within ±15°, lie 50–70°).
 *
 * @param face how far the face is turned open, rad. @param lie rad, above the ground.
 * @returns undefined for a lie outside (0, π/2].
 */
export function loftFromOpening(face: number, lie: number): number | undefined {
  if (!(lie > 0 && lie <= Math.PI / 2) || !Number.isFinite(face)) return undefined;
  return face / Math.tan(lie);
}

export interface ShaftKick {
  /** rad, added loft. */
  readonly value: number;
  /** Standard uncertainty, rad. */
  readonly u: number;
  readonly source: string;
}

const degree = Math.PI / 180;
const judgement =
  'judgement: the centre of mass of the head lies behind and outside the shaft line, so a bent shaft adds loft; ' +
  'longer, softer shafts and faster, deeper heads add more';

/** Droop and kick of the shaft by kind of club: what it adds to the loft at the strike, and how little we know it. */
export const shaftKicks: Readonly<Record<HeadKind, ShaftKick>> = {
  driver: { value: 3 * degree, u: 1.5 * degree, source: judgement },
  fairway: { value: 2.5 * degree, u: 1.5 * degree, source: judgement },
  hybrid: { value: 2 * degree, u: 1.5 * degree, source: judgement },
  iron: { value: 1.5 * degree, u: 1.5 * degree, source: judgement },
  wedge: { value: 1 * degree, u: 1.5 * degree, source: judgement },
};

/**
 * Angle between the head's velocity and the face normal, rad, in [0, π].
 * Directions in the horizontal plane right positive, elevations up positive.
 */
export function obliquity(blow: {
  readonly path: number;
  readonly attack: number;
  readonly face: number;
  readonly loft: number;
}): number {
  const motion = directionOf(blow.path, blow.attack);
  const normal = directionOf(blow.face, blow.loft);
  return Math.atan2(norm(cross(motion, normal)), dot(motion, normal));
}
