// Draws invented swings from the model's own priors and what a coach would read of them; for benchmarks, seeded.
import { createForward } from '../../src/model/forward.ts';
import { mirroredNumber, mirroredSituation } from '../../src/model/mirror.ts';
import type { Situation, Observation } from '../../src/model/value.ts';
import type { WeighedReading } from '../../src/model/combine.ts';
import { quantities } from '../../src/registry/generated.ts';
import { findQuantity } from '../../src/registry/registry.ts';

export interface Generator {
  readonly uniform: () => number;
  readonly normal: () => number;
}

/** Mulberry32 and Box & Muller: the same draws in every run. */
export function generatorOf(seed: number): Generator {
  let state = seed;
  const uniform = () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
  const normal = () => Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform());
  return { uniform, normal };
}

export interface Drawn {
  readonly situation: Situation;
  /** The true value of everything that was read and of what follows, SI, as this player has it. */
  readonly truth: ReadonlyMap<string, number>;
}

const kinds = ['driver', 'fairway', 'hybrid', 'iron', 'wedge'] as const;

/** Quantities that the record may hold, in groups that a coach reads or leaves out together, with the odds of each. */
const groups: readonly (readonly [odds: number, ids: readonly string[]])[] = [
  [0.9, ['club.loft', 'club.lie', 'club.length']],
  [0.6, ['club.head_mass']],
  [0.9, ['student.stature']],
  [0.8, ['delivery.club_speed', 'delivery.attack', 'delivery.path', 'delivery.face']],
  [0.4, ['delivery.face_to_path', 'delivery.delivered_loft']],
  [0.2, ['delivery.obliquity']],
  [0.4, ['delivery.arc.direction', 'delivery.arc.inclination']],
  [0.3, ['delivery.arc.radius', 'delivery.release_ratio']],
  [0.5, ['delivery.low_point.ahead']],
  [0.3, ['delivery.low_point.depth']],
  [0.7, ['checkpoints.impact.lead_shoulder', 'checkpoints.impact.shaft_lean']],
  [0.4, ['checkpoints.impact.hands']],
  [0.5, ['ground.divot.starts', 'ground.divot.length', 'ground.divot.depth', 'ground.divot.direction']],
  [0.5, ['strike.across', 'strike.height']],
  [0.7, ['flight.ball_speed', 'flight.launch_angle', 'flight.spin', 'flight.spin_tilt']],
  [0.3, ['flight.speed_ratio']],
  [0.9, ['flight.start', 'flight.carry', 'flight.curve']],
  [0.4, ['flight.finish', 'flight.apex', 'flight.time', 'flight.descent']],
  [0.3, ['flight.total']],
  [0.6, ['conditions.temperature', 'conditions.altitude']],
  [0.3, ['conditions.pressure', 'conditions.humidity']],
  [
    0.5,
    [
      'checkpoints.address.stance_width',
      'checkpoints.address.ball_position',
      'checkpoints.address.pelvis',
      'checkpoints.address.sternum',
      'checkpoints.address.lead_pressure',
      'checkpoints.address.head',
    ],
  ],
  [
    0.3,
    [
      'checkpoints.impact.pelvis',
      'checkpoints.impact.sternum',
      'checkpoints.impact.shoulder_turn',
      'checkpoints.impact.lead_pressure',
    ],
  ],
];

/** One swing and its readings; undefined where the draw is a swing that nobody makes. */
export function drawRecord(random: Generator): Drawn | undefined {
  const kind = kinds[Math.floor(random.uniform() * kinds.length)]!;
  const ids = groups.flatMap(([odds, group]) => (random.uniform() < odds ? group : []));
  const isOffTurf = kind !== 'driver';
  const read = ids.filter((id) => isOffTurf || !id.startsWith('ground.'));
  const hand = random.uniform() < 0.5 ? 'left' : 'right';
  const context = { clubKind: kind, windBearing: undefined, bodyTable: undefined };
  const forward = createForward(context, new Map(read.map((id) => [id, NaN])), [], new Set());
  const parameters = Float64Array.from(forward.parameters, (parameter) => {
    const window = parameter.kind === 'window' ? findQuantity(parameter.key)?.practice : undefined;
    for (let n = 0; n < 50; n++) {
      const drawn = parameter.mean + parameter.u * random.normal();
      if (!window || (drawn >= window.min && drawn <= window.max)) return drawn;
    }
    return parameter.mean;
  });
  if (!forward.values(parameters)) return undefined;
  forward.renewErrors();
  const values = forward.values(parameters);
  if (!values) return undefined;
  const truth = new Map(forward.ids.map((id, node) => [id, values[node]!]));
  if (quantities.some(({ id, practice, bounds }) => !isWithin(truth.get(id), practice ?? bounds)))
    return undefined;

  const observations = new Map<string, Observation>();
  const readings = new Map<string, readonly WeighedReading[]>();
  for (const id of read) {
    const quantity = findQuantity(id)!;
    const methods = Object.values(quantity.uncertainty.by);
    const u = methods[Math.floor(random.uniform() * methods.length)] ?? quantity.uncertainty.otherwise;
    const value = truth.get(id)! + u * random.normal();
    observations.set(id, { id, value, u });
    readings.set(id, [{ value, u, doubtful: false }]);
  }
  const right: Situation = { hand: 'left', clubKind: kind, windBearing: undefined, observations, readings };
  // Mirroring is its own inverse: what was drawn as for a right-hander becomes the left-hander's record.
  const situation: Situation = hand === 'left' ? { ...mirroredSituation(right), hand } : { ...right, hand };
  const own = [...truth].map(([id, value]) => [id, mirroredNumber(id, value, { hand })] as const);
  return { situation, truth: new Map(own) };
}

function isWithin(value: number | undefined, range: { readonly min: number; readonly max: number }): boolean {
  return value === undefined || (value >= range.min && value <= range.max);
}

/** So many swings that somebody could make. */
export function drawRecords(count: number, seed: number): readonly Drawn[] {
  const random = generatorOf(seed);
  const drawn: Drawn[] = [];
  while (drawn.length < count) {
    const one = drawRecord(random);
    if (one) drawn.push(one);
  }
  return drawn;
}

/** The same record with one reading of an id moved by so many of its standard uncertainties. */
export function withError(situation: Situation, id: string, byUncertainties: number): Situation {
  const before = situation.readings!.get(id)!;
  const moved = before.map((one, i) =>
    i === 0 ? { ...one, value: one.value + byUncertainties * one.u } : one,
  );
  const observation = { ...situation.observations.get(id)!, value: moved[0]!.value };
  return {
    ...situation,
    observations: new Map(situation.observations).set(id, observation),
    readings: new Map(situation.readings).set(id, moved),
  };
}
