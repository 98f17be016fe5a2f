// The check that says where a text is no YAML.
import { explain } from './explain.ts';
import { fromProblems } from './from-problems.ts';
import { mendSyntax } from './mend-syntax.ts';

export const yamlSyntax = fromProblems({
  code: 'yaml-syntax',
  severity: 'error',
  title: 'The text is not YAML',
  explanation: explain({
    found: 'The text cannot be read as YAML at this place.',
    matters:
      'What follows it may be read wrongly or not at all, so other findings can wait until this is mended.',
    raises: `delivery: { attack: 3 deg down`,
    accepts: `delivery: { attack: 3 deg down }`,
    source: 'YAML 1.2.2, as the yaml package reads it.',
  }),
  lasting: true,
  fixes: mendSyntax,
});
