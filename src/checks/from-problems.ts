// Makes a check out of the problems of one code that reading a document has found; knows no code by name.
import type { Problem } from '../measure/measure.ts';
import type { Check, Fix } from './check.ts';
import type { Subject } from './subject.ts';

export interface ProblemCheck extends Omit<Check, 'find' | 'kinds'> {
  readonly kinds?: Check['kinds'];
  readonly fixes?: (problem: Problem, subject: Subject) => readonly Fix[];
  /** Where nothing else was expected than what was found. */
  readonly sentence?: (problem: Problem) => string;
}

export function fromProblems(check: ProblemCheck): Check {
  const { fixes, sentence = sentenceOf, ...rest } = check;
  return {
    ...rest,
    kinds: check.kinds ?? 'all',
    find: (subject) =>
      subject.problems
        .filter((problem) => problem.code === check.code)
        .map((problem) => ({
          span: problem.span,
          message: sentence(problem),
          related: (problem.related ?? []).map((other) => ({ uri: subject.uri, ...other })),
          fixes: fixes?.(problem, subject) ?? [],
        })),
  };
}

/** "Found `cn`, perhaps meant as `cm`; expected a unit of length (mm, cm, m, in, ft, yd).": the likely word before the long list. */
export function sentenceOf(problem: Pick<Problem, 'found' | 'expected' | 'nearest'>): string {
  const { found, expected, nearest } = problem;
  const guess = nearest === undefined ? '' : `, perhaps meant as \`${nearest}\``;
  return `Found ${found}${guess}; expected ${expected}.`;
}
