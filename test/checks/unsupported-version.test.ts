// Tests of the check unsupported-version.
import { assertMarked, assertNone } from './files.ts';

describe('unsupported-version', () => {
  it('marks a version from the future', () => {
    assertMarked(
      'unsupported-version',
      `swing: 99
       ^^ error[unsupported-version]`,
    );
  });

  it('takes the version that it knows', () => {
    assertNone('unsupported-version', `swing: 1`);
  });
});
