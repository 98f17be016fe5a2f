// The check that says which file is referred to and not there.
import { explain } from './explain.ts';
import { fromProblems } from './from-problems.ts';

export const missingReference = fromProblems({
  code: 'missing-reference',
  severity: 'error',
  title: 'File not found',
  explanation: explain({
    found: 'The file that is referred to is not there.',
    matters:
      'References are paths relative to the file that holds them; what the other file would say is not known.',
    raises: `swing: 1
student: nobody.student.yaml`,
    accepts: {
      'lesson.swing.yaml': `swing: 1
student: mira.student.yaml`,
      'mira.student.yaml': `student: 1`,
    },
    source: 'the file format of this project.',
  }),
});
