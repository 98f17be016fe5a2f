// The check that shows in which unit a bare number is read.
import { explain } from './explain.ts';
import { fromProblems } from './from-problems.ts';
import type { Problem } from '../measure/measure.ts';
import type { Fix } from './check.ts';
import { measuredAt } from './entries.ts';
import { insert, textAt } from './fixes.ts';
import type { Subject } from './subject.ts';

export const bareNumber = fromProblems({
  code: 'bare-number',
  severity: 'hint',
  title: 'Unit not written',
  explanation: explain({
    found: 'The number has no unit and is read in the own unit of the quantity.',
    matters: 'Writing the unit out saves the next reader from guessing.',
    raises: `delivery:
  attack: 3 down`,
    accepts: `delivery:
  attack: 3 deg down`,
    source: 'the measure notation of this project.',
  }),
  sentence: ({ found }) => `Found ${found}.`,
  fixes: writeUnit,
});

function writeUnit(problem: Problem, subject: Subject): readonly Fix[] {
  const found = measuredAt(subject.document, problem.span);
  if (found === undefined) return [];
  const { quantity, measured } = found;
  const last =
    measured.kind === 'window' ? laterOf(measured.spans.from, measured.spans.to) : measured.spans.number;
  const number = textAt(subject, last);
  // The place of the number is unknown where YAML's quoting hides it.
  if (!/^[-+−]?[\d.]/.test(number)) return [];
  return [
    insert(subject, last.end, ` ${quantity.unit}`, `Write the unit out: \`${number} ${quantity.unit}\``),
  ];
}

/** Of a window that a direction turns round, the number that gives `from` is written last. */
function laterOf<T extends { readonly start: number }>(a: T, b: T): T {
  return a.start > b.start ? a : b;
}
