// The check that says which proof of a planned change every record would meet, or none.
import { compileExpression } from '../judgement/expression.ts';
import { inBrackets } from './proof-words.ts';
import { proofAsks } from '../judgement/proof.ts';
import { quote } from '../measure/quote.ts';
import type { Located, PlannedChange } from '../record/document.ts';
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
  const truth = proof && truthFor(proof, subject);
  if (proof === undefined || truth === undefined) return [];
  const found = truth.isMet ? 'is met by every swing' : 'is met by no swing';
  const reason = truth.isOfNothing ? ', since it speaks of no quantity' : '';
  return [
    {
      span: proof.span,
      message: `The proof ${quote(proof.value)}${inBrackets(proofAsks(proof.value, subject.registry))} ${found}${reason}; expected a condition that the next record may meet or not.`,
    },
  ];
}

/** Whether every swing meets a proof or none; undefined where one may and another may not. */
export function truthFor(
  { value }: Located<string>,
  subject: Subject,
): { readonly isMet: boolean; readonly isOfNothing: boolean } | undefined {
  const { expression } = compileExpression(value, subject.registry);
  if (expression === undefined) return undefined;
  const { quantities, over } = expression;
  const truth = over(boxOf(quantities, (quantity) => possible(quantity, subject)));
  return Number.isNaN(truth) ? undefined : { isMet: truth === 1, isOfNothing: quantities.length === 0 };
}

/** The student and the club are the same at the next lesson. */
function possible({ id, bounds }: Quantity, { club, student }: Subject): Pick<Range, 'min' | 'max'> {
  const entry = club?.entries.get(id) ?? student?.document.entries.get(id);
  const fixed = entry?.readings[0]?.measure.value;
  return fixed === undefined ? bounds : { min: fixed, max: fixed };
}
