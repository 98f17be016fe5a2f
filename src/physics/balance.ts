// Pressure under the feet from the centre of mass and how it is accelerated: an inverted pendulum; knows nothing of the swing.
import type { Feet } from './feet.ts';

/** Whether the body sways toward toes and heels or, as along the target line, from foot to foot. */
export type SwayDirection = 'front_to_back' | 'side_to_side';

/** Height of the centre of mass above the ankles over stature: 0.56 − 0.039 (McGinnis 2005; Winter). */
const heightShare = 0.56 - 0.039;
/** Moment of inertia about the centre of mass over m H²: Brenière 1996, as quoted by M. Duarte, notes on biomechanics. */
const inertiaShare: Readonly<Record<SwayDirection, number>> = { front_to_back: 0.0533, side_to_side: 0.0572 };
const standardGravity = 9.80665;

export interface Pendulum {
  /** Height of the centre of mass above the ankles, m. */
  readonly height: number;
  /** k = I_a/(m g h), s². */
  readonly k: number;
}

/** Relative standard uncertainty of k for a golfer, who stands bent over two legs apart rather than as one rigid rod. */
export const pendulumUncertainty = {
  value: 0.15,
  source:
    'judgement: with the legs as a parallelogram k is h/g, 17 % less; a bent stance lowers h by some 10 %; what arms and club do in the swing is not in it',
} as const;

/**
 * The body as an inverted pendulum about the ankles: h = 0.521 H, k = I_a/(m g h) with I_a = m (h² + c H²); the mass cancels.
 * Source: Winter 1995, Gait & Posture 3:193, with body constants as in the notes of M. Duarte.
 *
 * @param stature H, m. @param gravity m/s².
 * @returns undefined unless both are positive numbers.
 */
export function pendulumOf(
  stature: number,
  sway: SwayDirection = 'side_to_side',
  gravity: number = standardGravity,
): Pendulum | undefined {
  const height = heightShare * stature;
  const k = (height * height + inertiaShare[sway] * stature * stature) / (gravity * height);
  return stature > 0 && gravity > 0 && Number.isFinite(k) ? { height, k } : undefined;
}

/**
 * Centre of pressure, m: CoM − k · acceleration. Source: Winter 1995 (CoM − CoP = k · acceleration of the CoM).
 * Holds for small sways of a body that turns as a whole about its ankles; in the swing the acceleration's wide prior carries what it leaves out.
 *
 * @param acceleration of the centre of mass, m/s², same direction as the places.
 */
export function centreOfPressure(centreOfMass: number, acceleration: number, k: number): number | undefined {
  const place = centreOfMass - k * acceleration;
  return Number.isFinite(place) ? place : undefined;
}

/**
 * Share of the force under the lead foot when the pressure's centre lies there: linear between the middles of pressure of both feet
 * (not between the heels: feet turned out press further apart). Below 0 or above 1 where the centre lies outside
 * them, which no mat can show; that is left to the caller, so that the function stays smooth.
 *
 * @returns undefined unless the lead foot's middle is ahead of the trail foot's.
 */
export function leadPressure(
  centreOfPressure: number,
  feet: Pick<Feet, 'leadCentre' | 'trailCentre'>,
): number | undefined {
  const span = feet.leadCentre - feet.trailCentre;
  const share = (centreOfPressure - feet.trailCentre) / span;
  return span > 0 && Number.isFinite(share) ? share : undefined;
}

/** Centre of pressure at a share under the lead foot, m; the inverse of `leadPressure`. */
export function centreOfPressureFrom(
  share: number,
  feet: Pick<Feet, 'leadCentre' | 'trailCentre'>,
): number | undefined {
  const span = feet.leadCentre - feet.trailCentre;
  const place = feet.trailCentre + share * span;
  return span > 0 && Number.isFinite(place) ? place : undefined;
}

/**
 * Acceleration of the centre of mass that a lead pressure asks for, m/s², toward the target positive: (CoM − CoP)/k.
 */
export function accelerationFromPressure(
  centreOfMass: number,
  share: number,
  feet: Pick<Feet, 'leadCentre' | 'trailCentre'>,
  k: number,
): number | undefined {
  const place = centreOfPressureFrom(share, feet);
  if (place === undefined || !(k > 0)) return undefined;
  const acceleration = (centreOfMass - place) / k;
  return Number.isFinite(acceleration) ? acceleration : undefined;
}
