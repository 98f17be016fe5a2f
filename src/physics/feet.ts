// Where the feet stand along the target line, from stance width and ball position; knows nothing of the body above.

export interface Stance {
  /** Between the middles of the heels, m, > 0. */
  readonly width: number;
  /** Ball ahead of the inside of the lead heel, m; behind negative. */
  readonly ballPosition: number;
  /** Turn of the lead foot out toward the target, rad; `usualFlare` if left out. */
  readonly leadFlare?: number | undefined;
  /** Turn of the trail foot out away from the target, rad; `usualFlare` if left out. */
  readonly trailFlare?: number | undefined;
}

/** Along the target line from the ball, m, ahead positive. */
export interface Feet {
  /** Middle of the heel, taken as the place of the ankle joint too. */
  readonly leadHeel: number;
  readonly trailHeel: number;
  /** Where the force under that foot acts. */
  readonly leadCentre: number;
  readonly trailCentre: number;
}

/** Half the breadth of a heel in its shoe, m: what the inside of the heel is off its middle. */
export const halfHeel = {
  value: 0.033,
  u: 0.005,
  source: 'judgement: shoes are 6 to 7 cm wide at the heel',
} as const;

/** How far ahead of the middle of the heel, along the foot, the force under a foot acts, m. */
export const pressureAheadOfHeel = {
  value: 0.08,
  u: 0.04,
  source: 'judgement: about the middle of the foot, from heel to ball either way',
} as const;

/** Flare of the feet where none is recorded, rad. */
export const usualFlare = {
  lead: { value: 0.35, u: 0.17 },
  trail: { value: 0.14, u: 0.14 },
  source: 'judgement: lead foot 20 ± 10°, trail foot 8 ± 8°',
} as const;

/**
 * Heels and middles of pressure of both feet. The heel's inside lies `ballPosition` behind the ball, its middle half a heel
 * further toward the target; feet that are turned out carry their pressure apart by `pressureAheadOfHeel` · sin(flare).
 *
 * @returns undefined unless the width is positive and all is finite.
 */
export function feetOf(stance: Stance): Feet | undefined {
  const leadHeel = halfHeel.value - stance.ballPosition;
  const trailHeel = leadHeel - stance.width;
  const reach = pressureAheadOfHeel.value;
  const leadCentre = leadHeel + reach * Math.sin(stance.leadFlare ?? usualFlare.lead.value);
  const trailCentre = trailHeel - reach * Math.sin(stance.trailFlare ?? usualFlare.trail.value);
  if (!(stance.width > 0 && Number.isFinite(leadCentre + trailCentre))) return undefined;
  return { leadHeel, trailHeel, leadCentre, trailCentre };
}
