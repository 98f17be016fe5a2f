// Tests of the check too-many-aliases.
import assert from 'node:assert/strict';
import { analyseFiles, assertNone } from './files.ts';

describe('too-many-aliases', () => {
  it('says that aliases of aliases would fill the memory', () => {
    const names = 'abcdefgh'.split('');
    const lines = names.map(
      (name, at) =>
        `${name}: &${name} [${
          at === 0
            ? '1, 2, 3'
            : Array(9)
                .fill(`*${names[at - 1]}`)
                .join(', ')
        }]`,
    );
    const { findings } = analyseFiles(['swing: 1', ...lines].join('\n'));
    assert.ok(findings.some(({ code, severity }) => code === 'too-many-aliases' && severity === 'error'));
  });

  it('takes an alias of one value', () => {
    assertNone(
      'too-many-aliases',
      'swing: 1\ndelivery: { attack: &steep 3 deg down, path: 1 deg right }\nnotes: *steep',
    );
  });
});
