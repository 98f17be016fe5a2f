// The check that says that a text nests deeper than is read.
import { explain } from './explain.ts';
import { fromProblems } from './from-problems.ts';

export const tooDeep = fromProblems({
  code: 'too-deep',
  severity: 'error',
  title: 'Nested too deep',
  explanation: explain({
    found: 'Lists or mappings nest deeper than anything that is known here.',
    matters: 'The text from there on is not read.',
    raises: `delivery: [[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]`,
    accepts: `delivery: { attack: [3 deg down, 4 deg down] }`,
    source: 'judgement, to keep reading fast and safe.',
  }),
  lasting: true,
});
