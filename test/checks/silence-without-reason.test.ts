// Tests of the check silence-without-reason.
import { assertMarked, assertNone } from './files.ts';

describe('silence-without-reason', () => {
  it('marks the comment', () => {
    assertMarked(
      'silence-without-reason',
      `swing: 1
delivery:
  attack: 20 deg down # accept[outside-practice]
#                     ^^^^^^^^^^^^^^^^^^^^^^^^^^ warning[silence-without-reason]`,
    );
  });

  it('takes a comment with a reason', () => {
    assertNone(
      'silence-without-reason',
      `swing: 1
delivery:
  attack: 20 deg down # accept[outside-practice]: deep grass`,
    );
  });
});
