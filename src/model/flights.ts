// Flies the ball by the published sets of coefficients, with as few runs as will do, and gives the slopes of their mean; knows no record.
import { airAt } from '../physics/air.ts';
import { coefficientSets, scaledSet } from '../physics/coefficients.ts';
import { fly, type Flight, type PathPoint } from '../physics/flight.ts';
import { grounds, run } from '../physics/run.ts';
import { openGround, type Wind } from '../physics/wind.ts';
import { localSlopes } from './estimate.ts';
import { remembered } from './remembered.ts';
import type { Context } from './rule.ts';

export const flightInputs = [
  'flight.ball_speed',
  'flight.launch_angle',
  'flight.start',
  'flight.spin',
  'flight.spin_tilt',
  'conditions.temperature',
  'conditions.pressure',
  'conditions.humidity',
  'conditions.wind',
  'conditions.ground_give',
] as const;

/** `flight.run` has no place in a record: how much farther than its carry the ball goes. */
export const flightOutputs = [
  'flight.carry',
  'flight.curve',
  'flight.apex',
  'flight.descent',
  'flight.time',
  'flight.run',
] as const;

export const fineTolerance = 1e-6;

/**
 * Relative error of one step where only differences are wanted: more than twice as fast, and what an input contributes
 * changes by at most 2 % of the step's own inexactness (driver, iron and wedge). One set alone would not do: the sets'
 * slopes of a driver's carry in the launch angle differ by more than twice.
 */
export const coarseTolerance = 1e-4;

/** Multipliers of the published drag and lift. */
export interface Factors {
  readonly drag: number;
  readonly lift: number;
}

type Row = readonly number[];

/** `flightOutputs` by each set in turn for `flightInputs`; undefined for a set that gives no flight. */
export function flownBySets(
  inputs: Row,
  context: Context,
  tolerance: number,
  factors: Factors = factorsOf(context),
): readonly (Row | undefined)[] {
  const core = coreOf(inputs);
  return core ? rowsOf(core, context, factors, tolerance) : coefficientSets.map(() => undefined);
}

/** The mean over the sets; undefined where one of them gives no flight. */
export function meanFlight(
  inputs: Row,
  context: Context,
  tolerance: number,
  factors: Factors = factorsOf(context),
): Row | undefined {
  return meanOf(flownBySets(inputs, context, tolerance, factors));
}

const pathPoints = 41;

/**
 * The way through the air, for who wants to draw it: at each share of the time of flight the mean place over the sets, so that
 * it ends where their mean comes down. Undefined where one of them gives no flight.
 */
export function meanPath(inputs: Row, context: Context): readonly PathPoint[] | undefined {
  const core = coreOf(inputs);
  const { drag, lift } = factorsOf(context);
  const bearing = context.windBearing ?? unknownBearing;
  return core && pathBySets([...core.slice(0, givePlace), bearing, drag, lift, coarseTolerance]);
}

/**
 * Slopes of the mean, input by input, by differences over half a width to each side of each input; those by the weather through
 * density and viscosity of the air, which all of it comes down to.
 */
export function flightSlopes(inputs: Row, widths: Row, context: Context): readonly Row[] | undefined {
  const core = coreOf(inputs);
  if (!core) return undefined;
  const { drag, lift } = factorsOf(context);
  const [wind, give] = widths.slice(densityPlace + 3);
  const coreWidths = [...widths.slice(0, densityPlace), ...airWidths, wind!, give!];
  const slopes = coreSlopes([...core, ...coreWidths, context.windBearing ?? unknownBearing, drag, lift]);
  return slopes && throughAir(slopes, inputs, widths);
}

/** What a flight hangs on: of the weather only density, kg/m³, and kinematic viscosity, m²/s, of the air. */
function coreOf([speed, angle, start, spin, tilt, temperature, pressure, humidity, wind, give]: Row):
  Row | undefined {
  const air = airAt({ temperature: temperature!, pressure: pressure!, humidity: humidity! });
  return air && [speed!, angle!, start!, spin!, tilt!, air.density, air.kinematicViscosity, wind!, give!];
}

const [startPlace, densityPlace, viscosityPlace, windPlace, givePlace] = [2, 5, 6, 7, 8] as const;
const coreSize = 9;
/** Some 2 % of each: little enough to be straight, enough to be free of rounding. */
const airWidths: Row = [0.05, 6e-7];

function rowsOf(
  core: Row,
  context: Context,
  { drag, lift }: Factors,
  tolerance: number,
): (Row | undefined)[] {
  const bearing = context.windBearing ?? unknownBearing;
  const flights = flightsBySet([...core.slice(0, givePlace), bearing, drag, lift, tolerance]);
  return flights.map((flight) => flight && rowOf(flight, core[givePlace]!));
}

