// The check that reminds of consent and of a private place for notes on health and for records of minors.
import { isMinorOn } from '../record/date.ts';
import type { Check, RawFinding } from './check.ts';
import { explain } from './explain.ts';
import type { Subject } from './subject.ts';

export const consentAndPrivacy: Check = {
  code: 'consent-and-privacy',
  severity: 'hint',
  title: 'Reminder of consent and privacy',
  explanation: explain({
    found:
      "The student's file holds notes on health, or the student is under eighteen on the day of the record.",
    matters:
      "Such files belong in a private repository, with the student's consent or that of a parent or guardian; what the law asks for differs from place to place. `# accept[consent-and-privacy]: consent of …` on the line keeps the answer with the file.",
    raises: { 'ansa.student.yaml': 'student: 1\nname: Ansa\ninjuries: [{ part: lower back }]' },
    accepts: { 'ansa.student.yaml': 'student: 1\nname: Ansa' },
    source: 'common practice; eighteen is the age of majority in most places.',
  }),
  kinds: ['student', 'swing'],
  find: (subject) => [...healthNotes(subject), ...minor(subject)],
};

function healthNotes({ document }: Subject): readonly RawFinding[] {
  if (document.kind !== 'student' || document.injuries.length === 0) return [];
  const key = document.outline.find(({ name }) => name === 'injuries');
  const message =
    "This file holds notes on health; expected it in a private repository, with the student's consent.";
  return key === undefined ? [] : [{ span: key.nameSpan, message }];
}

/** On the reference to the student, for only the record has a day. */
function minor({ document, student }: Subject): readonly RawFinding[] {
  if (document.kind !== 'swing' || document.student === undefined || document.date === undefined) return [];
  const { born, name } = student?.document ?? {};
  if (born === undefined || !isMinorOn(born.value, document.date.value)) return [];
  const who = name?.value ?? 'The student';
  const message = `${who} is under eighteen on this day; expected the record in a private repository, with the consent of a parent or guardian.`;
  return [
    {
      span: document.student.span,
      message,
      related: [{ uri: student!.uri, span: born.span, message: 'Born' }],
    },
  ];
}
