// Holds the verdict on a whole record to its promises: planted errors are named, rivals are named together, nothing ever breaks.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { agree, settleAgreement } from '../../src/model/agreement.ts';
import type { Agreement } from '../../src/model/agreement-result.ts';
import { findRule } from '../../src/model/rules.ts';
import { forwardRules } from '../../src/model/forward-rules.ts';
import type { WeighedReading } from '../../src/model/combine.ts';
import type { Situation } from '../../src/model/value.ts';
import { quantities } from '../../src/registry/generated.ts';
import { anyPlausible, degree, everything, situationOf } from './situations.ts';

const all: Situation = {
  hand: 'right',
  clubKind: 'hybrid',
  windBearing: Math.PI / 2,
  observations: everything,
};

function shifted(situation: Situation, id: string, byUncertainties: number): Situation {
  const before = situation.observations.get(id)!;
  const after = { ...before, value: before.value + byUncertainties * before.u };
  return { ...situation, observations: new Map(situation.observations).set(id, after) };
}

function withReadings(situation: Situation, id: string, readings: readonly WeighedReading[]): Situation {
  return { ...situation, readings: new Map(situation.readings).set(id, readings) };
}

function assertSound(agreement: Agreement): void {
  const numbers = [
    agreement.chi2,
    agreement.dof,
    agreement.p,
    agreement.threshold,
    ...agreement.entries.flatMap(({ implied, uImplied, w, redundancy }) => [
      implied ?? 0,
      uImplied ?? 0,
      w ?? 0,
      redundancy,
    ]),
    ...[...agreement.posterior.values()].flatMap(({ value, u }) => [value, u]),
    ...agreement.conflicts.flatMap(({ implied, uImplied, w }) => [implied, uImplied, w]),
  ];
  assert.ok(numbers.every(Number.isFinite), `${numbers.join(' ')}`);
  for (const { redundancy, verdict } of agreement.entries) {
    assert.ok(redundancy >= 0 && redundancy <= 1);
    if (verdict === 'conflict') assert.ok(redundancy >= 0.005);
  }
}

