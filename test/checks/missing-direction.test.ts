// Tests of the check missing-direction.
import { assertMarked, assertNone } from './files.ts';

describe('missing-direction', () => {
  it('marks a wind that comes from nowhere', () => {
    assertMarked(
      'missing-direction',
      `swing: 1
conditions:
  wind: 3 m/s
#       ^^^^^ error[missing-direction]`,
    );
  });

  it('takes a wind with its direction', () => {
    assertNone(
      'missing-direction',
      `swing: 1
conditions:
  wind: 3 m/s from left`,
    );
  });
});
