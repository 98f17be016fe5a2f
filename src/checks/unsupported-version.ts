// The check that says that a file is of a format version that is not known.
import { explain } from './explain.ts';
import type { Problem } from '../measure/measure.ts';
import { format, migrate } from '../record/migrate.ts';
import { versionKeys } from '../record/kind.ts';
import type { Fix } from './check.ts';
import { replace, textAt } from './fixes.ts';
import { fromProblems, sentenceOf } from './from-problems.ts';
import type { Subject } from './subject.ts';

export const unsupportedVersion = fromProblems({
  code: 'unsupported-version',
  severity: 'error',
  title: 'Unsupported format version',
  explanation: explain({
    found: 'The file says that it is of a format version that is not known here.',
    matters: 'It may mean its words otherwise; a newer Swingwright may read it.',
    raises: `swing: 99`,
    accepts: `swing: 1`,
    source: 'the file format of this project.',
  }),
  lasting: true,
  sentence: (problem) =>
    Number(/\d+/.exec(problem.found)?.[0] ?? 0) > format.version
      ? sentenceOf({ ...problem, found: `${problem.found}, newer than this Swingwright` })
      : sentenceOf(problem),
  fixes: bringUp,
});

/** An older version is brought up as a whole; the present one that is only written oddly (`"1"`, `v1`) is written as a number. */
function bringUp({ span }: Problem, subject: Subject): readonly Fix[] {
  const { text, kind } = subject.document;
  const migrated = migrate(kind, text);
  const title = `Write \`${versionKeys[kind]}: ${format.version}\``;
  if (migrated.kind === 'moved') {
    const whole = { start: 0, end: text.length };
    return [replace(subject, whole, migrated.text, `Bring the file to version ${format.version}`)];
  }
  const meant = /^["']?[vV]?\.?\s*(\d+)["']?$/.exec(textAt(subject, span))?.[1];
  return Number(meant) === format.version ? [replace(subject, span, String(format.version), title)] : [];
}
