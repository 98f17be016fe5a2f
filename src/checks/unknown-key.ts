// The check that says which key is not known at its place.
import { explain } from './explain.ts';
import { fromProblems } from './from-problems.ts';
import { writeNearest } from './fixes.ts';

export const unknownKey = fromProblems({
  code: 'unknown-key',
  severity: 'warning',
  title: 'Unknown key',
  explanation: explain({
    found: 'This key is not known here.',
    matters: 'What stands under it is not read, so a slip of one letter would lose a measurement.',
    raises: `delivery:
  atack: 3 deg down`,
    accepts: `delivery:
  attack: 3 deg down`,
    source: 'the file format of this project.',
  }),
  fixes: writeNearest,
});
