// The equations of motion of the ball in moving air; knows nothing of how they are integrated or what is read off.
import type { Air } from './air.ts';
import { ruleBall, type Ball } from './ball.ts';
import type { CoefficientSet } from './coefficients.ts';
import type { Derivative } from './runge-kutta.ts';
import type { Vector } from './vector.ts';
import { windAt, type Wind } from './wind.ts';

export interface Surroundings {
  readonly air: Pick<Air, 'density' | 'kinematicViscosity'>;
  /** Still air if left out. */
  readonly wind?: Wind;
}

export interface Laws {
  /** `ruleBall` if left out. */
  readonly ball?: Ball;
  /** m/s²; 9.80665 if left out. */
  readonly gravity?: number;
  /** c in dω/dt = −c ω V/r; 2.0e-5 if left out (Penner 2001, Am. J. Phys. 69:563, eq. 16, after Smits & Smith 1994). */
  readonly spinDecay?: number;
}

/** Places in the state: position and velocity in the world frame (x target, y left, z up; m, m/s), spin (rad/s). */
export const [X, Y, Z, VX, VY, VZ, SPIN] = [0, 1, 2, 3, 4, 5, 6] as const;

/**
 * m v' = −½ ρ A V² C_D v̂ + ½ ρ A V² C_L n̂ − m g ẑ, dω/dt = −c ω V/r, with V the speed through the moving air, Re = 2 r V/ν,
 * S = r ω⊥/V and n̂ along ω × v, ω⊥ the part of the spin across the motion. The axis keeps its direction in space.
 */
export function motionInAir(
  axis: Vector,
  surroundings: Surroundings,
  set: CoefficientSet,
  laws: Laws,
): Derivative {
  const { mass, radius } = laws.ball ?? ruleBall;
  const gravity = laws.gravity ?? 9.80665;
  const decay = (laws.spinDecay ?? 2.0e-5) / radius;
  const force = (0.5 * surroundings.air.density * Math.PI * radius * radius) / mass;
  const reynolds = (2 * radius) / surroundings.air.kinematicViscosity;
  const { x: axisX, y: axisY, z: axisZ } = axis;
  const wind = surroundings.wind;
  const windX = wind === undefined ? 0 : -wind.speed * Math.cos(wind.from);
  const windY = wind === undefined ? 0 : -wind.speed * Math.sin(wind.from);

  return (_t, y, out) => {
    const share = wind === undefined ? 0 : windAt(wind, y[Z]!);
    const ux = y[VX]! - share * windX;
    const uy = y[VY]! - share * windY;
    const uz = y[VZ]!;
    const spin = y[SPIN]!;
    const speed = Math.sqrt(ux * ux + uy * uy + uz * uz);
    out[X] = y[VX]!;
    out[Y] = y[VY]!;
    out[Z] = uz;
    out[SPIN] = -decay * spin * speed;
    // Below a micrometre a second the coefficients have no meaning and the forces are nothing.
    if (!(speed > 1e-6)) {
      out[VX] = out[VY] = 0;
      out[VZ] = -gravity;
      return;
    }
    const sideX = axisY * uz - axisZ * uy;
    const sideY = axisZ * ux - axisX * uz;
    const sideZ = axisX * uy - axisY * ux;
    const side = Math.sqrt(sideX * sideX + sideY * sideY + sideZ * sideZ);
    const re = reynolds * speed;
    const s = (radius * spin * side) / (speed * speed);
    const drag = force * speed * set.drag(re, s);
    const lift = side > 1e-9 * speed ? (force * speed * speed * set.lift(re, s)) / side : 0;
    out[VX] = lift * sideX - drag * ux;
    out[VY] = lift * sideY - drag * uy;
    out[VZ] = lift * sideZ - drag * uz - gravity;
  };
}
