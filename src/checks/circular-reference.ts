// The check that says which fault book extends itself by way of others.
import { explain } from './explain.ts';
import { fromProblems } from './from-problems.ts';

export const circularReference = fromProblems({
  code: 'circular-reference',
  severity: 'error',
  title: 'Circular reference',
  explanation: explain({
    found: 'A fault book extends another that leads back to it.',
    matters: 'Which of the two has the last word cannot be told.',
    raises: {
      'house.faults.yaml': `faults: 1
extends: guest.faults.yaml`,
      'guest.faults.yaml': `faults: 1
extends: house.faults.yaml`,
    },
    accepts: {
      'house.faults.yaml': `faults: 1
extends: guest.faults.yaml`,
      'guest.faults.yaml': `faults: 1`,
    },
    source: 'the file format of this project.',
  }),
  kinds: ['faults'],
});
