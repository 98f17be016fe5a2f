// The check that says which name in an expression is no quantity.
import { explain } from './explain.ts';
import { writeNearest } from './fixes.ts';
import { fromProblems } from './from-problems.ts';

export const unknownQuantity = fromProblems({
  code: 'unknown-quantity',
  severity: 'error',
  title: 'No such quantity',
  explanation: explain({
    found: 'A name in an expression is not the full id of a quantity.',
    matters: 'The expression is not read, so that its fault cannot be held against any numbers.',
    raises: {
      'house.faults.yaml': `faults: 1
book:
  early-lift:
    title: Rises before the strike
    evidence: checkpoints.impact.head_hight > 4 cm`,
    },
    accepts: {
      'house.faults.yaml': `faults: 1
book:
  early-lift:
    title: Rises before the strike
    evidence: checkpoints.impact.head_height > 4 cm`,
    },
    source:
      'the file format of this project; the syntax of expressions is that of mathjs, of which only a part is taken.',
  }),
  fixes: writeNearest,
});
