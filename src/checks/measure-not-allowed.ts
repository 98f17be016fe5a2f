// The check that says where a single number stands in the place of a window.
import { explain } from './explain.ts';
import { fromProblems } from './from-problems.ts';

export const measureNotAllowed = fromProblems({
  code: 'measure-not-allowed',
  severity: 'error',
  title: 'A window belongs here',
  explanation: explain({
    found: 'A single number stands where a window `A..B` belongs.',
    matters: 'A template says between which values a coach wants a quantity to be.',
    raises: {
      'irons.template.yaml': `template: 1
delivery:
  attack: 4 deg down`,
    },
    accepts: {
      'irons.template.yaml': `template: 1
delivery:
  attack: 2..6 deg down`,
    },
    source: 'the measure notation of this project.',
  }),
  lasting: true,
});
