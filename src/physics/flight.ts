// The flight of the ball through the air, from launch to its first touch of level ground; knows nothing of the club.
import type { Air } from './air.ts';
import { ruleBall, type Ball } from './ball.ts';
import type { CoefficientSet } from './coefficients.ts';
import { createIntegrator, type Control } from './runge-kutta.ts';
import { windAt, type Wind } from './wind.ts';

export interface FlightLaunch {
  /** m/s */
  readonly ballSpeed: number;
  /** rad above the horizontal */
  readonly launchAngle: number;
  /** rad, right of the target line positive */
  readonly start: number;
  /** rad/s, ≥ 0 */
  readonly spin: number;
  /** Tilt of the spin axis from level, rad; positive curves to the right */
  readonly spinTilt: number;
}

export interface Surroundings {
  readonly air: Pick<Air, 'density' | 'kinematicViscosity'>;
  readonly wind?: Wind;
}

export interface FlightOptions {
  readonly ball?: Ball;
  /** m/s² */
  readonly gravity?: number;
  /** c in dω/dt = −c ω V/r; 2.0e-5 if left out. */
  readonly spinDecay?: number;
  /** Relative error of one step; 1e-6 if left out, which keeps the carry to about a millimetre. */
  readonly tolerance?: number;
  /** How many points of the path to give, evenly spaced in time, both ends included; none if left out. */
  readonly samples?: number;
}

export interface PathPoint {
  /** s */
  readonly time: number;
  /** m toward the target */
  readonly ahead: number;
  /** m, right positive */
  readonly right: number;
  /** m */
  readonly up: number;
}

export interface Landing {
  /** m/s */
  readonly speed: number;
  /** Direction of the ball over the ground, rad, right positive. */
  readonly heading: number;
  /** Magnitude of the spin, rad/s. */
  readonly spin: number;
  /** Its part that is back spin along the heading, rad/s; negative for top spin. */
  readonly backSpin: number;
}

export interface Flight {
  /** Horizontal distance from the ball to the landing, m. */
  readonly carry: number;
  /** How far right of the target line it lands, m. */
  readonly finish: number;
  /** How far right of the line on which it started it lands, m: finish = carry · sin(start + asin(curve/carry)). */
  readonly curve: number;
  /** m */
  readonly apex: number;
  /** s */
  readonly apexTime: number;
  /** Angle to the ground at landing, rad, positive downward. */
  readonly descent: number;
  /** s */
  readonly time: number;
  readonly landing: Landing;
  readonly path?: readonly PathPoint[];
}

const [X, Y, Z, VX, VY, VZ, SPIN] = [0, 1, 2, 3, 4, 5, 6] as const;
const integrator = createIntegrator(7);
const initial = new Float64Array(7);
const weights = Float64Array.from([10, 10, 10, 10, 10, 10, 100]);
const longest = 60;

/**
 * Flies the ball: m v' = −½ ρ A V² C_D v̂ + ½ ρ A V² C_L (ω̂ × v̂) − m g ẑ, with V the speed through the moving air, Re = 2 r V/ν,
 * S = r ω/V with ω the part of the spin across v; the spin axis keeps its direction; dω/dt = −2.0e-5 ω V/r
 * (Penner 2001, Am. J. Phys. 69:563, eq. 16, after Smits & Smith 1994).
 *
 * @returns undefined where the ball does not rise, does not come down within a minute, or an input is no number.
 */
