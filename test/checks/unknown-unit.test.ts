// Tests of the check unknown-unit.
import assert from 'node:assert/strict';
import { assertFixedTo, assertMarked, assertNone, messageOf } from './files.ts';

describe('unknown-unit', () => {
  it('marks the characters of the unit only', () => {
    assertMarked(
      'unknown-unit',
      `swing: 1
delivery:
  low_point:
    ahead: 7 cn ahead
#            ^^ error[unknown-unit]`,
    );
  });

  it('takes a unit of length', () => {
    assertNone(
      'unknown-unit',
      `swing: 1
delivery:
  low_point:
    ahead: 7 cm ahead`,
    );
  });

  it('writes the nearest unit', () => {
    assertFixedTo(
      'unknown-unit',
      `swing: 1
delivery:
  low_point: { ahead: 7 cn ahead } # by tape`,
      `swing: 1
delivery:
  low_point: { ahead: 7 cm ahead } # by tape`,
    );
  });

  it('says which units it expected', () => {
    const analysis = assertMarked(
      'unknown-unit',
      `swing: 1
delivery:
  low_point:
    ahead: 7 cn ahead
#            ^^ error[unknown-unit]`,
    );
    assert.match(
      messageOf(analysis, 'unknown-unit'),
      /^Found `cn`, perhaps meant as `cm`; expected a unit of length \(.*\bcm\b.*\)\.$/,
    );
  });
});
