// The check that says which file is referred to and not there.
import { explain } from './explain.ts';
import type { Problem } from '../measure/measure.ts';
import type { Fix } from './check.ts';
import { replace, textAt } from './fixes.ts';
import { fromProblems } from './from-problems.ts';
import { relativePath } from '../record/reference.ts';
import type { Subject } from './subject.ts';

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
  fixes: (problem, subject) => [...writeRecordBeside(problem, subject), ...turnBackslashes(problem, subject)],
});

/** A record that was renamed together with its review. */
function writeRecordBeside({ span }: Problem, subject: Subject): readonly Fix[] {
  if (subject.document.kind !== 'review' || subject.record === undefined) return [];
  const path = relativePath(subject.uri, subject.record.uri);
  // What stands in quotes has no quotes to add.
  if (path === undefined || !/^[\p{L}\p{N}_][\p{L}\p{N}_ ./-]*$/u.test(path)) return [];
  return [replace(subject, span, path, `Write \`${path}\``)];
}

/** Paths within a folder are written with `/` on every system, so that a record can be shared. */
function turnBackslashes({ span }: Problem, subject: Subject): readonly Fix[] {
  const path = textAt(subject, span);
  if (!/^[\w .-]+(?:\\[\w .-]+)+$/.test(path)) return [];
  const turned = path.replaceAll('\\', '/');
  return [replace(subject, span, turned, `Write \`${turned}\``)];
}
