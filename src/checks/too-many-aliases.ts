// The check that says that aliases would make a text too large.
import { explain } from './explain.ts';
import { fromProblems } from './from-problems.ts';

export const tooManyAliases = fromProblems({
  code: 'too-many-aliases',
  severity: 'error',
  title: 'Too many aliases',
  explanation: explain({
    found: 'Aliases (`*name`) repeat so much that the text would grow beyond what is read.',
    matters: 'A few lines could otherwise fill the memory; write the values out instead.',
    raises: `a: &a [3, 3, 3, 3, 3, 3, 3, 3, 3, 3]
b: &b [*a, *a, *a, *a, *a, *a, *a, *a, *a, *a]
c: &c [*b, *b, *b, *b, *b, *b, *b, *b, *b, *b]
d: &d [*c, *c, *c, *c, *c, *c, *c, *c, *c, *c]
e: &e [*d, *d, *d, *d, *d, *d, *d, *d, *d, *d]
f: &f [*e, *e, *e, *e, *e, *e, *e, *e, *e, *e]`,
    accepts: `delivery: { attack: &steep 3 deg down }`,
    source: 'judgement, to keep reading fast and safe.',
  }),
  lasting: true,
});
