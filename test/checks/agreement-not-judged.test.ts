// Tests of the check agreement-not-judged.
import assert from 'node:assert/strict';
import { agreementNotJudged } from '../../src/checks/agreement-not-judged.ts';
import type { Subject } from '../../src/checks/subject.ts';
import { analyseFiles, assertNone } from './files.ts';

/** The fit ends with a verdict for every text that was tried, so that the case is made by hand. */
function unjudged(text: string): Subject {
  const { subject } = analyseFiles(text);
  return { ...subject, agreement: { ...subject.agreement!, status: 'unsolved' } };
}

const run = { codes: [], lasting: new Set<string>(), silenced: new Set<never>(), standing: 0 };

describe('agreement-not-judged', () => {
  it('says on the first line that nothing was judged, and which entry is impossible', () => {
    const [found] = agreementNotJudged.find(unjudged('swing: 1\ndelivery: { attack: 89 deg down }'), run);
    assert.deepEqual(found?.span, { start: 0, end: 8 });
    assert.match(found?.message ?? '', /: attack angle is outside what is possible\.$/);
  });

  it('says so without a reason where none is known', () => {
    const [found] = agreementNotJudged.find(unjudged('swing: 1\ndelivery: { attack: 4 deg down }'), run);
    assert.match(found?.message ?? '', /the model gives no number for these entries together\.$/);
  });

  it('says nothing where the entries were judged, and of other files', () => {
    assertNone('agreement-not-judged', 'swing: 1\ndelivery: { attack: 4 deg down }');
    assertNone('agreement-not-judged', { 'mira.student.yaml': 'student: 1' });
  });
});
