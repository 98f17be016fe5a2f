// Makes one finding, on the reference, of all that is of one kind in a file of shots; knows no kind.
import type { Problem } from '../measure/measure.ts';
import { lineOf, lineStartsOf } from '../record/lines.ts';
import type { RawFinding } from './check.ts';
import { sentenceOf } from './from-problems.ts';
import type { Subject } from './subject.ts';

/** More than these are not listed one by one. */
const mostListed = 5;

/** `total` may be more than the problems given; `nouns` are one and many. */
export function listedShotProblems(
  { document, shots }: Subject,
  problems: readonly Problem[],
  total: number,
  [one, many]: readonly [string, string],
): readonly RawFinding[] {
  const [first] = problems;
  if (first === undefined || shots?.file === undefined) return [];
  if (document.kind !== 'swing' || document.shotsFile === undefined) return [];
  const { uri, file } = shots;
  const starts = lineStartsOf(file.text);
  const line = lineOf(starts, first.span.start) + 1;
  const sentence = sentenceOf(first);
  const message =
    total === 1
      ? `Line ${line}: ${lowered(sentence)}`
      : `${total} ${many} not read, the first ${one} in line ${line}: ${lowered(sentence)}`;
  const related = problems
    .slice(0, mostListed)
    .map((problem) => ({ uri, span: problem.span, message: sentenceOf(problem) }));
  return [{ span: document.shotsFile.span, message, related }];
}

function lowered(sentence: string): string {
  return sentence.charAt(0).toLowerCase() + sentence.slice(1);
}
