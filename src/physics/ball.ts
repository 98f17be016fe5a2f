// The ball as a uniform sphere; knows nothing of the club or the air.

export interface Ball {
  /** kg */
  readonly mass: number;
  /** m */
  readonly radius: number;
}

/**
 * The heaviest and smallest ball that the rules allow: 1.620 oz avoirdupois and 1.680 in across.
 * Source: R&A / USGA Equipment Rules, part 4. Balls are made to these limits, so it also is the usual one.
 */
export const ruleBall: Ball = { mass: 0.0459262, radius: 0.021336 };

/** Moment of inertia of a uniform sphere, kg m²: 2/5 m r². The rule ball has 83.6 g cm². */
export function ballInertia(ball: Ball): number {
  return 0.4 * ball.mass * ball.radius * ball.radius;
}
