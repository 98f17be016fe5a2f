// Tests of the check window-reversed.
import { assertFixedTo, assertMarked, assertNone } from './files.ts';

describe('window-reversed', () => {
  it('marks a window that ends below its beginning', () => {
    assertMarked(
      'window-reversed',
      `swing: 1
goals:
  - finish: 5..0 yd left
#           ^^^^ error[window-reversed]`,
    );
  });

  it('takes one that rises, read with its direction', () => {
    assertNone(
      'window-reversed',
      `swing: 1
goals:
  - finish: 0..5 yd left`,
    );
  });

  it('swaps the ends', () => {
    assertFixedTo(
      'window-reversed',
      `swing: 1
goals:
  - { finish: 5..0 yd left } # short side`,
      `swing: 1
goals:
  - { finish: 0..5 yd left } # short side`,
    );
  });
});
