// Measures flights per second at a carry accuracy of 0.1 m, ours and SciPy's DOP853 on the same launches and model.
import { spawnSync } from 'node:child_process';
import { ruleBall } from '../../src/physics/ball.ts';
import { smitsSmith } from '../../src/physics/coefficients.ts';
import { fly, type FlightLaunch } from '../../src/physics/flight.ts';

export interface Pace {
  /** Seconds a flight takes, the best of several passes over all launches. */
  readonly seconds: number;
  /** The loosest step tolerance of the ladder that keeps every carry to 0.1 m. */
  readonly tolerance: number;
  /** The largest error of a carry at that tolerance, m. */
  readonly worst: number;
  /** Carries at a tolerance of 1e-11, m: both sides must have the same. */
  readonly carries: readonly number[];
}

const accuracy = 0.1;
const tolerances = [1e-1, 3e-2, 1e-2, 3e-3, 1e-3, 3e-4, 1e-4, 3e-5, 1e-5, 3e-6, 1e-6, 1e-7, 1e-8];
const air = { density: 1.2, kinematicViscosity: 1.5e-5 };
const launches = launchesOverTheBag();

/** Our pace. */
export function measureFlights(): Pace {
  const carries = launches.map((launch) => carryOf(launch, 1e-11));
  const worstAt = (tolerance: number) =>
    Math.max(...launches.map((launch, i) => Math.abs(carryOf(launch, tolerance) - carries[i]!)));
  const tolerance = tolerances.find((candidate) => worstAt(candidate) <= accuracy) ?? 1e-8;
  let seconds = Infinity;
  for (let pass = 0; pass < 200; pass++) {
    const began = performance.now();
    for (const launch of launches) carryOf(launch, tolerance);
    seconds = Math.min(seconds, (performance.now() - began) / 1000 / launches.length);
  }
  return { seconds, tolerance, worst: worstAt(tolerance), carries };
}

/** SciPy's pace by the first of those interpreters that has SciPy; undefined where none has. */
export function measureScipy(
  interpreters: readonly string[] = ['python3', '/usr/bin/python3'],
): Pace | undefined {
  const script = new URL('trajectory.py', import.meta.url).pathname;
  const input = JSON.stringify({ accuracy, tolerances, air, ball: ruleBall, launches });
  for (const interpreter of interpreters) {
    const { status, stdout } = spawnSync(interpreter, [script], { input, encoding: 'utf8' });
    if (status === 0) return JSON.parse(stdout) as Pace;
  }
  return undefined;
}

/** What the benchmark prints. */
export function compareTrajectories(): string {
  const own = measureFlights();
  const line = (name: string, pace: Pace) =>
    `${name}: ${(pace.seconds * 1e6).toFixed(1)} µs a flight, ${Math.round(1 / pace.seconds)} a second ` +
    `(tolerance ${pace.tolerance}, worst carry ${pace.worst.toFixed(3)} m)`;
  const scipy = measureScipy();
  if (scipy === undefined) return `${line('ours', own)}\nSciPy: skipped, no python3 with scipy was found`;
  const apart = Math.max(...own.carries.map((carry, i) => Math.abs(carry - scipy.carries[i]!)));
  return [
    line('ours', own),
    line('SciPy DOP853', scipy),
    `exact carries of both agree to ${apart.toExponential(1)} m`,
    `ratio: ${(scipy.seconds / own.seconds).toFixed(0)} times as fast (goal: 50)`,
  ].join('\n');
}

function carryOf(launch: FlightLaunch, tolerance: number): number {
  return fly(launch, { air }, smitsSmith, { tolerance })?.carry ?? Number.NaN;
}

/** From a drive to a pitch, each straight, curved to the left and curved to the right. */
function launchesOverTheBag(): FlightLaunch[] {
  const clubs = [
    [72, 11, 270],
    [64, 13, 350],
    [56, 16, 500],
    [48, 21, 700],
    [38, 28, 900],
    [25, 35, 800],
  ] as const;
  return clubs.flatMap(([ballSpeed, angle, spin]) =>
    [-0.25, 0, 0.25].map((spinTilt) => ({
      ballSpeed,
      launchAngle: (angle * Math.PI) / 180,
      start: 0.02,
      spin,
      spinTilt,
    })),
  );
}

if (process.argv[1] === new URL(import.meta.url).pathname) console.log(compareTrajectories());
