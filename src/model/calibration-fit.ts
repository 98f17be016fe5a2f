// The least-squares fit behind the calibration: flies measured shots with drag and lift multiplied; judges no result.
import { airAt } from '../physics/air.ts';
import { coefficientSets, scaledSet } from '../physics/coefficients.ts';
import { fly, type FlightLaunch } from '../physics/flight.ts';
import type { Surroundings } from '../physics/flight-forces.ts';
import { openGround } from '../physics/wind.ts';
import { fit, type Fit, type Measurement, type Prior, type Problem } from './least-squares.ts';
import { inverseOf } from './linear-algebra.ts';
import { rowsOf, type Rows } from './rows.ts';

/** A number with its standard uncertainty, SI. */
export interface Known {
  readonly value: number;
  readonly u: number;
}

/** The air of one session: whatever is wrong about it is wrong for all its shots alike. */
export interface SessionAir {
  /** K */
  readonly temperature: Known;
  /** Pa */
  readonly pressure: Known;
  /** 0 to 1 */
  readonly humidity: number;
  /** m/s at 2 m above the ground. */
  readonly wind: Known;
  /** Where it comes from, rad counter-clockwise from the target line. */
  readonly windBearing: number;
}

export interface CalibrationShot {
  /** One name for all shots of one session. */
  readonly session: string;
  readonly air: SessionAir;
  /** m/s, rad, rad, rad/s, rad. */
  readonly launch: Readonly<Record<keyof FlightLaunch, Known>>;
  /** m */
  readonly carry: Known;
  /** m, right positive; only with a measured tilt of the spin. */
  readonly curve?: Known;
  /** m */
  readonly apex?: Known;
}

export interface Fitted {
  readonly drag: Known;
  readonly lift: Known;
  readonly correlation: number;
  /** Carry less prediction, m, shot by shot. */
  readonly carries: readonly number[];
}

/** A shot with what does not change during the fit. */
export interface PreparedShot {
  readonly shot: CalibrationShot;
  readonly surroundings: Surroundings;
  readonly launch: FlightLaunch;
  readonly outputs: readonly Output[];
  /** With the published coefficients as they are. */
  readonly centre: Flown;
  /** By output and condition: what one standard uncertainty of the condition changes. */
  readonly conditions: readonly (readonly number[])[];
}

type OutputKey = 'carry' | 'curve' | 'apex';

interface Output {
  readonly key: OutputKey;
  readonly measurement: Measurement;
}

const conditionCount = 3;
const launchKeys = ['ballSpeed', 'launchAngle', 'start', 'spin', 'spinTilt'] as const;
const unscaled = { drag: 1, lift: 1 };

/** Undefined where the shot cannot be flown, or where its numbers are none. */
export function prepared(shot: CalibrationShot): PreparedShot | undefined {
  const launch = launchOf(shot);
  const surroundings = surroundingsOf(shot.air);
  if (surroundings === undefined) return undefined;
  const centre = flownMean(launch, surroundings, unscaled);
  if (centre === undefined) return undefined;
  const keys = (['carry', 'curve', 'apex'] as const).filter((key) => shot[key] !== undefined);
  const launchShifts = launchKeys.map((key) => {
    const { value, u } = shot.launch[key];
    return flownMean({ ...launch, [key]: value + u }, surroundings, unscaled);
  });
  const conditionShifts = movedAirs(shot.air).map((air) => {
    const moved = surroundingsOf(air);
    return moved && flownMean(launch, moved, unscaled);
  });
  const outputs = keys.map((key): Output => {
    const { value, u } = shot[key]!;
    const own = launchShifts.map((shift) => (shift === undefined ? 0 : shift[key] - centre[key]));
    return { key, measurement: { value, u: Math.hypot(u, ...own) } };
  });
  const isUsable = outputs.every(
    ({ measurement: { value, u } }) => Number.isFinite(value) && Number.isFinite(u) && u > 0,
  );
  const conditions = keys.map((key) =>
    conditionShifts.map((shift) => (shift === undefined ? 0 : shift[key] - centre[key])),
  );
  return isUsable ? { shot, surroundings, launch, centre, outputs, conditions } : undefined;
}

function launchOf({ launch }: CalibrationShot): FlightLaunch {
  const { ballSpeed, launchAngle, start, spin, spinTilt } = launch;
  return {
    ballSpeed: ballSpeed.value,
    launchAngle: launchAngle.value,
    start: start.value,
    spin: spin.value,
    spinTilt: spinTilt.value,
  };
}

function surroundingsOf(session: SessionAir): Surroundings | undefined {
  const { temperature, pressure, humidity, wind, windBearing } = session;
  const air = airAt({ temperature: temperature.value, pressure: pressure.value, humidity });
  if (air === undefined) return undefined;
  const heightProfile = { reference: 2, roughness: openGround.roughness };
  return wind.value === 0 ? { air } : { air, wind: { speed: wind.value, from: windBearing, heightProfile } };
}

/** The air with temperature, pressure and wind each moved by one standard uncertainty. */
function movedAirs(air: SessionAir): readonly SessionAir[] {
  const { temperature, pressure, wind } = air;
  const moved = ({ value, u }: Known): Known => ({ value: value + u, u });
  return [
    { ...air, temperature: moved(temperature) },
    { ...air, pressure: moved(pressure) },
    { ...air, wind: moved(wind) },
  ];
}

type Flown = Readonly<Record<OutputKey, number>>;

