// Tests of the check unreadable-measure.
import { assertMarked, assertNone } from './files.ts';

describe('unreadable-measure', () => {
  it('marks what is no measurement', () => {
    assertMarked(
      'unreadable-measure',
      `swing: 1
delivery:
  attack: steep
#         ^^^^^ error[unreadable-measure]`,
    );
  });

  it('takes a number with unit, direction and method', () => {
    assertNone(
      'unreadable-measure',
      `swing: 1
delivery:
  attack: 6 deg down by eye`,
    );
  });
});
