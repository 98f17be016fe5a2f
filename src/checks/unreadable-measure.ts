// The check that says where a measurement cannot be read.
import { explain } from './explain.ts';
import { writeNearest } from './fixes.ts';
import { fromProblems } from './from-problems.ts';

export const unreadableMeasure = fromProblems({
  code: 'unreadable-measure',
  severity: 'error',
  title: 'Unreadable measurement',
  explanation: explain({
    found:
      'A measurement is written as a number, a unit, a direction, `±` and how it was measured, and this does not fit in.',
    matters: 'It is not read, or not to its end.',
    raises: `delivery:
  attack: steep`,
    accepts: `delivery:
  attack: 6 deg down by eye`,
    source: 'the measure notation of this project.',
  }),
  lasting: true,
  fixes: writeNearest,
});
