// Tests of the check too-deep.
import assert from 'node:assert/strict';
import { analyseFiles, assertNone } from './files.ts';

describe('too-deep', () => {
  it('says where the nesting goes deeper than is read', () => {
    const depth = 60;
    const { findings } = analyseFiles(`swing: 1\nnotes: ${'['.repeat(depth)}${']'.repeat(depth)}`);
    assert.ok(findings.some(({ code, severity }) => code === 'too-deep' && severity === 'error'));
  });

  it('takes a list in a mapping', () => {
    assertNone('too-deep', 'swing: 1\ndelivery: { attack: [3 deg down, 4 deg down] }');
  });
});
