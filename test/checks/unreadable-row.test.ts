// Tests of the check unreadable-row.
import assert from 'node:assert/strict';
import { assertMarked, assertNone, messageOf } from './files.ts';

describe('unreadable-row', () => {
  it('marks the reference once, says line and cell, and points at the characters', () => {
    const analysis = assertMarked('unreadable-row', {
      'lesson.swing.yaml': `swing: 1
shots: shots.csv
#      ^^^^^^^^^ warning[unreadable-row]`,
      'shots.csv': 'carry,start\n168,1 right\n170,2 rigt\n171 kg,1 left\n169,0\n',
    });
    assert.match(
      messageOf(analysis, 'unreadable-row'),
      /^2 rows not read, the first row in line 3: found `rigt` for `flight\.start`; expected .*right/,
    );
    const finding = analysis.findings.find(({ code }) => code === 'unreadable-row')!;
    assert.deepEqual(
      finding.related.map(({ range }) => range),
      [
        { start: { line: 2, character: 6 }, end: { line: 2, character: 10 } },
        { start: { line: 3, character: 4 }, end: { line: 3, character: 6 } },
      ],
    );
    assert.equal(analysis.subject.shots!.summary!.count, 2);
  });

  it('says a single row in one sentence', () => {
    const analysis = assertMarked('unreadable-row', {
      'lesson.swing.yaml': `swing: 1
shots: shots.csv
#      ^^^^^^^^^ warning[unreadable-row]`,
      'shots.csv': 'carry\n17O\n',
    });
    assert.match(messageOf(analysis, 'unreadable-row'), /^Line 2: found `O` for `flight\.carry`; expected /);
  });

  it('takes rows with cells left empty', () => {
    assertNone('unreadable-row', {
      'lesson.swing.yaml': 'swing: 1\nshots: shots.csv',
      'shots.csv': 'carry,start\n168,\n,2 left\n\n-,-\n',
    });
  });
});
