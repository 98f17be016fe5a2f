// The check that says which date is not in the calendar.
import { explain } from './explain.ts';
import { fromProblems } from './from-problems.ts';

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
});
