// Tests of the check duplicate-key.
import { assertMarked, assertNone } from './files.ts';

describe('duplicate-key', () => {
  it('marks the second of two equal keys', () => {
    assertMarked(
      'duplicate-key',
      `swing: 1
delivery:
  attack: 3 deg down
  attack: 4 deg down
# ^^^^^^ error[duplicate-key]`,
    );
  });

  it('takes a list of readings', () => {
    assertNone(
      'duplicate-key',
      `swing: 1
delivery:
  attack: [3 deg down, 4 deg down]`,
    );
  });
});
