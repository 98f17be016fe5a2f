// The check that shows in which direction a number without a word is read.
import { directionPlace, directionWords } from '../measure/bare-direction.ts';
import type { Problem } from '../measure/measure.ts';
import type { Fix } from './check.ts';
import { measuredAt } from './entries.ts';
import { explain } from './explain.ts';
import { insert, notPreferred } from './fixes.ts';
import { fromProblems } from './from-problems.ts';
import type { Subject } from './subject.ts';

export const bareDirection = fromProblems({
  code: 'bare-direction',
  severity: 'hint',
  title: 'Direction not written',
  explanation: explain({
    found: 'The number has neither a direction word nor a sign and is read in the first direction.',
    matters:
      'A ball 9 cm from the lead heel lies behind it more often than ahead; writing the word out leaves no doubt.',
    raises: `checkpoints:
  address:
    ball_position: 9 cm`,
    accepts: `checkpoints:
  address:
    ball_position: 9 cm behind`,
    source: 'the measure notation of this project.',
  }),
  fixes: writeEither,
});

function writeEither(problem: Problem, subject: Subject): readonly Fix[] {
  const found = measuredAt(subject.document, problem.span);
  if (found === undefined) return [];
  const { text } = subject.document;
  // The place of the number is unknown where YAML's quoting hides it.
  if (!/[\d.]/.test(text.charAt(problem.span.start))) return [];
  const at = directionPlace(found.measured, text);
  return directionWords(found.quantity).map((word) =>
    notPreferred(insert(subject, at, ` ${word}`, `Write the direction: \`${word}\``)),
  );
}
