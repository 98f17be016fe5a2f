// Tests of the derivation: what wins, what is left out, what is told of causes, and that nothing breaks it.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { derive } from '../../src/model/derive.ts';
import { rules } from '../../src/model/rules.ts';
import type { Derivation, Situation, Value } from '../../src/model/value.ts';
import { anyPlausible, degree, deliveryIds, everything, situationOf } from './situations.ts';

const plain = (derivation: Derivation): unknown => ({
  values: [...derivation.values].map(([id, v]) => [id, { ...v, shares: [...v.shares] }]),
  expected: [...derivation.expected].map(([id, v]) => [id, { ...v, shares: [...v.shares] }]),
  missing: [...derivation.missing],
});

const allValues = (derivation: Derivation): Value[] => [
  ...derivation.values.values(),
  ...derivation.expected.values(),
];

describe('derive', () => {
  it('gives nothing, and says what is missing, where nothing is entered', () => {
    const derivation = derive(situationOf([]));
    assert.equal(derivation.values.size, 0);
    assert.equal(derivation.expected.size, 0);
    assert.deepEqual(derivation.missing.get('delivery.face_to_path')?.needs, [
      'delivery.face',
      'delivery.path',
    ]);
    assert.deepEqual(derivation.missing.get('delivery.delivered_loft')?.needs, [
      'checkpoints.impact.shaft_lean',
      'club.loft',
    ]);
  });

  it('keeps an entered value as it is, also where a step could give it', () => {
    const derivation = derive(situationOf([...everything.keys()]));
    for (const [id, observation] of everything) {
      const value = derivation.values.get(id)!;
      assert.equal(value.kind, 'entered');
      assert.equal(value.value, observation.value);
      assert.equal(value.u, observation.u);
      assert.deepEqual(value.from, [id]);
    }
  });

  it('carries entered values, not derived ones, into later steps', () => {
    const loft = 27 * degree;
    const derivation = derive(
      situationOf([...deliveryIds, 'delivery.face_to_path'], { 'delivery.delivered_loft': loft }),
    );
    const obliquity = derivation.values.get('delivery.obliquity')!;
    assert.deepEqual(obliquity.from, ['delivery.attack', 'delivery.delivered_loft', 'delivery.face_to_path']);
  });

  it('follows the chain from loft and lean to the carry, with every cause and assumption named', () => {
    const carry = derive(situationOf(deliveryIds)).values.get('flight.carry')!;
    assert.deepEqual(carry.from, [...deliveryIds].sort());
    assert.deepEqual(carry.assumed.map((a) => a.id).sort(), [
      'club.head_mass',
      'club.shaft_kick',
      'conditions.altitude',
      'conditions.ground_give',
      'conditions.humidity',
      'conditions.temperature',
      'conditions.wind',
      'strike.across',
      'strike.height',
    ]);
    assert.equal(carry.rule, 'flight');
    assert.ok(carry.shares.has('model:flight') && carry.shares.has('assumed:club.shaft_kick'));
  });

  it('gives no launch without a known club', () => {
    const derivation = derive(situationOf(deliveryIds, {}, { clubKind: undefined }));
    assert.ok(!derivation.values.has('flight.launch_angle'));
    assert.ok(derivation.values.has('delivery.delivered_loft'));
    assert.ok(!derivation.missing.has('flight.launch_angle'));
    assert.ok(
      !derive(situationOf(deliveryIds, {}, { clubKind: 'toString' })).values.has('flight.launch_angle'),
    );
  });

  it('expects of an entry what the others say: the path from face and face-to-path', () => {
    const derivation = derive(
      situationOf([], { 'delivery.face': 2, 'delivery.face_to_path': -3, 'delivery.path': 1 }),
    );
    assert.equal(derivation.values.get('delivery.path')?.value, 1);
    assert.equal(derivation.expected.get('delivery.path')?.value, 5);
  });

  it('does not take the pressure that follows from an assumed altitude for a finding', () => {
    assert.ok(!derive(situationOf(['delivery.attack'])).values.has('conditions.pressure'));
    const pressure = derive(situationOf([], { 'conditions.altitude': 1000 })).values.get(
      'conditions.pressure',
    )!;
    // ISO 2533: 89874.6 Pa at 1000 m.
    assert.ok(Math.abs(pressure.value - 89874.6) < 1);
  });

  it('assumes still air where the direction of the wind is not known, and keeps the entry', () => {
    const derivation = derive(situationOf([...deliveryIds, 'conditions.wind']));
    assert.equal(derivation.values.get('conditions.wind')?.value, 3);
    assert.ok(derivation.values.get('flight.carry')?.assumed.some((a) => a.id === 'conditions.wind'));
  });

  it('adds the run of the model to an entered carry', () => {
    const launch = [
      'flight.ball_speed',
      'flight.launch_angle',
      'flight.start',
      'flight.spin',
      'flight.spin_tilt',
    ];
    const free = derive(situationOf(launch)).values;
    const held = derive(situationOf([], { 'flight.carry': 150 }, {}));
    assert.ok(!held.values.has('flight.total'));
    const total = derive(situationOf(launch, { 'flight.carry': 150 })).values.get('flight.total')!;
    const further = free.get('flight.total')!.value - free.get('flight.carry')!.value;
    assert.ok(Math.abs(total.value - 150 - further) < 1e-9);
  });

  it('gives the same for the same', () => {
    fc.assert(
      fc.property(anyPlausible, (situation) => {
        assert.deepEqual(plain(derive(situation)), plain(derive(situation)));
      }),
      { numRuns: 20 },
    );
  });

  it('never lets an entry speak of itself: another value of it changes nothing that is expected of it', () => {
    fc.assert(
      fc.property(
        anyPlausible,
        fc.nat(),
        fc.double({ min: -3, max: 3, noNaN: true }),
        (situation, which, shift) => {
          const observations = [...situation.observations.values()];
          const chosen = observations[which % Math.max(1, observations.length)];
          if (!chosen) return;
          const other: Situation = {
            ...situation,
            observations: new Map(situation.observations).set(chosen.id, {
              ...chosen,
              value: chosen.value + shift * chosen.u,
              u: chosen.u * 1.7,
            }),
          };
          const before = derive(situation).expected.get(chosen.id);
          assert.deepEqual(derive(other).expected.get(chosen.id), before);
          assert.ok(!before?.from.includes(chosen.id));
        },
      ),
      { numRuns: 100 },
    );
  });

  it('expects of an entry exactly what it would derive without it', () => {
    fc.assert(
      fc.property(anyPlausible, fc.nat(), (situation, which) => {
        const ids = [...situation.observations.keys()];
        const id = ids[which % Math.max(1, ids.length)];
        if (id === undefined) return;
        const observations = new Map(situation.observations);
        observations.delete(id);
        assert.deepEqual(
          derive(situation).expected.get(id),
          derive({ ...situation, observations }).values.get(id),
        );
      }),
      { numRuns: 60 },
    );
  });

  it('gives every derivable quantity either a value or what is missing, unless its step failed', () => {
    const outputs = new Set<string>(rules.flatMap((rule) => rule.outputs));
    fc.assert(
      fc.property(anyPlausible, (situation) => {
        const { values, missing } = derive(situation);
        for (const id of missing.keys()) assert.ok(outputs.has(id) && !values.has(id));
      }),
      { numRuns: 40 },
    );
  });

  it('splits the variance of each value into shares that sum to one', () => {
    fc.assert(
      fc.property(anyPlausible, (situation) => {
        for (const value of allValues(derive(situation))) {
          if (value.u === null) continue;
          const sum = [...value.shares.values()].reduce((a, b) => a + b, 0);
          assert.ok(Math.abs(sum - 1) < 1e-9, `${value.id}: ${sum}`);
          for (const key of value.shares.keys()) {
            const isKnown =
              value.from.includes(key) ||
              value.assumed.some((a) => key === `assumed:${a.id}`) ||
              key.startsWith('model:');
            assert.ok(isKnown, key);
          }
        }
      }),
      { numRuns: 40 },
    );
  });

  it('never throws and never gives a number that is not finite, whatever is entered', () => {
    const absurd = fc.record({
      value: fc.oneof(fc.double(), fc.constantFrom(0, -0, 1e-300, 1e300, -1e9, Number.NaN, Infinity)),
      u: fc.oneof(fc.double(), fc.constantFrom(0, 1e-300, 1e-9, 1e9, Infinity)),
    });
    const anyAbsurd = fc.dictionary(fc.constantFrom(...everything.keys(), '__proto__', 'nonsense'), absurd);
    fc.assert(
      fc.property(anyAbsurd, anyPlausible, fc.double(), (odd, base, windBearing) => {
        const observations = new Map(base.observations);
        for (const [id, { value, u }] of Object.entries(odd)) observations.set(id, { id, value, u });
        const derivation = derive({ ...base, windBearing, observations });
        for (const value of allValues(derivation)) {
          assert.ok(Number.isFinite(value.value), value.id);
          assert.ok(value.u === null || (Number.isFinite(value.u) && value.u > 0), value.id);
          for (const share of value.shares.values()) assert.ok(Number.isFinite(share), value.id);
        }
      }),
      { numRuns: 300 },
    );
  });

  it('gives no ratio and no ball from a club at rest', () => {
    const derivation = derive(situationOf(deliveryIds, { 'delivery.club_speed': 0 }));
    assert.ok(!derivation.values.has('flight.speed_ratio'));
    assert.ok(!derivation.values.has('flight.carry'));
  });
});
