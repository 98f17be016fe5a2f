// Tests of the check no-value-yet.
import { assertMarked, assertNone } from './files.ts';

describe('no-value-yet', () => {
  it('marks the empty place after a key', () => {
    assertMarked(
      'no-value-yet',
      `swing: 1
delivery:
  attack: XX`,
    );
  });

  it('takes a key with a value', () => {
    assertNone(
      'no-value-yet',
      `swing: 1
delivery:
  attack: 3 deg down`,
    );
  });
});
