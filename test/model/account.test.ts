// Tests of which of two numbers stands for a quantity, and where it says it came from.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { accountOf } from '../../src/model/account.ts';
import { derive } from '../../src/model/derive.ts';
import type { Situation } from '../../src/model/value.ts';
import { degree, everything, situationOf } from './situations.ts';

const arc = ['delivery.attack', 'delivery.arc.radius', 'delivery.arc.inclination'];

/** All that leads from the body to the club, without one entry of the arc. */
const lever: Situation = {
  hand: 'right',
  clubKind: 'iron',
  windBearing: undefined,
  observations: new Map(
    (
      [
        ['student.stature', 1.75, 0.01],
        ['club.length', 0.94, 0.005],
        ['club.lie', 62 * degree, degree],
        ['checkpoints.impact.lead_shoulder', 0.08, 0.02],
        ['checkpoints.impact.shaft_lean', 8 * degree, 2 * degree],
        ['delivery.club_speed', 36, 0.5],
        ['delivery.release_ratio', 2.3, 0.2],
        ['delivery.arc.inclination', 60 * degree, 2 * degree],
      ] as const
    ).map(([id, value, u]) => [id, { id, value, u }]),
  ),
};

describe('accountOf', () => {
  it('keeps what was entered, and plain arithmetic where nothing more speaks of it', () => {
    const situation = situationOf(arc);
    const { values } = accountOf(situation).derivation;
    const plain = derive(situation).values;
    for (const id of [...arc, 'delivery.low_point.ahead']) assert.deepEqual(values.get(id), plain.get(id));
  });

  it('takes the number of the fit where further entries speak of it, and names them', () => {
    const situation = situationOf([...arc, 'ground.divot.starts'].slice(0, 3), {}, {});
    const divot = new Map([
      ...situation.observations,
      ['ground.divot.starts', { id: 'ground.divot.starts', value: 0.02, u: 0.01 }],
      ['ground.divot.length', { id: 'ground.divot.length', value: 0.13, u: 0.01 }],
    ]);
    const alone = accountOf(situation).derivation.values.get('delivery.low_point.ahead')!;
    const both = accountOf({ ...situation, observations: divot }).derivation.values.get(
      'delivery.low_point.ahead',
    )!;
    assert.equal(both.kind, 'derived');
    assert.ok(both.u! < alone.u!);
    assert.ok(both.from.includes('ground.divot.starts') && both.from.includes('delivery.attack'));
  });

  it('expects low point and attack from shoulder, lean, stature and club, and says from which entries', () => {
    const { values, expected } = accountOf(lever).derivation;
    for (const id of ['delivery.attack', 'delivery.low_point.ahead']) {
      const value = values.get(id)!;
      assert.equal(value.kind, 'expected');
      assert.equal(expected.get(id), value);
      assert.ok(value.from.includes('checkpoints.impact.lead_shoulder'), value.from.join());
      assert.ok(value.from.includes('checkpoints.impact.shaft_lean'), value.from.join());
    }
    assert.ok(values.get('delivery.attack')!.value < 0);
    assert.ok(values.get('delivery.low_point.ahead')!.value > 0);
  });

  it('gives no quantity that is only assumed', () => {
    const { values } = accountOf(lever).derivation;
    for (const id of ['conditions.temperature', 'strike.across', 'conditions.wind'])
      assert.ok(!values.has(id));
  });

  it('leaves an entry that contradicts the others out of what follows', () => {
    const situation = situationOf(['delivery.attack', ...arc, 'delivery.low_point.ahead'], {
      'delivery.attack': -20 * degree,
    });
    const more = new Map([
      ...situation.observations,
      ['ground.divot.starts', { id: 'ground.divot.starts', value: 0.04, u: 0.01 }],
      ['ground.divot.length', { id: 'ground.divot.length', value: 0.13, u: 0.01 }],
    ]);
    const { derivation, agreement } = accountOf({ ...situation, observations: more });
    assert.deepEqual(
      agreement.conflicts.map(({ id }) => id),
      ['delivery.attack'],
    );
    assert.equal(derivation.values.get('delivery.attack')?.value, -20 * degree);
    assert.ok(derivation.expected.get('delivery.attack')!.value > -6 * degree);
    assert.ok(!derivation.values.get('delivery.low_point.depth')?.from.includes('delivery.attack'));
  });

  it('rests nothing on a hand that nobody named', () => {
    const ids = [...arc, 'delivery.path', 'delivery.face', 'club.loft', 'checkpoints.impact.shaft_lean'];
    const unknown = situationOf([...ids, 'strike.across'], {}, { hand: undefined });
    const { values, missing } = accountOf(unknown).derivation;
    assert.ok(!values.has('delivery.arc.direction'));
    assert.equal(values.get('strike.across')?.kind, 'entered');
    for (const value of values.values())
      if (value.kind !== 'entered') assert.ok(!value.from.includes('strike.across'), value.id);
    const waiting = situationOf([...arc, 'delivery.arc.direction'], {}, { hand: undefined });
    assert.deepEqual(accountOf(waiting).derivation.missing.get('delivery.path')?.needs, ['student.hand']);
    assert.ok(!missing.has('delivery.path'));
  });

  it('gives the same numbers for an unknown hand whichever side things lie on', () => {
    const sides = fc.record({
      face: fc.double({ min: -0.1, max: 0.1, noNaN: true }),
      path: fc.double({ min: -0.1, max: 0.1, noNaN: true }),
    });
    const ids = [
      'club.loft',
      'club.lie',
      'checkpoints.impact.shaft_lean',
      'delivery.club_speed',
      'delivery.attack',
    ];
    fc.assert(
      fc.property(sides, ({ face, path }) => {
        const loftAt = (side: number) =>
          accountOf(
            situationOf(
              ids.filter((id) => everything.has(id)),
              { 'delivery.face': side * face, 'delivery.path': side * path },
              { hand: undefined, clubKind: 'iron' },
            ),
          ).derivation.values.get('delivery.delivered_loft')!.value;
        assert.ok(Math.abs(loftAt(1) - loftAt(-1)) < 1e-4);
      }),
      { numRuns: 10 },
    );
  });

  it('never gives a number that is not finite', () => {
    const ids = fc.subarray([...everything.keys()], { minLength: 1, maxLength: 12 });
    const factor = fc.constantFrom(0, 1, -1, 50);
    fc.assert(
      fc.property(ids, factor, fc.constantFrom('left', 'right', undefined), (chosen, by, hand) => {
        const first = chosen[0]!;
        const situation = situationOf(
          chosen,
          { [first]: by * everything.get(first)!.value },
          { hand, clubKind: 'iron' },
        );
        const { derivation, agreement } = accountOf(situation);
        for (const { value, u } of [...derivation.values.values(), ...derivation.expected.values()]) {
          assert.ok(Number.isFinite(value));
          assert.ok(u === null || (Number.isFinite(u) && u >= 0));
        }
        for (const { implied, uImplied, w } of agreement.entries)
          for (const number of [implied, uImplied, w]) assert.ok(number === null || Number.isFinite(number));
      }),
      { numRuns: 40 },
    );
  });
});