export function fly(
  launch: FlightLaunch,
  surroundings: Surroundings,
  set: CoefficientSet,
  options: FlightOptions = {},
): Flight | undefined {
  if (!isFlyable(launch, surroundings)) return undefined;
  const ball = options.ball ?? ruleBall;
  const gravity = options.gravity ?? 9.80665;
  const decay = (options.spinDecay ?? 2.0e-5) / ball.radius;
  const { density, kinematicViscosity } = surroundings.air;
  const force = (0.5 * density * Math.PI * ball.radius * ball.radius) / ball.mass;
  const reynolds = (2 * ball.radius) / kinematicViscosity;
  const radius = ball.radius;
  const wind = surroundings.wind;
  const windX = wind === undefined ? 0 : -wind.speed * Math.cos(wind.from);
  const windY = wind === undefined ? 0 : -wind.speed * Math.sin(wind.from);
  const axis = spinAxis(launch);
  const [axisX, axisY, axisZ] = [axis.x, axis.y, axis.z];

  function derivative(_t: number, y: Float64Array, out: Float64Array): void {
    const share = wind === undefined ? 0 : windAt(wind, y[Z]!);
    const ux = y[VX]! - share * windX;
    const uy = y[VY]! - share * windY;
    const uz = y[VZ]!;
    const speed = Math.sqrt(ux * ux + uy * uy + uz * uz);
    const sideX = axisY * uz - axisZ * uy;
    const sideY = axisZ * ux - axisX * uz;
    const sideZ = axisX * uy - axisY * ux;
    const side = Math.sqrt(sideX * sideX + sideY * sideY + sideZ * sideZ);
    const spin = y[SPIN]!;
    // Below a micrometre a second the coefficients have no meaning and the forces are nothing.
    const moving = speed > 1e-6;
    const re = reynolds * speed;
    const s = moving ? (radius * spin * side) / (speed * speed) : 0;
    const drag = moving ? force * speed * set.drag(re, s) : 0;
    const lift = moving && side > 1e-12 * speed ? (force * speed * speed * set.lift(re, s)) / side : 0;
    out[X] = y[VX]!;
    out[Y] = y[VY]!;
    out[Z] = uz;
    out[VX] = lift * sideX - drag * ux;
    out[VY] = lift * sideY - drag * uy;
    out[VZ] = lift * sideZ - drag * uz - gravity;
    out[SPIN] = -decay * spin * speed;
  }

  initial.fill(0);
  const level = launch.ballSpeed * Math.cos(launch.launchAngle);
  initial[VX] = level * Math.cos(launch.start);
  initial[VY] = -level * Math.sin(launch.start);
  initial[VZ] = launch.ballSpeed * Math.sin(launch.launchAngle);
  initial[SPIN] = launch.spin;
  const control: Control = {
    tolerance: options.tolerance ?? 1e-6,
    weights,
    firstStep: 0.1,
    end: longest,
    maximumSteps: 5000,
  };

  let rising = true;
  let apex = 0;
  let apexTime = 0;
  let time = Number.NaN;
  function visit(): 'go' | 'stop' {
    let falling = integrator.from;
    if (rising && integrator.state[VZ]! <= 0) {
      rising = false;
      falling = integrator.root(VZ, integrator.from, integrator.to);
      const top = integrator.at(falling, Z);
      if (top > apex) [apex, apexTime] = [top, falling];
    } else if (integrator.state[VZ]! > 0) {
      rising = true;
    }
    if (integrator.state[Z]! > 0) return 'go';
    time = integrator.root(Z, falling, integrator.to);
    return 'stop';
  }

  const outcome = integrator.run(derivative, initial, control, visit);
  if (outcome !== 'stopped' || !(apex > 0)) return undefined;
  return flightOf(launch, axis, apex, apexTime, time);
}

function flightOf(
  launch: FlightLaunch,
  axis: { readonly x: number; readonly y: number; readonly z: number },
  apex: number,
  apexTime: number,
  time: number,
): Flight | undefined {
  const at = (component: number) => integrator.at(time, component);
  const [x, y, vx, vy, vz, spin] = [at(X), at(Y), at(VX), at(VY), at(VZ), at(SPIN)] as const;
  const level = Math.hypot(vx, vy);
  const heading = level > 0 ? Math.atan2(-vy, vx) : launch.start;
  return {
    carry: Math.hypot(x, y),
    finish: -y,
    curve: -x * Math.sin(launch.start) - y * Math.cos(launch.start),
    apex,
    apexTime,
    descent: Math.atan2(-vz, level),
    time,
    landing: {
      speed: Math.hypot(level, vz),
      heading,
      spin,
      backSpin: -spin * (axis.x * Math.sin(heading) + axis.y * Math.cos(heading)),
    },
  };
}

/** Unit vector of the spin in the world frame; back spin points to the right. */
function spinAxis(launch: FlightLaunch): { x: number; y: number; z: number } {
  const level = -Math.cos(launch.spinTilt);
  return {
    x: level * Math.sin(launch.start),
    y: level * Math.cos(launch.start),
    z: -Math.sin(launch.spinTilt),
  };
}

function isFlyable(launch: FlightLaunch, surroundings: Surroundings): boolean {
  const wind = surroundings.wind;
  const numbers = [launch.ballSpeed, launch.launchAngle, launch.start, launch.spin, launch.spinTilt];
  return (
    numbers.every(Number.isFinite) &&
    launch.ballSpeed > 0 &&
    Math.sin(launch.launchAngle) > 0 &&
    launch.spin >= 0 &&
    surroundings.air.density >= 0 &&
    surroundings.air.kinematicViscosity > 0 &&
    (wind === undefined || (Number.isFinite(wind.speed) && Number.isFinite(wind.from)))
  );
}
