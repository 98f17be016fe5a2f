// Tests of the check number-out-of-range.
import { assertMarked, assertNone } from './files.ts';

describe('number-out-of-range', () => {
  it('marks a number beyond a double', () => {
    assertMarked(
      'number-out-of-range',
      `swing: 1
delivery:
  attack: 3e400 deg down
#         ^^^^^ error[number-out-of-range]`,
    );
  });

  it('takes a small number', () => {
    assertNone(
      'number-out-of-range',
      `swing: 1
delivery:
  attack: 3 deg down`,
    );
  });
});
