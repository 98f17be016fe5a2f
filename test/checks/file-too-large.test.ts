// Tests of the check file-too-large.
import assert from 'node:assert/strict';
import { analyseFiles, assertNone } from './files.ts';

describe('file-too-large', () => {
  it('says that a text of two million characters is not read', () => {
    const { findings } = analyseFiles(`swing: 1\n${'# filling\n'.repeat(200_000)}`);
    assert.deepEqual(
      findings.map(({ code, severity }) => [code, severity]),
      [['file-too-large', 'error']],
    );
  });

  it('takes a long record', () => {
    assertNone('file-too-large', `swing: 1\n${'# filling\n'.repeat(1000)}`);
  });
});
