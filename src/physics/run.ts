// Bounce and run after the landing; knows nothing of the flight before.
import { ruleBall } from './ball.ts';
import type { Flight } from './flight.ts';

export interface Ground {
  /** How far the turf gives way, as a multiple of that of Penner's green; 0 is a table. */
  readonly give: number;
  readonly friction: number;
  /** Rolling resistance: deceleration over g, times 7/5. */
  readonly rollingResistance: number;
}

export type Firmness = 'soft' | 'medium' | 'firm';

export interface Run {
  /** From the first touch to rest along the landing's heading, m; negative where it spins back. */
  readonly distance: number;
  /** From the ball's first place to rest, m. */
  readonly total: number;
  readonly bounces: number;
}

/** Grounds by firmness. `soft` is the green of Penner 2002 (from memory); the others are judgement. */
export const grounds: Readonly<Record<Firmness, Ground>> = {
  soft: { give: 1, friction: 0.4, rollingResistance: 0.131 },
  medium: { give: 0.75, friction: 0.4, rollingResistance: 0.131 },
  firm: { give: 0.5, friction: 0.4, rollingResistance: 0.131 },
};

const gravity = 9.80665;

export function run(
  flight: Pick<Flight, 'carry' | 'descent' | 'landing' | 'finish'>,
  ground: Ground,
): Run | undefined {
  void [flight, ground, ruleBall, gravity];
  return undefined;
}
