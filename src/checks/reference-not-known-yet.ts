// The check that says which file cannot be looked for as long as the one that names it is not saved.
import { explain } from './explain.ts';
import { fromProblems } from './from-problems.ts';

export const referenceNotKnownYet = fromProblems({
  code: 'reference-not-known-yet',
  severity: 'information',
  title: 'File not known yet',
  explanation: explain({
    found: 'A file that is not saved yet refers to another.',
    matters:
      'Paths start from the folder of the file that holds them, and this one lies in none yet; what the other file says is taken up once this one is saved.',
    accepts: {
      'lesson.swing.yaml': `swing: 1
student: mira.student.yaml`,
      'mira.student.yaml': `student: 1`,
    },
    source: 'the file format of this project.',
  }),
});
