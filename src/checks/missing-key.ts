// The check that says which key a file cannot do without.
import { explain } from './explain.ts';
import { fromProblems } from './from-problems.ts';

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
});
