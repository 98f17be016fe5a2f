// The check that says which word is none of those that may stand at its place.
import { explain } from './explain.ts';
import { fromProblems } from './from-problems.ts';
import { writeNearest } from './fixes.ts';

export const unknownWord = fromProblems({
  code: 'unknown-word',
  severity: 'error',
  title: 'Unknown word',
  explanation: explain({
    found: 'One of a few known words belongs here, and this is none of them.',
    matters: 'It is not read, so that everything that hangs on it falls away.',
    raises: {
      'mira.student.yaml': `student: 1
hand: lefft`,
    },
    accepts: {
      'mira.student.yaml': `student: 1
hand: left`,
    },
    source: 'the file format of this project.',
  }),
  lasting: true,
  fixes: writeNearest,
});
