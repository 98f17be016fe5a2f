// The check that says which key stands twice in one mapping.
import { explain } from './explain.ts';
import { fromProblems } from './from-problems.ts';

export const duplicateKey = fromProblems({
  code: 'duplicate-key',
  severity: 'error',
  title: 'A key stands twice',
  explanation: explain({
    found: 'The same key stands twice in one mapping.',
    matters: 'Only one of the two values counts; several readings of one thing belong in a list.',
    raises: `delivery:
  attack: 3 deg down
  attack: 4 deg down`,
    accepts: `delivery:
  attack: [3 deg down, 4 deg down]`,
    source: 'YAML 1.2.2, section 3.2.1.1: keys of a mapping are unique.',
  }),
  lasting: true,
});
