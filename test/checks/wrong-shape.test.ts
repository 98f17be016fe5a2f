// Tests of the check wrong-shape.
import { assertMarked, assertNone } from './files.ts';

describe('wrong-shape', () => {
  it('marks a single value where a mapping belongs', () => {
    assertMarked(
      'wrong-shape',
      `swing: 1
delivery: 41 m/s
#         ^^^^^^ error[wrong-shape]`,
    );
  });

  it('takes a mapping', () => {
    assertNone(
      'wrong-shape',
      `swing: 1
delivery: { club_speed: 41 m/s }`,
    );
  });
});
