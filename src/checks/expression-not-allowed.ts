// The check that says which part of an expression is not among what an expression may hold.
import { explain } from './explain.ts';
import { writeNearest } from './fixes.ts';
import { fromProblems } from './from-problems.ts';

export const expressionNotAllowed = fromProblems({
  code: 'expression-not-allowed',
  severity: 'error',
  title: 'Not allowed in an expression',
  explanation: explain({
    found:
      'An expression holds something other than quantities, numbers with units, the listed functions, `+ - * / ^`, comparisons, `and`, `or`, `not` and `? :`.',
    matters:
      'Expressions are only ever compared with numbers and never run, so that a fault book from somewhere else can do no harm. Two measured numbers are never exactly equal, so that there is no `==`.',
    raises: {
      'house.faults.yaml': `faults: 1
book:
  early-lift:
    title: Rises before the strike
    evidence: checkpoints.impact.head_height == 4 cm`,
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
