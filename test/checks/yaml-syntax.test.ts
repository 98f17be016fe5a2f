// Tests of the check yaml-syntax.
import { assertMarked, assertNone } from './files.ts';

describe('yaml-syntax', () => {
  it('marks a bracket that is never closed', () => {
    assertMarked(
      'yaml-syntax',
      `swing: 1
delivery: { attack: 3 deg down
#         ^ error[yaml-syntax]`,
    );
  });

  it('takes a closed one', () => {
    assertNone(
      'yaml-syntax',
      `swing: 1
delivery: { attack: 3 deg down }`,
    );
  });
});
