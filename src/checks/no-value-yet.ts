// The check that says which keys still wait for a value.
import { explain } from './explain.ts';
import { fromProblems } from './from-problems.ts';

export const noValueYet = fromProblems({
  code: 'no-value-yet',
  severity: 'hint',
  title: 'No value yet',
  explanation: explain({
    found: 'The key stands without a value, or a unit, a direction or a method without a number.',
    matters: 'Nothing is derived from it and nothing is wrong; it is a place to fill in.',
    raises: `delivery:
  attack:`,
    accepts: `delivery:
  attack: 3 deg down`,
    source: 'the file format of this project.',
  }),
});
