// The check that says that a file is of a format version that is not known.
import { explain } from './explain.ts';
import { fromProblems } from './from-problems.ts';

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
});
