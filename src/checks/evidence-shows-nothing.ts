// The check that says which evidence of a fault book holds for every swing or for none.
import { evidenceOf } from '../judgement/book.ts';
import { quote } from '../measure/quote.ts';
import type { Check, RawFinding } from './check.ts';
import { explain } from './explain.ts';
import { boxOf } from './reach.ts';

const book = (evidence: string): string => `faults: 1
book:
  trail-side:
    evidence: ${evidence}`;

export const evidenceShowsNothing: Check = {
  code: 'evidence-shows-nothing',
  severity: 'warning',
  title: 'Evidence that shows nothing',
  explanation: explain({
    found:
      'The evidence of a fault speaks of no quantity, or holds for all or for none of the values that its quantities can have.',
    matters: 'It says the same of every swing, so that it tells nobody whether the fault is there.',
    raises: { 'house.faults.yaml': book('checkpoints.impact.lead_pressure < 170 %') },
    accepts: { 'house.faults.yaml': book('checkpoints.impact.lead_pressure < 70 %') },
    source: 'the bounds of each quantity in the registry.',
  }),
  kinds: ['faults'],
  find: ({ document, registry }) => {
    if (document.kind !== 'faults') return [];
    return [...document.faults.values()].flatMap((fault) =>
      evidenceOf(fault, registry).flatMap(({ compiled, expression: { value, span } }): RawFinding[] => {
        if (compiled === undefined) return [];
        const truth = compiled.over(boxOf(compiled.quantities));
        if (Number.isNaN(truth)) return [];
        const found = truth === 1 ? 'always holds' : 'never holds';
        const reason = compiled.quantities.length === 0 ? ', since it speaks of no quantity' : '';
        return [
          {
            span,
            message: `${quote(value)} ${found}${reason}; expected a condition that some swings meet and others do not.`,
          },
        ];
      }),
    );
  },
};
