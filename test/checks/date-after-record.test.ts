// Tests of the check date-after-record.
import assert from 'node:assert/strict';
import { assertMarked, assertNone, messageOf } from './files.ts';

const record = 'swing: 1\nstudent: ansa.student.yaml\ndate: 2026-05-14\n';
const student = (words: string): { 'ansa.student.yaml': string } => ({
  'ansa.student.yaml': `student: 1\n${words}`,
});

describe('date-after-record', () => {
  it('marks the student of a record before an injury, by year, month or day, with a link to it', () => {
    for (const since of ['2027', '2026-06', '2026-05-15']) {
      const analysis = assertMarked('date-after-record', {
        'lesson.swing.yaml': `swing: 1
student: ansa.student.yaml
#        ^^^^^^^^^^^^^^^^^ hint[date-after-record]
date: 2026-05-14`,
        ...student(`injuries: [{ part: lead knee, since: ${since} }]`),
      });
      assert.match(
        messageOf(analysis, 'date-after-record'),
        /^Found `lead knee` since `202[67].*` in the student's file, which is after the day of this record, `2026-05-14`; expected an earlier date, unless it began after this lesson\.$/,
      );
      assert.equal(analysis.findings.find(({ code }) => code === 'date-after-record')?.related.length, 1);
    }
  });

  it('marks a birth after the record', () => {
    const analysis = assertMarked('date-after-record', {
      'lesson.swing.yaml': `swing: 1
student: ansa.student.yaml
#        ^^^^^^^^^^^^^^^^^ hint[date-after-record]
date: 2026-05-14`,
      ...student('born: 2071-02-03'),
    });
    assert.match(messageOf(analysis, 'date-after-record'), /^Found `born: 2071-02-03` .*an earlier date\.$/);
  });

  it('takes what is earlier, the same month or year, and words', () => {
    for (const since of ['2026', '2026-05', '2026-05-14', '2019-01', 'last spring'])
      assertNone('date-after-record', {
        'lesson.swing.yaml': record,
        ...student(`injuries: [{ part: lead knee, since: ${since} }]`),
      });
    assertNone('date-after-record', { 'lesson.swing.yaml': record, ...student('born: 1971') });
  });
});
