// Tests of the check change-in-two-ways.
import { assertMarked, assertNone } from './files.ts';

describe('change-in-two-ways', () => {
  it('marks a change with a step and a value', () => {
    assertMarked('change-in-two-ways', {
      'house.faults.yaml': `faults: 1
book:
  trail-side:
    changes:
      - { change: checkpoints.address.stance_width, by: 5 cm narrower, to: 40 cm }
#                 ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ warning[change-in-two-ways]
      - { change: checkpoints.address.ball_position, to: 6 cm behind }`,
    });
  });

  it('takes one where the other has no value yet', () => {
    assertNone('change-in-two-ways', {
      'house.faults.yaml':
        'faults: 1\nbook: { a: { changes: [{ change: delivery.path, by: 2 deg left, to: }] } }',
    });
  });
});
