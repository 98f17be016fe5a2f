// The check that says where a window stands in the place of a single number.
import { explain } from './explain.ts';
import { fromProblems } from './from-problems.ts';

export const windowNotAllowed = fromProblems({
  code: 'window-not-allowed',
  severity: 'error',
  title: 'Window not allowed here',
  explanation: explain({
    found: 'A window `A..B` stands where one measured number belongs.',
    matters:
      'A measurement is one number with its uncertainty; windows belong in goals, plans and templates.',
    raises: `delivery:
  attack: 2..4 deg down`,
    accepts: `delivery:
  attack: 3 deg down ± 1 deg`,
    source: 'the measure notation of this project.',
  }),
  lasting: true,
});
