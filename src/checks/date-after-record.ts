// The check that says which date of the student's file lies after the record that refers to it; knows no clock.
import { quote } from '../measure/quote.ts';
import type { Located } from '../record/document.ts';
import type { Check } from './check.ts';
import { explain } from './explain.ts';

const record = `swing: 1
student: ansa.student.yaml
date: 2026-05-14`;
const student = (since: string): string => `student: 1
injuries: [{ part: lead knee, since: ${since} }]`;

export const dateAfterRecord: Check = {
  code: 'date-after-record',
  severity: 'hint',
  title: 'A date after the record',
  explanation: explain({
    found:
      "The student's file says since when something hurts, or a day of birth, and that lies after the day of this record.",
    matters:
      'Either the year is a slip, or it came after this lesson. The cautions stand here all the same: nobody is cleared to play by a date.',
    raises: { 'lesson.swing.yaml': record, 'ansa.student.yaml': student('2027-03') },
    accepts: { 'lesson.swing.yaml': record, 'ansa.student.yaml': student('2026-03') },
    source: 'the order of the days.',
  }),
  kinds: ['swing'],
  find: ({ document, student: of }) => {
    if (document.kind !== 'swing' || document.student === undefined || document.date === undefined) return [];
    if (of === undefined) return [];
    const { span } = document.student;
    const day = document.date.value;
    const { born, injuries } = of.document;
    const told = [
      ...injuries.map(({ part, since }) => ({
        date: since,
        found: (day: string) => `${quote(part.value)} since ${quote(day)}`,
        unless: ', unless it began after this lesson',
      })),
      { date: born, found: (day: string) => quote(`born: ${day}`), unless: '' },
    ];
    return told.flatMap(({ date, found, unless }) =>
      date === undefined || !isAfter(date, day)
        ? []
        : [
            {
              span,
              message: `Found ${found(date.value)} in the student's file, which is after the day of this record, ${quote(day)}; expected an earlier date${unless}.`,
              related: [{ uri: of.uri, span: date.span, message: "In the student's file" }],
            },
          ],
    );
  },
};

/** A year or a month is after a day only where all of it is; other words say no day. */
function isAfter({ value }: Located<string>, day: string): boolean {
  return /^\d{4}(-\d{2}){0,2}$/.test(value) && value > day.slice(0, value.length);
}
