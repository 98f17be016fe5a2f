// The check that says where a window stands in the place of a single number.
import { explain } from './explain.ts';
import { parseMeasure } from '../measure/parse.ts';
import type { Problem } from '../measure/measure.ts';
import { showValue } from '../measure/show.ts';
import type { Fix } from './check.ts';
import { entryAround } from './entries.ts';
import { notPreferred, replace, textAt } from './fixes.ts';
import { fromProblems } from './from-problems.ts';
import type { Subject } from './subject.ts';

export const windowNotAllowed = fromProblems({
  code: 'window-not-allowed',
  severity: 'error',
  title: 'Window not allowed here',
  explanation: explain({
    found: 'A window `A..B` stands where one measured number belongs.',
    matters:
      'A measurement is one number with its uncertainty; windows belong in goals, plans and templates.',
    raises: `delivery:
  attack: 2..4 deg down`,
    accepts: `delivery:
  attack: 3 deg down ± 1 deg`,
    source: 'the measure notation of this project.',
  }),
  lasting: true,
  fixes: writeMiddle,
});

/**
 * Where every value within the window is equally likely, its middle stands for it with half its width over √3 as the standard
 * uncertainty (JCGM 100:2008, 4.3.7). Whether that was meant only the coach knows.
 */
function writeMiddle({ span }: Problem, subject: Subject): readonly Fix[] {
  const quantity = entryAround(subject.document, span)?.quantity;
  if (quantity === undefined) return [];
  const { value } = parseMeasure(textAt(subject, span), quantity, { window: 'only', methods: [] });
  // The wind's side cannot be told from a sign.
  const hasBearing = quantity.directions.some(({ bearing }) => bearing !== undefined);
  if (value?.kind !== 'window' || !(value.from < value.to) || hasBearing) return [];
  const u = (value.to - value.from) / 2 / Math.sqrt(3);
  const shown = showValue(quantity, (value.from + value.to) / 2, u, value.unit);
  return [notPreferred(replace(subject, span, shown, `Write its middle: \`${shown}\``))];
}
