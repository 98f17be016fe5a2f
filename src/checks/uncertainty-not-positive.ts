// The check that says which uncertainty is not above zero.
import { explain } from './explain.ts';
import type { Problem } from '../measure/measure.ts';
import type { Fix } from './check.ts';
import { replace, textAt } from './fixes.ts';
import { fromProblems } from './from-problems.ts';
import type { Subject } from './subject.ts';

export const uncertaintyNotPositive = fromProblems({
  code: 'uncertainty-not-positive',
  severity: 'error',
  title: 'Uncertainty not above zero',
  explanation: explain({
    found: 'What stands after `±` must be above zero.',
    matters: 'No measurement is exact, and a weight of one over zero would drown all the others.',
    raises: `delivery:
  attack: 3 deg down ± 0 deg`,
    accepts: `delivery:
  attack: 3 deg down ± 1 deg`,
    source: 'JCGM 100:2008, 3.3.5 and 4.1: a standard uncertainty is a positive standard deviation.',
  }),
  fixes: dropSign,
});

/** What to write in the place of zero nobody but the coach knows. */
function dropSign({ span }: Problem, subject: Subject): readonly Fix[] {
  const found = textAt(subject, span);
  const unsigned = found.replace(/^[-−]\s*/, '');
  if (unsigned === found || !/[1-9]/.test(unsigned)) return [];
  return [replace(subject, span, unsigned, `Drop the sign: \`± ${unsigned}\``)];
}
