// The check that says which expression gives no number, or is a condition that every swing meets or none.
import { explain } from './explain.ts';
import { fromProblems } from './from-problems.ts';

const workspace = (when: string): string => `swingwright: 1
checks:
  far-right: { when: ${when}, message: "Found {delivery.path}." }`;

export const expressionTellsNothing = fromProblems({
  code: 'expression-tells-nothing',
  severity: 'warning',
  title: 'An expression that tells nothing',
  explanation: explain({
    found:
      'An expression divides by zero, takes the root or logarithm of what has none, or is a condition of an own check that holds for every swing that is possible, or for none.',
    matters:
      'It can never find anything, or finds it everywhere; most likely a number or a unit is another one.',
    raises: { 'swingwright.yaml': workspace('delivery.path / 0 > 3 deg') },
    accepts: { 'swingwright.yaml': workspace('delivery.path > 3 deg') },
    source: 'arithmetic, and the bounds of the quantities.',
  }),
});
