// Tests of the check outside-practice.
import { assertMarked, assertNone } from './files.ts';

describe('outside-practice', () => {
  it('marks what is possible but not seen', () => {
    assertMarked(
      'outside-practice',
      `swing: 1
delivery:
  attack: 20 deg down
#         ^^^^^^^^^^^ information[outside-practice]`,
    );
  });

  it('leaves what is impossible to the other check', () => {
    assertNone(
      'outside-practice',
      `swing: 1
delivery:
  attack: 75 deg down
  path: 3 deg right`,
    );
  });
});
