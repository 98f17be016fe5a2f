// Situations that several tests of the model start from; all values invented, SI, as they would be entered.
import fc from 'fast-check';
import type { Observation, Situation } from '../../src/model/value.ts';

export const degree = Math.PI / 180;

type Row = readonly [id: string, value: number, u: number];

const rows: readonly Row[] = [
  ['club.loft', 22 * degree, degree],
  ['club.head_mass', 0.23, 0.003],
  ['checkpoints.impact.shaft_lean', 5 * degree, 2.5 * degree],
  ['delivery.club_speed', 41, 0.5],
  ['delivery.attack', -3.5 * degree, degree],
  ['delivery.path', 3 * degree, degree],
  ['delivery.face', degree, 1.2 * degree],
  ['delivery.face_to_path', -2 * degree, 1.5 * degree],
  ['delivery.delivered_loft', 19 * degree, 1.5 * degree],
  ['delivery.obliquity', 22 * degree, 2 * degree],
  ['delivery.arc.direction', degree, 2 * degree],
  ['delivery.arc.inclination', 58 * degree, 3 * degree],
  ['delivery.arc.radius', 1.6, 0.12],
  ['delivery.low_point.ahead', 0.1, 0.03],
  ['delivery.low_point.depth', 0.004, 0.005],
  ['strike.across', -0.004, 0.002],
  ['strike.height', -0.006, 0.002],
  ['flight.ball_speed', 57, 0.5],
  ['flight.speed_ratio', 1.39, 0.02],
  ['flight.launch_angle', 14 * degree, 0.7 * degree],
  ['flight.start', 1.5 * degree, 0.7 * degree],
  ['flight.spin', 480, 15],
  ['flight.spin_tilt', -5 * degree, 2 * degree],
  ['flight.carry', 171, 2],
  ['flight.total', 180, 6],
  ['flight.curve', -5, 1.5],
  ['flight.finish', 0.5, 1.5],
  ['flight.apex', 26, 0.8],
  ['flight.descent', 42 * degree, 1.2 * degree],
  ['flight.time', 5.6, 0.05],
  ['conditions.temperature', 287, 2],
  ['conditions.altitude', 310, 20],
  ['conditions.pressure', 97500, 300],
  ['conditions.humidity', 0.6, 0.1],
  ['conditions.wind', 3, 1.5],
];

/** Every id that some step reads or gives, entered. */
export const everything: ReadonlyMap<string, Observation> = new Map(
  rows.map(([id, value, u]) => [id, { id, value, u }]),
);

/** What is entered of `everything`, with other values where given. */
export function situationOf(
  ids: readonly string[],
  values: Readonly<Record<string, number>> = {},
  rest: Partial<Situation> = {},
): Situation {
  const observations = [...new Set([...ids, ...Object.keys(values)])].map((id): Observation => {
    const known = everything.get(id);
    if (!known) throw new Error(`no such entry in the test's table: ${id}`);
    return { ...known, value: values[id] ?? known.value };
  });
  return {
    hand: 'right',
    clubKind: 'hybrid',
    windBearing: undefined,
    ...rest,
    observations: new Map(observations.map((o) => [o.id, o])),
  };
}

/** What a coach enters of the delivery; enough for launch and flight. */
export const deliveryIds = [
  'delivery.club_speed',
  'delivery.attack',
  'delivery.path',
  'delivery.face',
  'club.loft',
  'checkpoints.impact.shaft_lean',
];

/** Any subset of `everything`, each value shifted by up to two of its uncertainties. */
export const anyPlausible: fc.Arbitrary<Situation> = fc
  .tuple(
    fc.subarray(rows.slice()),
    fc.array(fc.double({ min: -2, max: 2, noNaN: true }), { minLength: rows.length, maxLength: rows.length }),
    fc.constantFrom<'left' | 'right'>('left', 'right'),
    fc.constantFrom('driver', 'iron', 'hybrid', undefined),
    fc.constantFrom(undefined, 0, Math.PI / 2, 4),
  )
  .map(([chosen, shifts, hand, clubKind, windBearing]) => ({
    hand,
    clubKind,
    windBearing,
    observations: new Map(
      chosen.map(([id, value, u], i): [string, Observation] => [
        id,
        { id, value: value + (shifts[i] ?? 0) * u, u },
      ]),
    ),
  }));