describe('the agreement of a record', () => {
  it('finds nothing in one that was computed to fit', () => {
    const agreement = agree(all);
    assert.equal(agreement.status, 'solved');
    assert.deepEqual(agreement.conflicts, []);
    assert.ok(agreement.p > 0.05);
  });

  for (const id of [
    'delivery.face',
    'delivery.face_to_path',
    'delivery.arc.direction',
    'flight.start',
    'flight.ball_speed',
  ]) {
    it(`names ${id} when it alone is ten standard uncertainties off`, () => {
      const agreement = agree(shifted(all, id, 10));
      assert.deepEqual(
        agreement.conflicts.map((conflict) => conflict.id),
        [id],
      );
      const [conflict] = agreement.conflicts;
      const truth = agree(all).entries.find((entry) => entry.id === id)!;
      assert.ok(Math.abs(conflict!.implied - truth.implied!) < 0.3 * truth.uImplied!);
      assert.ok(conflict!.outvotedBy.length > 1 && !conflict!.outvotedBy.includes(id));
    });
  }

  it('names two independent errors, and only those', () => {
    const agreement = agree(shifted(shifted(all, 'delivery.face', 10), 'delivery.low_point.ahead', -12));
    assert.deepEqual(agreement.conflicts.map(({ id }) => id).sort(), [
      'delivery.face',
      'delivery.low_point.ahead',
    ]);
  });

  it('judges each of several readings by itself', () => {
    const readings = [0, 0.001, 0.12].map((more) => ({ value: 0.0175 + more, u: 0.021, doubtful: false }));
    const agreement = agree(withReadings(all, 'delivery.face', readings));
    assert.deepEqual(
      agreement.conflicts.map(({ id, reading }) => [id, reading]),
      [['delivery.face', 2]],
    );
  });

  it('weighs a doubtful reading less', () => {
    const doubtful = (is: boolean) =>
      agree(withReadings(all, 'delivery.face', [{ value: 0.13, u: 0.021, doubtful: is }])).conflicts.length;
    assert.deepEqual([doubtful(false), doubtful(true)], [1, 0]);
  });

  it('names both of two readings that only contradict each other', () => {
    const id = 'checkpoints.top.shoulder_turn';
    const readings = [70, 105].map((turn) => ({ value: turn * degree, u: 4 * degree, doubtful: false }));
    const agreement = agree(withReadings({ ...all, observations: new Map() }, id, readings));
    assert.deepEqual(
      agreement.conflicts.map(({ reading, rivals }) => [reading, rivals.map((rival) => rival.reading)]),
      [
        [0, [1]],
        [1, [0]],
      ],
    );
    assert.ok(Math.abs(agreement.conflicts[0]!.implied - 105 * degree) < 4 * degree);
  });

  it('calls an entry that nothing else speaks of unchecked, not right', () => {
    const agreement = agree(situationOf(['delivery.attack']));
    assert.deepEqual(
      agreement.entries.map(({ verdict, w }) => [verdict, w]),
      [['unchecked', null]],
    );
  });

  it('does not let windows of practice blame an unusual entry', () => {
    const agreement = agree(
      situationOf([], { 'delivery.attack': -30 * degree, 'delivery.arc.inclination': 85 * degree }),
    );
    assert.deepEqual(agreement.conflicts, []);
  });

  it('shows no value that only windows speak of', () => {
    const { posterior } = agree(situationOf(['delivery.attack', 'delivery.face']));
    assert.ok(!posterior.has('delivery.path') && !posterior.has('flight.carry'));
  });

  it('leaves no entry out of the fit without saying so', () => {
    let left = 0;
    for (const id of everything.keys())
      for (const shift of [-6, -5, -4, -3.5, 3.5, 4, 5, 6]) {
        const { outcome } = settleAgreement(shifted(all, id, shift));
        const out = outcome!.last.problem.measurements.flatMap(({ u }, i) => (u === Infinity ? [i] : []));
        const said = outcome!.groups.flatMap(({ members }) => members).toSorted((a, b) => a - b);
        assert.deepEqual(said, out, `${id}, ${shift} standard uncertainties off`);
        left += out.length;
      }
    assert.ok(left > 30, String(left));
  });

  it('is the same for a left-hander with everything mirrored', () => {
    const lateral = new Set(quantities.filter((quantity) => quantity.lateral).map((quantity) => quantity.id));
    const situation = shifted(all, 'delivery.face', 10);
    const mirrored: Situation = {
      ...situation,
      hand: 'left',
      windBearing: -Math.PI / 2,
      observations: new Map(
        [...situation.observations].map(([id, o]) => [id, lateral.has(id) ? { ...o, value: -o.value } : o]),
      ),
    };
    const [right, left] = [agree(situation), agree(mirrored)];
    assert.deepEqual(
      left.conflicts.map(({ id }) => id),
      right.conflicts.map(({ id }) => id),
    );
    for (const [i, entry] of right.entries.entries()) {
      const sign = lateral.has(entry.id) ? -1 : 1;
      assert.ok(Math.abs((left.entries[i]!.w ?? 0) - sign * (entry.w ?? 0)) < 1e-9, entry.id);
    }
  });

  it('gives a verdict or none, but never breaks, whatever is entered', () => {
    fc.assert(
      fc.property(
        anyPlausible,
        fc.constantFrom(...everything.keys()),
        fc.constantFrom(-50, 0, 50, 1e4, Infinity, NaN),
        (situation, id, by) => {
          const agreement = agree(situation.observations.has(id) ? shifted(situation, id, by) : situation);
          assertSound(agreement);
          assert.equal(agreement.entries.length, situation.observations.size);
        },
      ),
      { numRuns: 60 },
    );
  });

  for (const [words, values] of [
    ['no club speed', { 'delivery.club_speed': 0, 'delivery.attack': -0.05 }],
    [
      'a vertical plane',
      { 'delivery.arc.inclination': Math.PI / 2, 'delivery.attack': -0.05, 'delivery.path': 0.1 },
    ],
    ['a ball that does not leave', { 'flight.ball_speed': 0, 'flight.carry': 171 }],
    [
      'an attack steeper than its plane',
      { 'delivery.attack': -0.5, 'delivery.arc.inclination': 0.2, 'delivery.low_point.ahead': 0.1 },
    ],
  ] as const) {
    it(`stays sound with ${words}`, () => {
      assertSound(agree(situationOf([], values)));
      assertSound(
        agree({ ...all, observations: new Map([...everything, ...situationOf([], values).observations]) }),
      );
    });
  }

  it('is empty for an empty record, and sound without a club', () => {
    assert.deepEqual(agree({ ...all, observations: new Map() }).entries, []);
    assertSound(agree({ ...all, clubKind: undefined }));
  });
});

describe('the steps from cause to effect', () => {
  const rules = forwardRules({ clubKind: 'iron', windBearing: undefined }, () => true);

  it('give each quantity once', () => {
    const outputs = rules.flatMap((rule) => rule.outputs);
    assert.deepEqual(outputs.length, new Set(outputs).size);
  });

  it('run in no circle', () => {
    const given = new Set<string>(rules.flatMap((rule) => rule.inputs));
    for (const rule of rules) for (const id of rule.outputs) given.delete(id);
    let open = [...rules];
    while (open.length > 0) {
      const [ready, waiting] = [true, false].map((is) =>
        open.filter((rule) => rule.inputs.every((id) => given.has(id)) === is),
      );
      assert.ok(ready!.length > 0, waiting!.map((rule) => rule.name).join(' '));
      for (const rule of ready!) for (const id of rule.outputs) given.add(id);
      open = waiting!;
    }
  });

  it('can all be looked up by name, under names of their own', () => {
    assert.equal(new Set(rules.map((rule) => rule.name)).size, rules.length);
    for (const rule of rules) assert.equal(findRule(rule.name)?.formula, rule.formula);
  });
});
