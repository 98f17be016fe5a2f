// The check that says which file is referred to and cannot be read.
import { explain } from './explain.ts';
import type { Problem } from '../measure/measure.ts';
import type { Fix } from './check.ts';
import { replace, textAt } from './fixes.ts';
import { fromProblems } from './from-problems.ts';
import type { Subject } from './subject.ts';

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
  fixes: turnBackslashes,
});

/** Paths within a folder are written with `/` on every system, so that a record can be shared. */
function turnBackslashes({ span }: Problem, subject: Subject): readonly Fix[] {
  const path = textAt(subject, span);
  if (!/^[\w .-]+(?:\\[\w .-]+)+$/.test(path)) return [];
  const turned = path.replaceAll('\\', '/');
  return [replace(subject, span, turned, `Write \`${turned}\``)];
}
