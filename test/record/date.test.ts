import assert from 'node:assert/strict';
import fc from 'fast-check';
import { isDate, isMinorOn } from '../../src/record/date.ts';
import { assertMarked } from './marked.ts';

describe('a date', () => {
  it('has the leap days of the Gregorian calendar', () => {
    assert.ok(isDate('2024-02-29'));
    assert.ok(isDate('2000-02-29'));
    assert.ok(!isDate('1900-02-29'));
    assert.ok(!isDate('2026-02-29'));
  });

  it('is one exactly where JavaScript finds the same day again', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1000, max: 9999 }),
        fc.integer({ min: 0, max: 13 }),
        fc.integer({ min: 0, max: 32 }),
        (year, month, day) => {
          const word = `${year}-${String(month).padStart(2, '0')}-${String(day).padStart(2, '0')}`;
          const time = new Date(Date.UTC(year, month - 1, day));
          assert.equal(isDate(word), time.toISOString().startsWith(word));
        },
      ),
    );
  });

  it('stays the words that were written, quoted or not', () => {
    for (const date of ['2026-05-14', '"2026-05-14"', "'2026-05-14'"]) {
      const document = assertMarked('swing', `swing: 1\nstudent: a\nclub: b\ndate: ${date}\n`);
      assert.equal(document.kind === 'swing' && document.date?.value, '2026-05-14');
    }
  });

  it('that the calendar does not have is a problem and no date', () => {
    const document = assertMarked(
      'swing',
      `swing: 1
student: a
club: b
date: 2026-02-30
#     ^^^^^^^^^^ impossible-date
`,
    );
    assert.equal(document.kind === 'swing' && document.date, undefined);
  });

  it('in another order, or a bare year, is one problem', () => {
    assertMarked(
      'swing',
      'swing: 1\nstudent: a\nclub: b\ndate: 14.5.2026\n#     ^^^^^^^^^ impossible-date\n',
    );
    assertMarked('swing', 'swing: 1\nstudent: a\nclub: b\ndate: 2026\n#     ^^^^ impossible-date\n');
  });

  it('of birth may be a year alone', () => {
    assertMarked('student', 'student: 1\nborn: 1998\n');
    assertMarked('student', 'student: 1\nborn: 1998-13-01\n#     ^^^^^^^^^^ impossible-date\n');
  });
});

describe('a minor', () => {
  it('is so until the day before the eighteenth birthday', () => {
    assert.equal(isMinorOn('2008-05-14', '2026-05-13'), true);
    assert.equal(isMinorOn('2008-05-14', '2026-05-14'), false);
    assert.equal(isMinorOn('2008-02-29', '2026-02-28'), true);
    assert.equal(isMinorOn('2008-02-29', '2026-03-01'), false);
  });

  it('of whom only the year is known is so until its last day', () => {
    assert.equal(isMinorOn('2008', '2026-12-30'), true);
    assert.equal(isMinorOn('2008', '2026-12-31'), false);
    assert.equal(isMinorOn('1988', '2026-01-01'), false);
  });
});