/** As the step of the flight takes it: the mean over the published sets, each multiplied. */
function flownMean(
  launch: FlightLaunch,
  surroundings: Surroundings,
  factors: { readonly drag: number; readonly lift: number },
): Flown | undefined {
  let [carry, curve, apex] = [0, 0, 0];
  for (const set of coefficientSets) {
    const flight = fly(launch, surroundings, scaledSet(set, factors), { tolerance: 1e-5 });
    if (flight === undefined) return undefined;
    carry += flight.carry / coefficientSets.length;
    curve += flight.curve / coefficientSets.length;
    apex += flight.apex / coefficientSets.length;
  }
  return { carry, curve, apex };
}

/** Parameters: drag, lift, then three conditions a session in standard uncertainties. `drag` holds lift at 1. */
export function fitted(shots: readonly PreparedShot[], free: 'both' | 'drag'): Fitted | undefined {
  const sessions = [...new Set(shots.map(({ shot }) => shot.session))];
  const places = new Map(sessions.map((session, index) => [session, 2 + conditionCount * index]));
  const unknown: Prior = { mean: 1, u: Infinity, kind: 'window' };
  const held: Prior = { mean: 1, u: 1e-9, kind: 'window' };
  const condition: Prior = { mean: 0, u: 1, kind: 'evidence' };
  const priors = [
    unknown,
    free === 'both' ? unknown : held,
    ...Array.from({ length: conditionCount * sessions.length }, () => condition),
  ];
  const measurements = shots.flatMap(({ outputs }) => outputs.map(({ measurement }) => measurement));
  const predict = (parameters: Float64Array): Float64Array | undefined =>
    predictionsOf(shots, parameters, places);
  const problem: Problem = {
    priors,
    measurements,
    model: { predict, slopes: (parameters) => slopesOf(shots, parameters, places, predict) },
  };
  const result = fit(problem, { tolerance: 1e-3, limit: 40 });
  if (result === undefined) return undefined;
  const judgement = judged(result, problem, free);
  return judgement && { ...judgement, carries: carriesOf(shots, result.predictions) };
}

function predictionsOf(
  shots: readonly PreparedShot[],
  parameters: Float64Array,
  places: ReadonlyMap<string, number>,
): Float64Array | undefined {
  const [drag, lift] = [parameters[0]!, parameters[1]!];
  const predictions: number[] = [];
  if (!(drag > 0 && lift > 0)) return undefined;
  for (const { shot, launch, surroundings, outputs, conditions } of shots) {
    const flight = flownMean(launch, surroundings, { drag, lift });
    if (flight === undefined) return undefined;
    const place = places.get(shot.session)!;
    for (const [o, { key }] of outputs.entries()) {
      const shift = conditions[o]!.reduce((sum, change, k) => sum + change * parameters[place + k]!, 0);
      predictions.push(flight[key] + shift);
    }
  }
  return Float64Array.from(predictions);
}

/** A factor's step for differences: far above rounding, far below what matters. */
const step = 0.005;

function slopesOf(
  shots: readonly PreparedShot[],
  parameters: Float64Array,
  places: ReadonlyMap<string, number>,
  predict: (parameters: Float64Array) => Float64Array | undefined,
): Rows | undefined {
  const size = parameters.length;
  const count = shots.reduce((sum, { outputs }) => sum + outputs.length, 0);
  const slopes = new Float64Array(count * size);
  for (const j of [0, 1]) {
    const at = (by: number): Float64Array | undefined =>
      predict(parameters.map((value, index) => (index === j ? value + by : value)));
    const [above, below] = [at(step), at(-step)];
    if (above === undefined || below === undefined) return undefined;
    for (let i = 0; i < count; i++) slopes[i * size + j] = (above[i]! - below[i]!) / (2 * step);
  }
  let row = 0;
  for (const { shot, outputs, conditions } of shots) {
    const place = places.get(shot.session)!;
    for (const o of outputs.keys()) {
      for (const [k, change] of conditions[o]!.entries()) slopes[row * size + place + k] = change;
      row += 1;
    }
  }
  return rowsOf(slopes, size);
}

function judged(
  result: Fit,
  { measurements, priors }: Problem,
  free: 'both' | 'drag',
): Omit<Fitted, 'carries'> | undefined {
  const size = priors.length;
  const unknowns = free === 'both' ? 2 : 1;
  if (result.factor.dependent.length > 0) return undefined;
  const covariance = inverseOf(result.factor);
  const residuals = measurements.map(({ value, u }, i) => (value - result.predictions[i]!) / u);
  const chiSquared = residuals.reduce((sum, residual) => sum + residual ** 2, 0);
  const birge = Math.max(1, Math.sqrt(chiSquared / Math.max(1, measurements.length - unknowns)));
  const [dd, dl, ll] = [covariance[0]!, covariance[1]!, covariance[size + 1]!];
  const [drag, lift] = [result.parameters[0]!, result.parameters[1]!];
  if (!(dd > 0 && ll > 0) || !Number.isFinite(drag) || !Number.isFinite(lift)) return undefined;
  return {
    drag: { value: drag, u: Math.sqrt(dd) * birge },
    lift: { value: lift, u: Math.sqrt(ll) * birge },
    correlation: Math.min(1, Math.max(-1, dl / Math.sqrt(dd * ll))),
  };
}

/** The carry is the first output of each shot. */
function carriesOf(shots: readonly PreparedShot[], predictions: Float64Array): readonly number[] {
  let row = 0;
  return shots.map(({ outputs }) => {
    const residual = outputs[0]!.measurement.value - predictions[row]!;
    row += outputs.length;
    return residual;
  });
}

/** Carry less prediction with the published coefficients as they are, m, shot by shot. */
export function plainCarries(shots: readonly PreparedShot[]): readonly number[] {
  return shots.map(({ outputs, centre }) => outputs[0]!.measurement.value - centre.carry);
}
