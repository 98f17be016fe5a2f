// The flight of the ball through the air, from launch to its first touch of level ground; knows nothing of the club.
import type { CoefficientSet } from './coefficients.ts';
import { motionInAir, SPIN, VX, VY, VZ, X, Y, Z, type Laws, type Surroundings } from './flight-forces.ts';
import { createIntegrator, type Control, type Derivative } from './runge-kutta.ts';
import { vector, type Vector } from './vector.ts';

export interface FlightLaunch {
  /** m/s */
  readonly ballSpeed: number;
  /** rad above the horizontal. */
  readonly launchAngle: number;
  /** rad, right of the target line positive. */
  readonly start: number;
  /** rad/s, ≥ 0. */
  readonly spin: number;
  /** Tilt of the spin axis from level, rad; positive curves to the right. */
  readonly spinTilt: number;
}

export interface FlightOptions extends Laws {
  /** Relative error of one step; 1e-6 if left out, which keeps the carry to 2 cm, or 7 cm where drag has corners. */
  readonly tolerance?: number;
  /** How many points of the path to give, evenly spaced in time, both ends included; none if less than 2. */
  readonly samples?: number;
}

export interface PathPoint {
  /** s */
  readonly time: number;
  /** m toward the target. */
  readonly ahead: number;
  /** m, right positive. */
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
  /** Greatest height, m. */
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

/** No ball flies a minute; a law of forces that lets it is not of this world. */
const longest = 60;
const integrator = createIntegrator(7);
const initial = new Float64Array(7);
const weights = Float64Array.from([10, 10, 10, 10, 10, 10, 100]);

/**
 * Flies the ball by `motionInAir` from a launch at ground level to level ground.
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
  const axis = spinAxis(launch);
  const derivative = motionInAir(axis, surroundings, set, options);
  const control: Control = {
    tolerance: options.tolerance ?? 1e-6,
    weights,
    firstStep: 0.1,
    end: longest,
    maximumSteps: 5000,
  };
  setInitial(launch);
  const marks = marksOf(derivative, control);
  if (marks === undefined) return undefined;
  const flight = flightOf(launch, axis, marks);
  const samples = Math.floor(options.samples ?? 0);
  return samples >= 2 ? { ...flight, path: pathOf(derivative, control, marks.time, samples) } : flight;
}

interface Marks {
  readonly apex: number;
  readonly apexTime: number;
  readonly time: number;
}

function marksOf(derivative: Derivative, control: Control): Marks | undefined {
  let apex = 0;
  let apexTime = 0;
  let time = Number.NaN;
  let rising = true;
  const outcome = integrator.run(derivative, initial, control, () => {
    const { from, to, state } = integrator;
    let falling = from;
    if (rising && state[VZ]! <= 0) {
      falling = integrator.root(VZ, from, to);
      const top = integrator.at(falling, Z);
      if (top > apex) [apex, apexTime] = [top, falling];
    }
    rising = state[VZ]! > 0;
    if (state[Z]! > 0) return 'go';
    time = integrator.root(Z, falling, to);
    return 'stop';
  });
  return outcome === 'stopped' && apex > 0 && time > 0 ? { apex, apexTime, time } : undefined;
}

/** A second pass over the same steps, now that the time of flight is known. */
function pathOf(derivative: Derivative, control: Control, time: number, samples: number): PathPoint[] {
  const path: PathPoint[] = [{ time: 0, ahead: 0, right: 0, up: 0 }];
  integrator.run(derivative, initial, control, () => {
    while (path.length < samples) {
      const t = (time * path.length) / (samples - 1);
      if (t > integrator.to) return 'go';
      path.push({
        time: t,
        ahead: integrator.at(t, X),
        right: 0 - integrator.at(t, Y),
        up: path.length === samples - 1 ? 0 : integrator.at(t, Z),
      });
    }
    return 'stop';
  });
  return path;
}

function flightOf(launch: FlightLaunch, axis: Vector, marks: Marks): Flight {
  const at = (component: number) => integrator.at(marks.time, component);
  const [x, y, vx, vy, vz, spin] = [at(X), at(Y), at(VX), at(VY), at(VZ), at(SPIN)] as const;
  const level = Math.hypot(vx, vy);
  const heading = level > 0 ? Math.atan2(0 - vy, vx) : launch.start;
  return {
    carry: Math.hypot(x, y),
    finish: 0 - y,
    curve: 0 - (x * Math.sin(launch.start) + y * Math.cos(launch.start)),
    ...marks,
    descent: Math.atan2(-vz, level),
    landing: {
      speed: Math.hypot(level, vz),
      heading,
      spin,
      backSpin: 0 - spin * (axis.x * Math.sin(heading) + axis.y * Math.cos(heading)),
    },
  };
}

function setInitial(launch: FlightLaunch): void {
  const level = launch.ballSpeed * Math.cos(launch.launchAngle);
  initial.fill(0);
  initial[VX] = level * Math.cos(launch.start);
  initial[VY] = -level * Math.sin(launch.start);
  initial[VZ] = launch.ballSpeed * Math.sin(launch.launchAngle);
  initial[SPIN] = launch.spin;
}

/** Back spin points to the right of the start line; a tilt to the right turns its end down. */
function spinAxis(launch: FlightLaunch): Vector {
  const level = -Math.cos(launch.spinTilt);
  return vector(level * Math.sin(launch.start), level * Math.cos(launch.start), -Math.sin(launch.spinTilt));
}

function isFlyable(launch: FlightLaunch, { air, wind }: Surroundings): boolean {
  return (
    launch.ballSpeed > 0 &&
    launch.spin >= 0 &&
    Math.sin(launch.launchAngle) > 0 &&
    Math.cos(launch.launchAngle) >= 0 &&
    air.density >= 0 &&
    air.kinematicViscosity > 0 &&
    [launch.ballSpeed, launch.start, launch.spin, launch.spinTilt, air.density].every(Number.isFinite) &&
    (wind === undefined || (Number.isFinite(wind.speed) && Number.isFinite(wind.from)))
  );
}
