// The check that says which file is referred to and cannot be read.
import { explain } from './explain.ts';
import { fromProblems } from './from-problems.ts';

export const unreadableReference = fromProblems({
  code: 'unreadable-reference',
  severity: 'error',
  title: 'File cannot be read',
  explanation: explain({
    found:
      'The file that is referred to is there but cannot be read, for instance because it is a folder or because reading is not allowed.',
    matters: 'What it would say is not known.',
    accepts: {
      'lesson.swing.yaml': `swing: 1
student: mira.student.yaml`,
      'mira.student.yaml': `student: 1`,
    },
    source: 'the file format of this project.',
  }),
});
