// The check that says which unit measures something else than is asked for.
import { explain } from './explain.ts';
import { fromProblems } from './from-problems.ts';
import { writeNearest } from './fixes.ts';

export const wrongDimension = fromProblems({
  code: 'wrong-dimension',
  severity: 'error',
  title: 'Unit of something else',
  explanation: explain({
    found: 'The unit measures something else than is asked for here.',
    matters: 'An angle cannot be given in a unit of length, so the number is not read.',
    raises: `delivery:
  attack: 3 cm down`,
    accepts: `delivery:
  attack: 3 deg down`,
    source: 'the measure notation of this project.',
  }),
  lasting: true,
  fixes: writeNearest,
});
