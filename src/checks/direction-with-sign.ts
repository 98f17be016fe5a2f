// The check that says which number has both a sign and a direction.
import { explain } from './explain.ts';
import { fromProblems } from './from-problems.ts';
import type { Problem } from '../measure/measure.ts';
import type { Fix } from './check.ts';
import { replace, textAt } from './fixes.ts';
import type { Subject } from './subject.ts';

export const directionWithSign = fromProblems({
  code: 'direction-with-sign',
  severity: 'error',
  title: 'Sign and direction together',
  explanation: explain({
    found: 'The number is negative and has a direction as well.',
    matters: 'Whether `-3 deg left` means left or right nobody can tell, so that one of the two must go.',
    raises: `delivery:
  path: -3 deg left`,
    accepts: `delivery:
  path: 3 deg left`,
    source: 'the measure notation of this project.',
  }),
  lasting: true,
  fixes: dropSign,
});

function dropSign(problem: Problem, subject: Subject): readonly Fix[] {
  const number = textAt(subject, problem.span);
  const unsigned = number.replace(/^[-+−]\s*/, '');
  return unsigned === number
    ? []
    : [replace(subject, problem.span, unsigned, `Drop the sign: \`${unsigned}\``)];
}
