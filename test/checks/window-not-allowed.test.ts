// Tests of the check window-not-allowed.
import { assertMarked, assertNone } from './files.ts';

describe('window-not-allowed', () => {
  it('marks a window in the place of a measurement', () => {
    assertMarked(
      'window-not-allowed',
      `swing: 1
delivery:
  attack: 2..4 deg down
#         ^^^^^^^^^^^^^ error[window-not-allowed]`,
    );
  });

  it('takes a window in a goal', () => {
    assertNone(
      'window-not-allowed',
      `swing: 1
goals:
  - { carry: 170..180 m }`,
    );
  });
});
