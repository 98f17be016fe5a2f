// Tests of the check unsupported-version.
import assert from 'node:assert/strict';
import { analyseFiles, assertMarked, assertNone, messageOf } from './files.ts';

describe('unsupported-version', () => {
  it('marks a version from the future', () => {
    assertMarked(
      'unsupported-version',
      `swing: 99
       ^^ error[unsupported-version]`,
    );
  });

  it('says of a number in quotes that the quotes are too many', () => {
    const analysis = analyseFiles({ 'a.swing.yaml': 'swing: "1"\n' });
    assert.equal(
      messageOf(analysis, 'unsupported-version'),
      'Found the version of the format in quotes, `"1"`; expected the number `1` without quotes.',
    );
  });

  it('takes the version that it knows', () => {
    assertNone('unsupported-version', `swing: 1`);
  });
});
