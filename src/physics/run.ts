// Bounce and run after the landing, on level turf; knows nothing of the flight before.
import { ruleBall } from './ball.ts';
import type { Flight } from './flight.ts';

export interface Ground {
  /** How far the turf gives way, as a multiple of that of Penner's green; 0 is a table top. */
  readonly give: number;
  /** Coefficient of friction while the ball slides. */
  readonly friction: number;
  /** Rolling resistance ρ: a rolling ball slows by 5/7 ρ g. */
  readonly rollingResistance: number;
}

export type Firmness = 'soft' | 'medium' | 'firm';

export interface Run {
  /** From the first touch to rest along the landing's heading, m; negative where the ball spins back. */
  readonly distance: number;
  /** From where the ball was struck to rest, m. */
  readonly total: number;
  readonly bounces: number;
}

/**
 * Turf by firmness. `medium` is the green of Penner 2002 with friction 0.40 and rolling resistance 0.131 (from memory);
 * that softer turf gives way a fifth more and firmer turf a seventh less is judgement.
 */
export const grounds: Readonly<Record<Firmness, Ground>> = {
  soft: { give: 1.2, friction: 0.4, rollingResistance: 0.131 },
  medium: { give: 1, friction: 0.4, rollingResistance: 0.131 },
  firm: { give: 0.85, friction: 0.4, rollingResistance: 0.131 },
};

const gravity = 9.80665;
const degree = Math.PI / 180;
/** A bounce that rises less than this is taken as rolling, m (Penner 2002, from memory). */
const lowestBounce = 0.005;
const mostBounces = 50;

/**
 * Bounces and rolls the ball from its landing to rest.
 *
 * Each bounce is that of a rigid sphere on a plane tilted by θ_c against the ball, for the dent that it makes:
 * θ_c = 15.4° (v/18.6 m/s)(φ/44.4°), φ the angle of the arriving ball to the vertical. Normal restitution
 * e = 0.510 − 0.0375 v_n + 0.000903 v_n², 0.120 above 20 m/s; along the plane it rolls without slip where friction can
 * stop the slip, else it slides. No air between bounces. Then it rolls: v²/(2 · 5/7 ρ g).
 * Source: Penner 2002, The run of a golf ball, Can. J. Phys. 80:931, all from memory; least sure is that φ is counted
 * from the vertical, which the runs of drives that it gives speak for. Made from bounces on greens near 18.6 m/s and
 * 44.4°; far from there, as for low, fast landings, it is a guess. Side spin at the landing is left out.
 *
 * @returns undefined where the landing is not a speed downward.
 */
export function run(
  flight: Pick<Flight, 'carry' | 'finish' | 'descent' | 'landing'>,
  ground: Ground,
): Run | undefined {
  const { carry, finish, descent, landing } = flight;
  if (![carry, finish, descent, landing.speed, landing.heading, landing.backSpin].every(Number.isFinite)) {
    return undefined;
  }
  if (!(landing.speed > 0 && descent > 0 && descent <= Math.PI / 2 && Math.abs(finish) <= carry))
    return undefined;

  let motion: Motion = {
    forward: landing.speed * Math.cos(descent),
    upward: -landing.speed * Math.sin(descent),
    backSpin: landing.backSpin,
  };
  let distance = 0;
  let bounces = 0;
  while (bounces < mostBounces) {
    motion = bounced(motion, ground);
    if (motion.upward ** 2 / (2 * gravity) < lowestBounce) break;
    distance += (2 * motion.forward * motion.upward) / gravity;
    motion = { ...motion, upward: -motion.upward };
    bounces += 1;
  }
  distance += rolled(motion, ground);
  const turn = landing.heading - (carry > 0 ? Math.asin(finish / carry) : landing.heading);
  const total = Math.hypot(carry + distance * Math.cos(turn), distance * Math.sin(turn));
  return Number.isFinite(total) ? { distance, total, bounces } : undefined;
}

interface Motion {
  readonly forward: number;
  readonly upward: number;
  readonly backSpin: number;
}

function bounced(arriving: Motion, ground: Ground): Motion {
  const speed = Math.hypot(arriving.forward, arriving.upward);
  const incidence = Math.atan2(arriving.forward, -arriving.upward);
  const tilt = ground.give * 15.4 * degree * (speed / 18.6) * (Math.abs(incidence) / (44.4 * degree));
  // A dent can turn the ground no further than square to the ball.
  const effective = Math.sign(incidence) * Math.max(0, Math.abs(incidence) - tilt);
  const turned = incidence - effective;
  const along = speed * Math.sin(effective);
  const into = speed * Math.cos(effective);
  const restitution = into > 20 ? 0.12 : 0.51 - 0.0375 * into + 0.000903 * into * into;
  const grip = ground.friction * (1 + restitution) * into;
  const wanted = (2 / 7) * (along + ruleBall.radius * arriving.backSpin);
  const lost = Math.max(-grip, Math.min(grip, wanted));
  const leavingAlong = along - lost;
  const leavingUp = restitution * into;
  return {
    forward: leavingAlong * Math.cos(turned) - leavingUp * Math.sin(turned),
    upward: leavingAlong * Math.sin(turned) + leavingUp * Math.cos(turned),
    backSpin: arriving.backSpin - (2.5 * lost) / ruleBall.radius,
  };
}

function rolled(motion: Motion, ground: Ground): number {
  const speed = (5 / 7) * motion.forward - (2 / 7) * ruleBall.radius * motion.backSpin;
  return (speed * Math.abs(speed)) / (2 * (5 / 7) * ground.rollingResistance * gravity);
}
