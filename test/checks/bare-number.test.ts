// Tests of the check bare-number.
import assert from 'node:assert/strict';
import { assertFixedTo, assertMarked, assertNone, messageOf } from './files.ts';

describe('bare-number', () => {
  it('marks a number without a unit', () => {
    const analysis = assertMarked(
      'bare-number',
      `swing: 1
delivery:
  attack: 3 down
#         ^ hint[bare-number]`,
    );
    assert.equal(messageOf(analysis, 'bare-number'), 'Found no unit; read as `deg`.');
  });

  it('takes a number with one', () => {
    assertNone(
      'bare-number',
      `swing: 1
delivery:
  attack: 3 deg down`,
    );
  });

  it('writes the unit out behind the number', () => {
    assertFixedTo(
      'bare-number',
      `swing: 1
delivery:
  attack: ~3 down by eye # from memory`,
      `swing: 1
delivery:
  attack: ~3 deg down by eye # from memory`,
    );
  });

  it('writes the unit of a goal behind the last number of its window', () => {
    assertFixedTo(
      'bare-number',
      'swing: 1\ngoals:\n  - { finish: 0..5 left }',
      'swing: 1\ngoals:\n  - { finish: 0..5 m left }',
    );
  });
});
