// Tests of the check stated-twice.
import { assertMarked, assertNone } from './files.ts';

describe('stated-twice', () => {
  it('marks the same fault at the same checkpoint, the same miss and the same reason', () => {
    assertMarked(
      'stated-twice',
      `swing: 1
faults:
  - { fault: low-hands, at: impact }
  - { fault: low-hands, at: impact, note: again }
#            ^^^^^^^^^ warning[stated-twice]
misses: [heavy, { miss: heavy, note: when tired }]
#                       ^^^^^ warning[stated-twice]
plan:
  - { change: delivery.attack, because: [heavy, low-hands, heavy] }
#                                                          ^^^^^ warning[stated-twice]`,
    );
  });

  it('takes a fault at two checkpoints, and a reason of two changes', () => {
    assertNone(
      'stated-twice',
      `swing: 1
faults: [{ fault: low-hands, at: impact }, { fault: low-hands, at: address }, { fault: low-hands }]
plan: [{ change: delivery.attack, because: low-hands }, { change: delivery.path, because: low-hands }]`,
    );
  });
});
