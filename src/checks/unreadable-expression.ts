// The check that says where an expression cannot be read.
import { explain } from './explain.ts';
import { writeNearest } from './fixes.ts';
import { fromProblems } from './from-problems.ts';

export const unreadableExpression = fromProblems({
  code: 'unreadable-expression',
  severity: 'error',
  title: 'Expression cannot be read',
  explanation: explain({
    found:
      'An expression breaks off, has two values with no sign between them, or is a number where a condition belongs.',
    matters: 'Its fault cannot be held against any numbers.',
    raises: {
      'house.faults.yaml': `faults: 1
book:
  early-lift:
    title: Rises before the strike
    evidence: checkpoints.impact.head_height >`,
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
