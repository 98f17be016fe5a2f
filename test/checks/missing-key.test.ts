// Tests of the check missing-key.
import { assertMarked, assertNone } from './files.ts';

describe('missing-key', () => {
  it('says that the format version is missing', () => {
    assertMarked(
      'missing-key',
      `date: 2026-05-14
^^^^ error[missing-key]`,
    );
  });

  it('takes a record with its version', () => {
    assertNone(
      'missing-key',
      `swing: 1
date: 2026-05-14`,
    );
  });
});
