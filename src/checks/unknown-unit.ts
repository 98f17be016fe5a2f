// The check that says which word after a number is no unit.
import { explain } from './explain.ts';
import { fromProblems } from './from-problems.ts';
import { writeNearest } from './fixes.ts';

export const unknownUnit = fromProblems({
  code: 'unknown-unit',
  severity: 'error',
  title: 'Unknown unit',
  explanation: explain({
    found: 'The word after the number is no unit that is known here.',
    matters: 'Without it the number could mean anything.',
    raises: `delivery:
  low_point: { ahead: 7 cn ahead }`,
    accepts: `delivery:
  low_point: { ahead: 7 cm ahead }`,
    source: 'the measure notation of this project.',
  }),
  lasting: true,
  fixes: writeNearest,
});
