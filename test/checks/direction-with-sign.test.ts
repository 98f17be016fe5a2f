// Tests of the check direction-with-sign.
import { assertFixedTo, assertMarked, assertNone } from './files.ts';

describe('direction-with-sign', () => {
  it('marks the number that has a sign and a direction', () => {
    assertMarked(
      'direction-with-sign',
      `swing: 1
delivery:
  path: -3 deg left
#       ^^ error[direction-with-sign]`,
    );
  });

  it('takes a sign or a direction alone', () => {
    assertNone(
      'direction-with-sign',
      `swing: 1
delivery: { path: -3 deg, face: 3 deg left }`,
    );
  });

  it('drops the sign', () => {
    assertFixedTo(
      'direction-with-sign',
      `swing: 1
delivery:
  path: −3 deg left by radar`,
      `swing: 1
delivery:
  path: 3 deg left by radar`,
    );
  });
});
