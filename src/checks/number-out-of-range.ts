// The check that says which number is too large to compute with.
import { explain } from './explain.ts';
import { fromProblems } from './from-problems.ts';

export const numberOutOfRange = fromProblems({
  code: 'number-out-of-range',
  severity: 'error',
  title: 'Number out of range',
  explanation: explain({
    found: 'The number is too large or too small to compute with.',
    matters: 'It is not read; most likely a digit or an exponent slipped in.',
    raises: `delivery:
  attack: 3e400 deg down`,
    accepts: `delivery:
  attack: 3 deg down`,
    source: 'IEEE 754, the range of a double.',
  }),
  lasting: true,
});
