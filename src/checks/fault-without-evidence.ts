// The check that says which fault of a book has no evidence, so that no record can speak for or against it.
import { quote } from '../measure/quote.ts';
import type { Check } from './check.ts';
import { explain } from './explain.ts';

const book = (evidence: string): string => `faults: 1
book:
  trail-side:
    title: Weight stays on the trail side${evidence}`;

export const faultWithoutEvidence: Check = {
  code: 'fault-without-evidence',
  severity: 'hint',
  title: 'A fault without evidence',
  explanation: explain({
    found: 'The fault book says of a fault neither what would show it nor that it is shown by another one.',
    matters: 'Whoever states it is neither borne out nor contradicted by any number.',
    raises: { 'house.faults.yaml': book('') },
    accepts: { 'house.faults.yaml': book('\n    evidence: checkpoints.impact.lead_pressure < 70 %') },
    source: 'the file format of this project.',
  }),
  kinds: ['faults'],
  find: ({ document }) => {
    if (document.kind !== 'faults') return [];
    return [...document.faults.values()]
      .filter(({ evidence }) => evidence.length === 0)
      .map(({ id }) => ({
        span: id.span,
        message: `Found no evidence for ${quote(id.value)}; expected what in the numbers would show it, at \`evidence\`.`,
      }));
  },
};
