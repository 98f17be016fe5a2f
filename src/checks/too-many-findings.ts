// The check that says that only the gravest findings of a file are told; it comes last, since it counts what the others found.
import { mostFindings, type Check } from './check.ts';
import { explain } from './explain.ts';

export const tooManyFindings: Check = {
  code: 'too-many-findings',
  severity: 'information',
  title: 'Too many findings',
  explanation: explain({
    found: 'More was found in the file than is told.',
    matters: 'The gravest findings are told first; the others come to light as those are mended.',
    accepts: `delivery: { attack: 3 deg down }`,
    source: 'judgement, to keep editors and reports usable.',
  }),
  kinds: 'all',
  lasting: true,
  find: (_, { standing }) =>
    standing <= mostFindings
      ? []
      : [
          {
            span: { start: 0, end: 0 },
            message: `Found more than ${mostFindings} findings; expected a file with fewer, and only the gravest ${mostFindings} are told.`,
          },
        ],
};
