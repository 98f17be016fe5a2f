// The check that says which proof asks for a number of the player or the club that their files do not hold.
import { compileExpression } from '../judgement/expression.ts';
import { quote, quoteList } from '../measure/quote.ts';
import type { Check } from './check.ts';
import { explain } from './explain.ts';

const record = `swing: 1
student: ansa.student.yaml
club: hybrid
misses: [high]
plan:
  - change: checkpoints.impact.shaft_lean
    to: 6 deg forward
    because: high
    proof: club.loft - delivery.delivered_loft > 4 deg`;
const student = (loft: string): string => `student: 1
bag: { hybrid: { kind: hybrid${loft} } }`;

export const proofCannotBeTold: Check = {
  code: 'proof-cannot-be-told',
  severity: 'warning',
  title: 'A proof that no record can tell',
  explanation: explain({
    found:
      "The proof of a change asks for a number of the player or the club that is not in the student's file.",
    matters: 'Records do not measure it, so that the next one can neither meet the proof nor fail it.',
    raises: { 'lesson.swing.yaml': record, 'ansa.student.yaml': student('') },
    accepts: { 'lesson.swing.yaml': record, 'ansa.student.yaml': student(', loft: 22 deg') },
    source: 'the file format of this project.',
  }),
  kinds: ['swing'],
  find: ({ document, registry, student: of, club }) => {
    if (document.kind !== 'swing' || of === undefined) return [];
    return document.plan.flatMap(({ proof }) => {
      const asked = (proof && compileExpression(proof.value, registry).expression?.quantities) ?? [];
      const missing = asked.filter(
        ({ id, section }) =>
          (section === 'club' && club !== undefined && !isRead(club.entries.get(id))) ||
          (section === 'student' && !isRead(of.document.entries.get(id))),
      );
      if (proof === undefined || missing.length === 0) return [];
      const names = quoteList(missing.map(({ id }) => id));
      return [
        {
          span: proof.span,
          message: `The proof ${quote(proof.value)} needs ${names}, which the student's file does not have; expected it there, or a proof without it.`,
          related: [
            { uri: of.uri, span: club?.name.span ?? { start: 0, end: 0 }, message: "The student's file" },
          ],
        },
      ];
    });
  },
};

function isRead(entry: { readonly readings: readonly unknown[] } | undefined): boolean {
  return entry !== undefined && entry.readings.length > 0;
}
