// The check that says which key a file cannot do without.
import { explain } from './explain.ts';
import type { Problem } from '../measure/measure.ts';
import { lineStart } from '../record/lines.ts';
import { versionKeys } from '../record/kind.ts';
import type { Fix } from './check.ts';
import { insert } from './fixes.ts';
import { fromProblems } from './from-problems.ts';
import type { Subject } from './subject.ts';

export const missingKey = fromProblems({
  code: 'missing-key',
  severity: 'error',
  title: 'A key is missing',
  explanation: explain({
    found: 'A key without which the file cannot be understood is missing.',
    matters:
      'A file needs to say its format version, for later formats may read the same words otherwise. A size such as `1 deg per 5 %` needs `of` where several quantities of the evidence are shares.',
    raises: `date: 2026-05-14`,
    accepts: `swing: 1
date: 2026-05-14`,
    source: 'the file format of this project.',
  }),
  fixes: writeVersion,
});

/** The line goes above the first key, below the comments that a file begins with. */
function writeVersion({ span: { start } }: Problem, subject: Subject): readonly Fix[] {
  const { text, kind } = subject.document;
  const line = `${versionKeys[kind]}: 1`;
  // A file between braces has no first line of its own.
  if (text.slice(lineStart(text, start), start).replace('\ufeff', '') !== '' || text[start] === '{')
    return [];
  const feed = text.includes('\r\n') ? '\r\n' : '\n';
  return [insert(subject, start, line + feed, `Write \`${line}\``)];
}
