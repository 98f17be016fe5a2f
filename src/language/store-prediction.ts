// The rewrite that keeps in the record what its plan is predicted to lead to, or brings what is kept up to date; computes nothing.
import { askedFor, forecastOf } from '../analysis/plan.ts';
import { rangeOf, type LineTable } from '../analysis/positions.ts';
import type { Analysis } from '../analysis/result.ts';
import { predictedEdits } from '../checks/predicted-edits.ts';
import type { Span } from '../measure/measure.ts';
import { touches } from './places.ts';
import type { Rewrite } from './rewrite.ts';
import type { TextRange } from './shapes.ts';

/** Offered in `plan`, on `predicted`, and on the record's first key where nothing is kept yet. */
export function storePrediction(
  { document, subject, account }: Analysis,
  table: LineTable,
  range: TextRange,
): readonly Rewrite[] {
  if (document.kind !== 'swing' || document.plan.length === 0) return [];
  const { outline, text } = document;
  const blocks = outline.filter(({ name }) => name === 'plan' || name === 'predicted');
  const places: Span[] = blocks.map(({ nameSpan, span }) => ({
    start: nameSpan.start,
    end: Math.max(nameSpan.end, span.end),
  }));
  const first = /^swing(?=[ \t]*:)/m.exec(text);
  if (first !== null && blocks.every(({ name }) => name !== 'predicted'))
    places.push({ start: first.index, end: first.index + first[0].length });
  const isHere = places.some((place) => touches(rangeOf(table, place), range));
  const forecast = isHere ? forecastOf(subject, account) : undefined;
  if (forecast === undefined || forecast.changes.length === 0) return [];
  const edits = predictedEdits(subject, document, {
    prediction: forecast.whole,
    further: askedFor(subject, forecast),
    coverage: subject.workspace?.document.coverage ?? 1,
  });
  return edits.length === 0 ? [] : [{ title: 'Store what this plan predicts', edits }];
}
