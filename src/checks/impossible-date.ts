// The check that says which date is not in the calendar.
import { explain } from './explain.ts';
import type { Problem } from '../measure/measure.ts';
import { isDate } from '../record/date.ts';
import type { Fix } from './check.ts';
import { replace, textAt } from './fixes.ts';
import { fromProblems } from './from-problems.ts';
import type { Subject } from './subject.ts';

export const impossibleDate = fromProblems({
  code: 'impossible-date',
  severity: 'error',
  title: 'Impossible date',
  explanation: explain({
    found: 'This is not a day of the calendar, written as year-month-day.',
    matters: 'Lessons are put in order by their date.',
    raises: `swing: 1
date: 2026-02-30`,
    accepts: `swing: 1
date: 2026-02-28`,
    source: 'ISO 8601, calendar dates.',
  }),
  lasting: true,
  fixes: writeInOrder,
});

/** Only where the year comes first: of day and month nobody can tell which is which. */
function writeInOrder({ span }: Problem, subject: Subject): readonly Fix[] {
  const parts = /^(\d{4})[-/. ](\d{1,2})[-/. ](\d{1,2})$/.exec(textAt(subject, span));
  const [, year, month, day] = parts ?? [];
  if (year === undefined || month === undefined || day === undefined) return [];
  const date = `${year}-${month.padStart(2, '0')}-${day.padStart(2, '0')}`;
  return isDate(date) ? [replace(subject, span, date, `Write \`${date}\``)] : [];
}
