// Tests of the check unknown-column.
import assert from 'node:assert/strict';
import { assertMarked, assertNone, messageOf } from './files.ts';

describe('unknown-column', () => {
  it('marks the reference and points at each column in the file', () => {
    const analysis = assertMarked('unknown-column', {
      'lesson.swing.yaml': `swing: 1
shots: shots.csv
#      ^^^^^^^^^ warning[unknown-column]`,
      'shots.csv': 'cary,start,Mood\n168,1 right,fine\n',
    });
    assert.match(
      messageOf(analysis, 'unknown-column'),
      /^2 columns not read, the first column in line 1: found `cary`, perhaps meant as `carry`; expected .*`swingwright\.yaml`\.$/,
    );
    const [finding] = analysis.findings.filter(({ code }) => code === 'unknown-column');
    assert.deepEqual(
      finding!.related.map(({ uri, range }) => [uri, range.start, range.end.character]),
      [
        ['file:///lessons/2026/shots.csv', { line: 0, character: 0 }, 4],
        ['file:///lessons/2026/shots.csv', { line: 0, character: 11 }, 15],
      ],
    );
  });

  it('takes columns that the workspace file names or ignores', () => {
    assertNone('unknown-column', {
      'lesson.swing.yaml': 'swing: 1\nshots: shots.csv',
      'shots.csv': 'Flown (yd),Mood\n184,fine\n',
      'swingwright.yaml': `swingwright: 1
shots:
  columns: { Flown (yd): { quantity: carry, unit: yd }, Mood: ignore }`,
    });
  });

  it('lists a few of many columns, not all', () => {
    const names = Array.from({ length: 40 }, (_, index) => `thing ${index}`).join(',');
    const analysis = assertMarked('unknown-column', {
      'lesson.swing.yaml': `swing: 1
shots: shots.csv
#      ^^^^^^^^^ warning[unknown-column]`,
      'shots.csv': `carry,${names}\n168\n`,
    });
    assert.equal(analysis.findings.find(({ code }) => code === 'unknown-column')!.related.length, 5);
  });
});
