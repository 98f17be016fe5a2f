// Tests of the check change-without-reason.
import { assertMarked, assertNone } from './files.ts';

describe('change-without-reason', () => {
  it('marks a change that says not what it is for', () => {
    assertMarked(
      'change-without-reason',
      `swing: 1
plan:
  - change: delivery.attack
#           ^^^^^^^^^^^^^^^ information[change-without-reason]
    to: 3 deg down`,
    );
  });

  it('leaves one with a reason alone, whatever it is', () => {
    assertNone('change-without-reason', 'swing: 1\nplan: [{ change: delivery.attack, because: anything }]');
  });
});
