// The check that says which window ends below its beginning.
import { explain } from './explain.ts';
import { fromProblems } from './from-problems.ts';
import { writeNearest } from './fixes.ts';

export const windowReversed = fromProblems({
  code: 'window-reversed',
  severity: 'error',
  title: 'Window reversed',
  explanation: explain({
    found: 'The first number of a window is above its second.',
    matters: 'No value could ever lie in it.',
    raises: `goals:
  - { finish: 5..0 yd left }`,
    accepts: `goals:
  - { finish: 0..5 yd left }`,
    source: 'the measure notation of this project.',
  }),
  lasting: true,
  fixes: writeNearest,
});
