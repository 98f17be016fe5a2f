// All rewrites that are offered at a place, found or not found anything there; each is in a file of its own.
import { lineTableOf, rangeOf, type LineTable } from '../analysis/positions.ts';
import type { Analysis } from '../analysis/result.ts';
import { takeTypicalShot } from '../checks/typical-shot.ts';
import { convertUnit } from './convert-unit.ts';
import { markDoubtful } from './mark-doubtful.ts';
import { measuredPlaces, type MeasuredPlace } from './measured-place.ts';
import { touches } from './places.ts';
import { isReadWell, type Rewrite } from './rewrite.ts';
import type { TextRange } from './shapes.ts';
import { storePrediction } from './store-prediction.ts';
import { takeDoubtBack } from './take-doubt-back.ts';
import { stateUncertainty } from './state-uncertainty.ts';
import { addWhatTemplateAsks } from './template-asks.ts';
import { turnDirection } from './turn-direction.ts';
import { turnForm } from './turn-form.ts';

const ofMeasured: readonly ((analysis: Analysis, place: MeasuredPlace) => readonly Rewrite[])[] = [
  convertUnit,
  turnDirection,
  stateUncertainty,
  turnForm,
  markDoubtful,
  takeDoubtBack,
];

/** Of one measured thing at most: where a selection touches several, they are left alone. */
export function rewritesAt(analysis: Analysis, range: TextRange): readonly Rewrite[] {
  const table = lineTableOf(analysis.document.text);
  const here = measuredPlaces(analysis.document, analysis.subject.registry).filter(({ span, keySpan }) =>
    [span, ...(keySpan === undefined ? [] : [keySpan])].some((place) =>
      touches(rangeOf(table, place), range),
    ),
  );
  const [place] = here;
  return [
    ...(place === undefined || here.length > 1 ? [] : rewritesOf(analysis, place)),
    ...addWhatTemplateAsks(analysis, table, range),
    ...typicalShot(analysis, table, range),
    ...storePrediction(analysis, table, range),
  ];
}

/** A cursor rests on one thing for many requests. */
const kept = new WeakMap<Analysis, Map<MeasuredPlace, readonly Rewrite[]>>();

function rewritesOf(analysis: Analysis, place: MeasuredPlace): readonly Rewrite[] {
  const known = kept.get(analysis) ?? new Map<MeasuredPlace, readonly Rewrite[]>();
  kept.set(analysis, known);
  const found =
    known.get(place) ??
    (isReadWell(analysis, place) ? ofMeasured.flatMap((rewrite) => rewrite(analysis, place)) : []);
  known.set(place, found);
  return found;
}

/** Offered on the keys `shots` and `flight`. */
function typicalShot(
  { document, subject }: Analysis,
  table: LineTable,
  range: TextRange,
): readonly Rewrite[] {
  const isHere = document.outline.some(
    ({ name, nameSpan }) =>
      (name === 'shots' || name === 'flight') && touches(rangeOf(table, nameSpan), range),
  );
  const fix = isHere ? takeTypicalShot(subject) : undefined;
  return fix === undefined ? [] : [fix];
}
