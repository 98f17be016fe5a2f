// The check that says which method of measuring is not known.
import { explain } from './explain.ts';
import { fromProblems } from './from-problems.ts';
import { writeNearest } from './fixes.ts';

export const unknownMethod = fromProblems({
  code: 'unknown-method',
  severity: 'warning',
  title: 'Unknown method',
  explanation: explain({
    found: 'The method after `by` is not known.',
    matters:
      'Without it the uncertainty is the default of the quantity; a workspace can add methods of its own.',
    raises: `delivery:
  attack: 3 deg down by rdar`,
    accepts: `delivery:
  attack: 3 deg down by radar`,
    source: 'the measure notation of this project.',
  }),
  fixes: writeNearest,
});
