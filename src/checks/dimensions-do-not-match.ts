// The check that says where an expression adds or compares what cannot be added or compared.
import { explain } from './explain.ts';
import { writeNearest } from './fixes.ts';
import { fromProblems } from './from-problems.ts';

export const dimensionsDoNotMatch = fromProblems({
  code: 'dimensions-do-not-match',
  severity: 'error',
  title: 'Dimensions do not match',
  explanation: explain({
    found:
      'An expression adds or compares quantities of different dimensions, or a quantity with a number that has no unit.',
    matters:
      'A number without a unit could be meant in any, and a length is never more or less than an angle. Shares are written in per cent: `60 %`.',
    raises: {
      'house.faults.yaml': `faults: 1
book:
  early-lift:
    title: Rises before the strike
    evidence: checkpoints.impact.head_height > 4`,
    },
    accepts: {
      'house.faults.yaml': `faults: 1
book:
  early-lift:
    title: Rises before the strike
    evidence: checkpoints.impact.head_height > 4 cm`,
    },
    source: 'dimensional analysis; angles count as a dimension of their own here.',
  }),
  fixes: writeNearest,
});
