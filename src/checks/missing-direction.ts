// The check that says which number needs a direction.
import { explain } from './explain.ts';
import type { Problem } from '../measure/measure.ts';
import type { Fix } from './check.ts';
import { entryAround } from './entries.ts';
import { insert, notPreferred } from './fixes.ts';
import { fromProblems } from './from-problems.ts';
import type { Subject } from './subject.ts';

export const missingDirection = fromProblems({
  code: 'missing-direction',
  severity: 'error',
  title: 'Direction missing',
  explanation: explain({
    found: 'The number needs a direction and has none.',
    matters:
      'The wind from ahead shortens a shot and the wind from behind lengthens it; a window that runs from one side to the other needs a direction at both ends.',
    raises: `conditions:
  wind: 3 m/s`,
    accepts: `conditions:
  wind: 3 m/s from left`,
    source: 'the measure notation of this project.',
  }),
  lasting: true,
  fixes: writeWord,
});

/** None is more likely than another. */
function writeWord({ span }: Problem, subject: Subject): readonly Fix[] {
  const directions = entryAround(subject.document, span)?.quantity.directions ?? [];
  return directions.map(({ word }) =>
    notPreferred(insert(subject, span.end, ` ${word}`, `Write the direction: \`${word}\``)),
  );
}
