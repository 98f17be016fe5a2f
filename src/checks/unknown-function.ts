// The check that says which name in an expression is no function, or takes other arguments.
import { explain } from './explain.ts';
import { writeNearest } from './fixes.ts';
import { fromProblems } from './from-problems.ts';

export const unknownFunction = fromProblems({
  code: 'unknown-function',
  severity: 'error',
  title: 'No such function',
  explanation: explain({
    found:
      'A name before a bracket in an expression is none of the functions that are known, or stands before too many or too few numbers.',
    matters: 'The expression is not read, so that its fault cannot be held against any numbers.',
    raises: {
      'house.faults.yaml': `faults: 1
book:
  early-lift:
    title: Rises before the strike
    evidence: abz(checkpoints.impact.head_height) > 4 cm`,
    },
    accepts: {
      'house.faults.yaml': `faults: 1
book:
  early-lift:
    title: Rises before the strike
    evidence: abs(checkpoints.impact.head_height) > 4 cm`,
    },
    source:
      'the file format of this project; the syntax of expressions is that of mathjs, of which only a part is taken.',
  }),
  fixes: writeNearest,
});
