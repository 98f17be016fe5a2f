// The check that says which evidence of a fault book holds for every swing or for none.
import { evidenceOf } from '../judgement/book.ts';
import type { Expression } from '../judgement/expression.ts';
import type { Box } from '../judgement/walk.ts';
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
      'The evidence of a fault speaks of no quantity, holds for all or for none of the values that its quantities can have, or gives a number for none of them.',
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
        const box = boxOf(compiled.quantities);
        if (!isEverTold(compiled, box))
          return [
            {
              span,
              message: `${quote(value)} gives no number for any swing; expected a condition that can be worked out.`,
            },
          ];
        const truth = compiled.over(box);
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

/** So many places in what is possible, spread evenly over each quantity in an order of its own. */
const places = 101;

/** Whether it can be worked out at any of them: the root of a negative number, or a quotient by zero, never can. */
function isEverTold({ quantities, margin, holds }: Expression, { min, max }: Box): boolean {
  const told = margin ?? holds;
  return Array.from({ length: places }, (_, place) =>
    quantities.map((_, i) => {
      const share = ((place * (i + 1) + 0.5) % places) / places;
      return min[i]! + (max[i]! - min[i]!) * share;
    }),
  ).some((values) => Number.isFinite(told(values)));
}
