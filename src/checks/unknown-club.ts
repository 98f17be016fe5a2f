// The check that says which club is not in the student's bag.
import { findNearest } from '../measure/nearest.ts';
import { brokenIn } from '../record/broken.ts';
import type { Goal, Located, StudentFile } from '../record/document.ts';
import type { Check, RawFinding } from './check.ts';
import { explain } from './explain.ts';
import { writeNearest } from './fixes.ts';
import { sentenceOf } from './from-problems.ts';
import type { Subject } from './subject.ts';

const student = `student: 1
hand: left
bag:
  hybrid: { kind: hybrid, loft: 22 deg }`;

export const unknownClub: Check = {
  code: 'unknown-club',
  severity: 'error',
  title: 'Club not in the bag',
  explanation: explain({
    found: "The record, or a goal, names a club that is not in the student's bag.",
    matters: 'Its loft, length and kind are not known, so that nothing that hangs on them can be derived.',
    raises: {
      'lesson.swing.yaml': 'swing: 1\nstudent: mira.student.yaml\nclub: hybird',
      'mira.student.yaml': student,
    },
    accepts: {
      'lesson.swing.yaml': 'swing: 1\nstudent: mira.student.yaml\nclub: hybrid',
      'mira.student.yaml': student,
    },
    source: 'the file format of this project.',
  }),
  kinds: ['swing', 'student'],
  find: (subject) => {
    const { document } = subject;
    if (document.kind === 'student') return clubsMissing(clubsOfGoals(document.goals), document, subject);
    if (document.kind !== 'swing' || subject.student === undefined) return [];
    const own = document.club === undefined ? [] : [document.club];
    return clubsMissing([...own, ...clubsOfGoals(document.goals)], subject.student.document, subject);
  },
};

function clubsOfGoals(goals: readonly Goal[]): readonly Located<string>[] {
  return goals.flatMap(({ club }) => club ?? []);
}

function clubsMissing(
  named: readonly Located<string>[],
  student: StudentFile,
  subject: Subject,
): readonly RawFinding[] {
  // A bag that could not be read may well hold the club.
  if (brokenIn(student) !== undefined) return [];
  const { bag } = student;
  const uri = subject.student?.uri ?? subject.uri;
  return named.filter(({ value }) => !bag.has(value)).map((club) => findingOf(club, bag, uri, subject));
}

function findingOf(
  club: Located<string>,
  bag: StudentFile['bag'],
  uri: string,
  subject: Subject,
): RawFinding {
  const clubs = [...bag.values()];
  const names = clubs.map(({ name }) => name.value);
  const listed = names.map((name) => `\`${name}\``).join(', ');
  const nearest = findNearest(club.value, names);
  const named = { span: club.span, ...(nearest === undefined ? {} : { nearest }) };
  const expected =
    names.length === 0 ? "a club of the student's bag, which is empty" : `a club of the bag (${listed})`;
  const first = clubs[0];
  return {
    span: club.span,
    message: sentenceOf({ ...named, found: `the club \`${club.value}\``, expected }),
    related: first === undefined ? [] : [{ uri, span: first.name.span, message: `The bag: ${listed}` }],
    fixes: writeNearest(named, subject),
  };
}
