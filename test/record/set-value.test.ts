// A value written below keys stays before the end of its document and leaves every comment where and what it was.
import assert from 'node:assert/strict';
import { parseDocument } from '../../src/record/parse.ts';
import { withValue } from '../../src/record/set-value.ts';

const path = ['methods', 'radar', 'uncertainty', 'angle'];

/** Reads back as a workspace without a problem that has the value and each comment. */
function written(text: string): string {
  const put = withValue(text, path, '2 deg');
  assert.ok(put !== undefined, text);
  const document = parseDocument('workspace', put);
  assert.deepEqual(document.problems, [], put);
  const angle = document.kind === 'workspace' && document.methods.get('radar')?.uncertainty.angle?.u;
  assert.ok(Math.abs(Number(angle) - (2 * Math.PI) / 180) < 1e-12, put);
  for (const [comment] of text.matchAll(/# .*/g)) assert.ok(put.includes(comment), put);
  return put;
}

describe('a value written below its keys', () => {
  it('stays before the end of the document', () => {
    const block = 'methods: { radar: { uncertainty: { angle: 2 deg } } }\n';
    assert.equal(written('swingwright: 1\n...\n'), `swingwright: 1\n${block}...\n`);
    assert.equal(
      written('swingwright: 1\n# last\n... # done\n# after\n'),
      `swingwright: 1\n${block}# last\n... # done\n# after\n`,
    );
    assert.equal(written('---\nswingwright: 1\n...\n'), `---\nswingwright: 1\n${block}...\n`);
    assert.doesNotMatch(written('swingwright: 1\r\n...\r\n'), /[^\r]\n/);
  });

  it('leaves comments on keys, on values and on keys without a value', () => {
    for (const end of ['', '...\n', '# that was it\n...\n'])
      for (const methods of [
        'methods: # ours\n  radar: # by the tee\n    uncertainty: { angle: 1 deg } # old\n',
        'methods:\n  radar:\n    uncertainty:\n      angle: 1 deg # old\n      # and no more\n',
        'methods: {} # none\n',
        'methods: # to come\n',
        'methods: { radar: { uncertainty: { angle: 1 deg } } } # all in one line\n',
      ])
        written(`swingwright: 1 # version\n${methods}${end}`);
  });

  it('is not written where two documents stand in one file', () => {
    assert.equal(withValue('swingwright: 1\n---\nswingwright: 1\n', path, '2 deg'), undefined);
  });
});
