// Holds the table of quantities against the list that files may use, written out here, and against itself.
import assert from 'node:assert/strict';
import { findUnit, toSI } from '../../src/measure/units.ts';
import { parseMeasure } from '../../src/measure/parse.ts';
import { methods, quantities, type QuantityId } from '../../src/registry/generated.ts';
import { checkpoints } from '../../src/registry/quantity.ts';
import { builtIn, findQuantity } from '../../src/registry/registry.ts';

const everyCheckpoint = [
  ...['head', 'sternum', 'pelvis', 'lead_shoulder', 'hands', 'lead_knee', 'lead_pressure', 'shoulder_turn'],
  ...['pelvis_turn', 'shoulder_tilt', 'spine_tilt', 'forward_bend', 'lead_arm', 'lead_elbow_bend'],
  ...['trail_elbow_bend', 'lead_wrist_hinge', 'lead_wrist_bow', 'shaft_lean', 'shaft_inclination'],
  ...['hand_depth', 'pelvis_depth', 'head_height', 'time'],
];

const onlyAddress = [
  ...['stance_width', 'lead_foot_flare', 'trail_foot_flare', 'ball_position', 'stance_direction'],
  'shoulder_direction',
];

const elsewhere: readonly QuantityId[] = [
  'delivery.club_speed',
  'delivery.attack',
  'delivery.path',
  'delivery.face',
  'delivery.face_to_path',
  'delivery.delivered_loft',
  'delivery.obliquity',
  'delivery.release_ratio',
  'delivery.arc.direction',
  'delivery.arc.inclination',
  'delivery.arc.radius',
  'delivery.low_point.ahead',
  'delivery.low_point.depth',
  'ground.divot.starts',
  'ground.divot.length',
  'ground.divot.depth',
  'ground.divot.direction',
  'strike.across',
  'strike.height',
  'flight.ball_speed',
  'flight.speed_ratio',
  'flight.launch_angle',
  'flight.start',
  'flight.spin',
  'flight.spin_tilt',
  'flight.carry',
  'flight.total',
  'flight.curve',
  'flight.finish',
  'flight.apex',
  'flight.descent',
  'flight.time',
  'conditions.temperature',
  'conditions.altitude',
  'conditions.pressure',
  'conditions.humidity',
  'conditions.wind',
  'student.stature',
  'student.mass',
  'club.loft',
  'club.lie',
  'club.length',
  'club.head_mass',
];

const mirrored: readonly QuantityId[] = [
  'checkpoints.address.stance_direction',
  'checkpoints.address.shoulder_direction',
  'delivery.path',
  'delivery.face',
  'delivery.face_to_path',
  'delivery.arc.direction',
  'ground.divot.direction',
  'flight.start',
  'flight.spin_tilt',
  'flight.curve',
  'flight.finish',
];

