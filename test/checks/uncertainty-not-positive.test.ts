// Tests of the check uncertainty-not-positive.
import { assertMarked, assertNone } from './files.ts';

describe('uncertainty-not-positive', () => {
  it('marks an uncertainty of zero', () => {
    assertMarked(
      'uncertainty-not-positive',
      `swing: 1
delivery:
  attack: 3 deg down ± 0 deg
#                      ^^^^^ error[uncertainty-not-positive]`,
    );
  });

  it('takes one above zero', () => {
    assertNone(
      'uncertainty-not-positive',
      `swing: 1
delivery:
  attack: 3 deg down ± 0.1 deg`,
    );
  });
});