/** The last flights are kept, and with them most of what one changed line of a record needs. */
const flightsBySet = remembered(12, 64, (numbers) => flown(numbers, 0));

/** The last ones that were drawn. */
const pathBySets = remembered(12, 4, (numbers): readonly PathPoint[] | undefined => {
  const paths = flown(numbers, pathPoints).map((flight) => flight?.path);
  if (!paths.every((path) => path !== undefined)) return undefined;
  const mean = (of: (point: PathPoint) => number, i: number): number =>
    paths.reduce((sum, path) => sum + of(path[i]!), 0) / paths.length;
  return Array.from({ length: pathPoints }, (_, i) => ({
    time: mean(({ time }) => time, i),
    ahead: mean(({ ahead }) => ahead, i),
    right: mean(({ right }) => right, i),
    up: mean(({ up }) => up, i),
  }));
});

function flown(numbers: Row, samples: number): readonly (Flight | undefined)[] {
  const [ballSpeed, launchAngle, start, spin, spinTilt, density, kinematicViscosity] = numbers as number[];
  const [wind, bearing, drag, lift, tolerance] = numbers.slice(windPlace);
  const launch = {
    ballSpeed: ballSpeed!,
    launchAngle: launchAngle!,
    start: start!,
    spin: spin!,
    spinTilt: spinTilt!,
  };
  const surroundings = {
    air: { density: density!, kinematicViscosity: kinematicViscosity! },
    ...windOf(wind!, bearing!),
  };
  const isPublished = drag === 1 && lift === 1;
  return coefficientSets.map((set) =>
    fly(launch, surroundings, isPublished ? set : scaledSet(set, { drag: drag!, lift: lift! }), {
      tolerance: tolerance!,
      samples,
    }),
  );
}

function rowOf(flight: Flight, give: number): Row | undefined {
  const rest = run(flight, { ...grounds.medium, give });
  const { carry, curve, apex, descent, time } = flight;
  return rest && [carry, curve, apex, descent, time, rest.total - carry];
}

const coreSlopes = remembered(2 * coreSize + 3, 16, (numbers): readonly Row[] | undefined => {
  const core = numbers.slice(0, coreSize);
  const widths = numbers.slice(coreSize, 2 * coreSize);
  const [windBearing, drag, lift] = numbers.slice(2 * coreSize);
  const context: Context = { clubKind: undefined, windBearing };
  const compute = (at: Row): Row | undefined =>
    meanOf(rowsOf(at, context, { drag: drag!, lift: lift! }, coarseTolerance));
  const slopes = core.map((_, i) =>
    // In still air the start only turns the flight.
    i === startPlace && core[windPlace] === 0
      ? flightOutputs.map(() => 0)
      : localSlopes(compute, core, i, widths[i]!),
  );
  return slopes.every((row) => row !== undefined) ? slopes : undefined;
});

/** From slopes by density and viscosity to those by temperature, pressure and humidity, by the chain rule. */
function throughAir(slopes: readonly Row[], inputs: Row, widths: Row): readonly Row[] | undefined {
  const airOf = ([temperature, pressure, humidity]: Row): Row | undefined => {
    const air = airAt({ temperature: temperature!, pressure: pressure!, humidity: humidity! });
    return air && [air.density, air.kinematicViscosity];
  };
  const weather = inputs.slice(densityPlace, densityPlace + 3);
  const byWeather = weather.map((_, i) => {
    const local = localSlopes(airOf, weather, i, widths[densityPlace + i]!);
    return (
      local &&
      flightOutputs.map(
        (_, o) => local[0]! * slopes[densityPlace]![o]! + local[1]! * slopes[viscosityPlace]![o]!,
      )
    );
  });
  if (!byWeather.every((row) => row !== undefined)) return undefined;
  return [...slopes.slice(0, densityPlace), ...byWeather, ...slopes.slice(windPlace)];
}

/** Where the wind comes from while nobody knows: halfway between ahead and the side, so that carry and curve both feel it. */
const unknownBearing = Math.PI / 4;

/** The registry's wind is that at the height of a person. */
const atHeightOfPerson = { reference: 2, roughness: openGround.roughness };

function windOf(speed: number, from: number): { readonly wind?: Wind } {
  return speed === 0 ? {} : { wind: { speed, from, heightProfile: atHeightOfPerson } };
}

function factorsOf({ calibration }: Context): Factors {
  return { drag: calibration?.drag.value ?? 1, lift: calibration?.lift?.value ?? 1 };
}

function meanOf(rows: readonly (Row | undefined)[]): Row | undefined {
  if (!rows.every((row) => row !== undefined)) return undefined;
  return flightOutputs.map((_, o) => rows.reduce((sum, row) => sum + row[o]!, 0) / rows.length);
}
