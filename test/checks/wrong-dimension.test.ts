// Tests of the check wrong-dimension.
import { assertMarked, assertNone } from './files.ts';

describe('wrong-dimension', () => {
  it('marks a unit of length in an angle', () => {
    assertMarked(
      'wrong-dimension',
      `swing: 1
delivery:
  attack: 3 cm down
#           ^^ error[wrong-dimension]`,
    );
  });

  it('takes a unit of angle', () => {
    assertNone(
      'wrong-dimension',
      `swing: 1
delivery:
  attack: 3 deg down`,
    );
  });
});
