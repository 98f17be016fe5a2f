// Tests of breastbone and lead shoulder on the trunk's axis.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import type { BodyTableName } from '../../src/physics/body-tables.ts';
import { chestFromLeadShoulder, chestFromSternum, leadShoulderFrom } from '../../src/physics/trunk.ts';
import { anyNumber, between, degree, numbersOf } from './scenarios.ts';

const anyTable = fc.constantFrom<BodyTableName>('female', 'male', 'winter');

describe('leadShoulderFrom', () => {
  it('is undone by chestFromLeadShoulder', () => {
    fc.assert(
      fc.property(
        anyTable,
        between(1.3, 2.1),
        between(-0.3, 0.2),
        between(-0.3, 0.3),
        between(-90 * degree, 100 * degree),
        (table, stature, sternum, pelvis, turn) => {
          const leadShoulder = leadShoulderFrom(table, stature, { sternum, pelvis, turn })!;
          const chest = chestFromLeadShoulder(table, stature, { leadShoulder, pelvis, turn });
          assert.ok(Math.abs(chest - chestFromSternum(sternum, turn)) < 1e-12);
        },
      ),
    );
  });

  it('stands further ahead of the chest the squarer the shoulders are', () => {
    const at = (turn: number) =>
      leadShoulderFrom('male', 1.8, { sternum: -0.1, pelvis: -0.1, turn })! - chestFromSternum(-0.1, turn);
    assert.ok(at(0) > at(45 * degree) && at(45 * degree) > at(90 * degree));
  });

  it('gives a finite number or none for any input', () => {
    fc.assert(
      fc.property(
        anyTable,
        anyNumber,
        anyNumber,
        anyNumber,
        anyNumber,
        (table, stature, sternum, pelvis, turn) => {
          const place = leadShoulderFrom(table, stature, { sternum, pelvis, turn });
          assert.ok(numbersOf(place).every(Number.isFinite));
        },
      ),
    );
  });
});
