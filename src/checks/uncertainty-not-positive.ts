// The check that says which uncertainty is not above zero.
import { explain } from './explain.ts';
import { fromProblems } from './from-problems.ts';

export const uncertaintyNotPositive = fromProblems({
  code: 'uncertainty-not-positive',
  severity: 'error',
  title: 'Uncertainty not above zero',
  explanation: explain({
    found: 'What stands after `±` must be above zero.',
    matters: 'No measurement is exact, and a weight of one over zero would drown all the others.',
    raises: `delivery:
  attack: 3 deg down ± 0 deg`,
    accepts: `delivery:
  attack: 3 deg down ± 1 deg`,
    source: 'JCGM 100:2008, 3.3.5 and 4.1: a standard uncertainty is a positive standard deviation.',
  }),
});
