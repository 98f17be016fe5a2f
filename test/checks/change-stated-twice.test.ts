// Tests of the check change-stated-twice.
import { assertMarked, assertNone } from './files.ts';

describe('change-stated-twice', () => {
  it('marks the later change of a quantity, the same way or the other', () => {
    assertMarked(
      'change-stated-twice',
      `swing: 1
plan:
  - { change: delivery.attack, to: 3 deg down, because: heavy }
  - { change: delivery.path, to: 0 deg, because: heavy }
  - { change: delivery.attack, to: 1 deg up, because: heavy }
#             ^^^^^^^^^^^^^^^ warning[change-stated-twice]
  - { change: delivery.attack }
#             ^^^^^^^^^^^^^^^ warning[change-stated-twice]`,
    );
  });

  it('says nothing of one without a quantity that is known', () => {
    assertNone(
      'change-stated-twice',
      'swing: 1\nplan: [{ change: delivery.x }, { change: delivery.x }, {}, {}]',
    );
  });
});
