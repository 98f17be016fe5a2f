// The check that says which word is no direction of the quantity.
import { explain } from './explain.ts';
import { fromProblems } from './from-problems.ts';
import { writeNearest } from './fixes.ts';

export const unknownDirection = fromProblems({
  code: 'unknown-direction',
  severity: 'error',
  title: 'Unknown direction',
  explanation: explain({
    found: 'The direction is none that this quantity has.',
    matters: 'The sign of the number hangs on it.',
    raises: `delivery:
  attack: 3 deg dwon`,
    accepts: `delivery:
  attack: 3 deg down`,
    source: 'the measure notation of this project.',
  }),
  lasting: true,
  fixes: writeNearest,
});
