// The check that says that a file is longer than is read.
import { explain } from './explain.ts';
import { fromProblems } from './from-problems.ts';

export const fileTooLarge = fromProblems({
  code: 'file-too-large',
  severity: 'error',
  title: 'File too large',
  explanation: explain({
    found: 'The file is longer than is read.',
    matters:
      'A record of one lesson is a few hundred lines; a longer text is most likely something else, or holds shots that belong in a file of their own.',
    accepts: `delivery: { attack: 3 deg down }`,
    source: 'judgement, to keep reading fast and safe.',
  }),
  lasting: true,
});
