// The check that says which proof of a planned change every record would meet, or none.
import { compileExpression } from '../judgement/expression.ts';
import { quote } from '../measure/quote.ts';
import type { PlannedChange } from '../record/document.ts';
import type { Quantity, Range } from '../registry/quantity.ts';
import type { Check, RawFinding } from './check.ts';
import { explain } from './explain.ts';
import { boxOf } from './reach.ts';
import type { Subject } from './subject.ts';

const record = (proof: string): string => `swing: 1
misses: [heavy]
plan: [{ change: delivery.attack, to: 3 deg down, because: heavy, proof: ${proof} }]`;

export const proofProvesNothing: Check = {
  code: 'proof-proves-nothing',
  severity: 'warning',
  title: 'A proof that proves nothing',
  explanation: explain({
    found:
      'The proof of a change speaks of no quantity, compares one with itself, or holds for all or for none of the values that its quantities can have; what is fixed with the player and the club is taken as it is.',
    matters: 'The next lesson cannot show by it whether the change was worth making.',
    raises: record('delivery.attack < delivery.attack'),
    accepts: record('delivery.attack < -2 deg'),
    source: 'the bounds of each quantity in the registry.',
  }),
  kinds: ['swing'],
  find: (subject) => {
    if (subject.document.kind !== 'swing') return [];
    return subject.document.plan.flatMap((planned) => findingOf(planned, subject));
  },
};

function findingOf({ proof }: PlannedChange, subject: Subject): readonly RawFinding[] {
  const expression = proof && compileExpression(proof.value, subject.registry).expression;
  if (proof === undefined || expression === undefined) return [];
  const truth = expression.over(boxOf(expression.quantities, (quantity) => possible(quantity, subject)));
  if (Number.isNaN(truth)) return [];
  const found = truth === 1 ? 'is met by every swing' : 'is met by no swing';
  const reason = expression.quantities.length === 0 ? ', since it speaks of no quantity' : '';
  return [
    {
      span: proof.span,
      message: `The proof ${quote(proof.value)} ${found}${reason}; expected a condition that the next record may meet or not.`,
    },
  ];
}

/** The student and the club are the same at the next lesson. */
function possible({ id, bounds }: Quantity, { club, student }: Subject): Pick<Range, 'min' | 'max'> {
  const entry = club?.entries.get(id) ?? student?.document.entries.get(id);
  const fixed = entry?.readings[0]?.measure.value;
  return fixed === undefined ? bounds : { min: fixed, max: fixed };
}
