// Sections, items of lists and runs of comments fold, and only these.
import assert from 'node:assert/strict';
import { findFoldingRanges } from '../../src/language/index.ts';
import { analysed } from './analysed.ts';

/** `first line…last line`, trimmed. */
function folds(text: string): string[] {
  const lines = text.split('\n');
  return findFoldingRanges(analysed(text)).map(
    ({ startLine, endLine, kind }) =>
      `${lines[startLine]!.trim()} … ${lines[endLine]!.trim()}${kind === undefined ? '' : ` (${kind})`}`,
  );
}

describe('folding', () => {
  it('takes keys with what stands below them, in block and in flow style', () => {
    const text = `swing: 1
checkpoints:
  address:
    stance_width: 41 cm
    head: 4 cm behind

  # the strike
  impact:
    shaft_lean:
      value: 9 deg forward
      by: video
delivery: {
  path: 1 deg right,
  face: 0 deg
}
faults:
  - fault: a
    at: impact
  - fault: b
`;
    assert.deepEqual(folds(text), [
      'checkpoints: … by: video',
      'address: … head: 4 cm behind',
      'impact: … by: video',
      'shaft_lean: … by: video',
      'delivery: { … }',
      'faults: … - fault: b',
      '- fault: a … at: impact',
    ]);
  });

  it('takes two or more lines of comments together', () => {
    assert.deepEqual(
      folds('# one\n# two\nswing: 1\n# three\ndelivery:\n  path: 1 deg right # four\n  # five\n  # six\n'),
      ['# one … # two (comment)', 'delivery: … path: 1 deg right # four', '# five … # six (comment)'],
    );
  });

  it('works on half-typed text', () => {
    assert.deepEqual(
      folds('swing: 1\ndelivery:\n  path: 1 deg right\n  fa\ncheckpoints:\n  top:\n    x: [\n'),
      ['delivery: … fa', 'checkpoints: … x: [', 'top: … x: ['],
    );
    assert.deepEqual(folds(''), []);
  });
});
