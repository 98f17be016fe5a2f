// The check that says which goal of a record is for another club than the record itself.
import { quote } from '../measure/quote.ts';
import type { Check } from './check.ts';
import { explain } from './explain.ts';

const student = `student: 1
bag: { hybrid: { kind: hybrid, loft: 22 deg }, driver: { kind: driver, loft: 11 deg } }`;
const record = (club: string): string => `swing: 1
student: ansa.student.yaml
club: hybrid
goals: [{ carry: 165 m, club: ${club} }]`;

export const goalForOtherClub: Check = {
  code: 'goal-for-other-club',
  severity: 'information',
  title: 'A goal for another club',
  explanation: explain({
    found: 'A goal of the record names another club than the one that the record was made with.',
    matters:
      "It is not held against this record. Goals of several clubs have their place in the student's file.",
    raises: { 'lesson.swing.yaml': record('driver'), 'ansa.student.yaml': student },
    accepts: { 'lesson.swing.yaml': record('hybrid'), 'ansa.student.yaml': student },
    source: 'the file format of this project.',
  }),
  kinds: ['swing'],
  find: ({ document, student: of }) => {
    if (document.kind !== 'swing' || document.club === undefined) return [];
    const made = document.club.value;
    return document.goals.flatMap(({ club }) => {
      // One that nobody has is told of by itself.
      if (club === undefined || club.value === made || of?.document.bag.has(club.value) === false) return [];
      return [
        {
          span: club.span,
          message: `A goal for ${quote(club.value)} in a record of ${quote(made)}; expected one for the same club.`,
        },
      ];
    });
  },
};
