// The check that says which reference leads to a file of another kind.
import { explain } from './explain.ts';
import { fromProblems } from './from-problems.ts';

export const wrongKindOfFile = fromProblems({
  code: 'wrong-kind-of-file',
  severity: 'error',
  title: 'File of another kind',
  explanation: explain({
    found: 'The suffix of the file says that it is of another kind than belongs here.',
    matters: 'It is not read.',
    raises: `swing: 1
student: irons.template.yaml`,
    accepts: {
      'lesson.swing.yaml': `swing: 1
student: mira.student.yaml`,
      'mira.student.yaml': `student: 1`,
    },
    source: 'the file format of this project.',
  }),
});
