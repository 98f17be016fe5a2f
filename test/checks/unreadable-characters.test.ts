// Tests of the check unreadable-characters.
import assert from 'node:assert/strict';
import { analyseFiles, assertMarked, assertNone, codesOf } from './files.ts';

describe('unreadable-characters', () => {
  it('marks the first character that was lost, and reads the rest', () => {
    const analysis = assertMarked(
      'unreadable-characters',
      `swing: 1
notes: a Caf\ufffd at the tenth, Caf\ufffd and all
#           ^ error[unreadable-characters]
delivery: { attack: 3 cm down }`,
    );
    assert.ok(codesOf(analysis).includes('wrong-dimension'));
  });

  it('says nothing else of a text of which half are zeros', () => {
    const wide = [...'swing: 1\ndelivery: { attack: 3 cm down }\n'].map((sign) => `${sign}\0`).join('');
    const analysis = analyseFiles(`\ufffd\ufffd${wide}`);
    assert.deepEqual(codesOf(analysis), ['unreadable-characters']);
    assert.deepEqual(analysis.findings[0]?.range.start, { line: 0, character: 0 });
  });

  it('takes letters of every script', () => {
    assertNone('unreadable-characters', 'swing: 1\nnotes: "Åsa, 田中, 🏌"');
  });
});
