// The check that says which proof the record meets before anything was changed.
import { showValue } from '../measure/show.ts';
import { inBrackets } from './proof-words.ts';
import { lowerFirst, quote } from '../measure/quote.ts';
import type { Check } from './check.ts';
import { explain } from './explain.ts';
import { truthFor } from './proof-proves-nothing.ts';

const record = (proof: string): string => `swing: 1
misses: [heavy]
checkpoints: { impact: { lead_pressure: 74 % by pressure mat } }
plan:
  - change: checkpoints.address.ball_position
    to: 4 cm behind
    because: heavy
    proof: ${proof}`;

export const proofAlreadyMet: Check = {
  code: 'proof-already-met',
  severity: 'information',
  title: 'A proof that is met already',
  explanation: explain({
    found: 'What was measured in this record meets the proof of a change that is still to be made.',
    matters:
      'If nothing changes until the next lesson, the proof is met all the same: it shows that nothing got worse, not that the change was made.',
    raises: record('checkpoints.impact.lead_pressure > 70 %'),
    accepts: record('checkpoints.impact.lead_pressure > 80 %'),
    source: 'the measured numbers of this record, as a proof is judged at the next lesson: met from 80 % on.',
  }),
  kinds: ['swing'],
  find: (subject) =>
    subject.proofs.flatMap(({ proof, asks, state, values }) => {
      if (state !== 'met' || values.length === 0) return [];
      // What every swing meets is told of by itself.
      if (truthFor(proof, subject) !== undefined) return [];
      const numbers = values.map(
        ({ quantity, value }) => `${lowerFirst(quantity.title)} ${showValue(quantity, value.value, value.u)}`,
      );
      return [
        {
          span: proof.span,
          message: `The proof ${quote(proof.value)}${inBrackets(asks)} is met already by ${numbers.join(', ')}; expected what this record does not meet yet.`,
        },
      ];
    }),
};