describe('table of quantities', () => {
  it('has exactly the quantities that files may use, each once', () => {
    const expected = [
      ...checkpoints.flatMap((checkpoint) =>
        everyCheckpoint.map((key) => `checkpoints.${checkpoint}.${key}`),
      ),
      ...onlyAddress.map((key) => `checkpoints.address.${key}`),
      ...elsewhere,
    ];
    assert.deepEqual(quantities.map((q) => q.id).sort(), expected.sort());
  });

  it('takes section, checkpoint and key from the id', () => {
    for (const q of quantities) {
      const parts = q.id.split('.');
      assert.equal(q.section, parts[0]);
      assert.equal(q.key, parts.at(-1));
      assert.equal(q.checkpoint, q.section === 'checkpoints' ? parts[1] : undefined);
    }
  });

  it('shows each quantity in a unit of its dimension', () => {
    for (const q of quantities) assert.equal(findUnit(q.unit)?.dimension, q.dimension, q.id);
  });

  it('keeps what is seen in practice inside what is possible', () => {
    for (const { id, bounds, practice, practiceByClub = {} } of quantities) {
      for (const { min, max } of Object.values(practiceByClub))
        assert.ok(practice && practice.min <= min && min < max && max <= practice.max, id);
      assert.ok(bounds.min < bounds.max, id);
      if (practice === undefined) continue;
      assert.ok(bounds.min <= practice.min && practice.min < practice.max && practice.max <= bounds.max, id);
    }
  });

  it('names a source for every range and every figure of a method', () => {
    const sources = [
      ...quantities.flatMap((q) => [q.bounds.source, q.practice?.source ?? 'none']),
      ...methods.flatMap((m) => Object.values(m.uncertainty).map((figure) => figure.source)),
    ];
    assert.deepEqual(
      sources.filter((source) => source.trim() === ''),
      [],
    );
  });

  it('gives every uncertainty a positive size, and only by known methods', () => {
    for (const { id, uncertainty } of quantities) {
      assert.ok(uncertainty.otherwise > 0, id);
      for (const [method, u] of Object.entries(uncertainty.by)) {
        assert.ok(builtIn.methodNames.includes(method), `${id} by ${method}`);
        assert.ok(u > 0, `${id} by ${method}`);
      }
    }
    for (const { name, uncertainty } of methods) {
      for (const figure of Object.values(uncertainty)) assert.ok(figure.u > 0, name);
    }
  });

  it('knows a value by default better than the width of the window seen in practice', () => {
    for (const { id, practice, uncertainty } of quantities) {
      if (practice === undefined) continue;
      assert.ok(uncertainty.otherwise < practice.max - practice.min, id);
    }
  });

  it('has a word for either sign or for neither, and none twice', () => {
    for (const { id, directions } of quantities) {
      const words = directions.map((direction) => direction.word);
      assert.equal(new Set(words).size, words.length, id);
      if (directions.some((direction) => direction.bearing !== undefined)) continue;
      const signs = new Set(directions.map((direction) => direction.sign));
      assert.ok(signs.size === 0 || signs.size === 2, id);
    }
  });

  it('gives a direction word the same sign wherever it stands', () => {
    const signs = new Map<string, number>();
    for (const { id, directions } of quantities) {
      for (const { word, sign } of directions) {
        assert.equal(signs.get(word) ?? sign, sign, `${word} at ${id}`);
        signs.set(word, sign);
      }
    }
  });

  it('counts right, ahead, up, closed, away, bowed, out and toward the toe as positive', () => {
    const positive = new Set(
      quantities.flatMap((q) => q.directions.filter((d) => d.sign === 1).map((d) => d.word)),
    );
    for (const word of ['right', 'ahead', 'up', 'closed', 'away', 'bowed', 'out', 'toward toe', 'forward']) {
      assert.ok(positive.has(word), word);
    }
  });

  it('mirrors for a left-handed player whatever points right or left of something', () => {
    assert.deepEqual(
      quantities.filter((q) => q.lateral).map((q) => q.id),
      mirrored,
    );
    for (const id of mirrored) {
      assert.deepEqual(
        findQuantity(id)?.directions.map((d) => d.word),
        ['right', 'left'],
      );
    }
  });

  it('turns the words of the wind counter-clockwise from the target line', () => {
    const bearings = new Map(findQuantity('conditions.wind')?.directions.map((d) => [d.word, d.bearing]));
    assert.equal(bearings.get('from ahead'), 0);
    assert.equal(bearings.get('from left'), Math.PI / 2);
    assert.equal(bearings.get('from behind'), Math.PI);
    assert.equal(bearings.get('from right'), (3 * Math.PI) / 2);
    assert.equal(bearings.get('from ahead left'), Math.PI / 4);
    assert.equal(bearings.get('headwind'), bearings.get('from ahead'));
    assert.equal(bearings.get('tailwind'), bearings.get('from behind'));
  });

  it('holds numbers in SI to the last bit, so that a value on a bound is inside', () => {
    assert.equal(findQuantity('delivery.face_to_path')?.bounds.max, toSI(90, 'deg'));
    assert.equal(findQuantity('club.length')?.bounds.max, toSI(48, 'in'));
    assert.equal(findQuantity('conditions.temperature')?.bounds.min, toSI(-60, '°C'));
    assert.equal(findQuantity('conditions.temperature')?.uncertainty.otherwise, 2);
    assert.equal(findQuantity('conditions.humidity')?.bounds.max, 1);
    assert.equal(findQuantity('flight.spin')?.bounds.max, toSI(22000, 'rpm'));
  });

  it('lets every word of every quantity be written after a number and every method after `by`', () => {
    const words = new Map(
      quantities.flatMap((q) => q.directions.map((d) => [`${q.unit} ${d.word}`, [q, d] as const])),
    );
    for (const [written, [quantity, direction]] of words) {
      for (const method of builtIn.methodNames) {
        const parsed = parseMeasure(`3 ${written} by ${method}`, quantity, {
          window: 'no',
          methods: builtIn.methodNames,
        });
        assert.deepEqual(parsed.problems, [], written);
        assert.ok(parsed.value?.kind === 'measure');
        assert.equal(parsed.value.method, method);
        assert.equal(parsed.value.value, direction.sign * toSI(3, quantity.unit));
      }
    }
  });

  it('describes each quantity in one sentence', () => {
    for (const { id, meaning, title, from, to } of quantities) {
      assert.match(meaning, /^[A-Z][^.]*\.$/, id);
      assert.ok(title.length > 0 && from.length > 0 && to.length > 0, id);
    }
  });
});
