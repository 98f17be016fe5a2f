// Finds every measured thing of a document with the place where it is written: readings, goals, windows, planned changes; judges none.
import type { Measure, Span, Window } from '../measure/measure.ts';
import type { Reading, SwingwrightDocument } from '../record/document.ts';
import type { Quantity } from '../registry/quantity.ts';
import type { Registry } from '../registry/registry.ts';
import { entriesOf, goalsOf, windowsOf } from './entries.ts';

export interface MeasuredPlace {
  readonly quantity: Quantity;
  readonly measured: Measure | Window;
  /** The key that it stands under; undefined for one of several readings. */
  readonly keySpan: Span | undefined;
  /** The whole of it: a number with its words, or a mapping. */
  readonly span: Span;
  /** Only what was measured is a reading; what is aimed at is none. */
  readonly reading: Reading | undefined;
}

/** In the order in which the document lists them, which is the same before and after a rewrite. */
export function measuredPlaces(document: SwingwrightDocument, registry: Registry): readonly MeasuredPlace[] {
  const kept = placesOf.get(document) ?? findPlaces(document, registry);
  placesOf.set(document, kept);
  return kept;
}

const placesOf = new WeakMap<SwingwrightDocument, readonly MeasuredPlace[]>();

function findPlaces(document: SwingwrightDocument, registry: Registry): readonly MeasuredPlace[] {
  const readings = entriesOf(document).flatMap(({ quantity, readings, keySpan }) =>
    readings.map((reading) => ({
      quantity,
      measured: reading.measure,
      keySpan: readings.length === 1 ? keySpan : undefined,
      span: reading.span,
      reading,
    })),
  );
  const goals = goalsOf(document).flatMap(({ targets }) =>
    [...targets.values()].map(({ quantity, target, keySpan, span }) => ({
      quantity,
      measured: target,
      keySpan,
      span,
      reading: undefined,
    })),
  );
  const windows = windowsOf(document).map(({ quantity, window, keySpan, span }) => ({
    quantity,
    measured: window,
    keySpan,
    span,
    reading: undefined,
  }));
  return [...readings, ...goals, ...windows, ...plannedPlaces(document, registry)];
}

function plannedPlaces(document: SwingwrightDocument, registry: Registry): readonly MeasuredPlace[] {
  if (document.kind !== 'swing') return [];
  return document.plan.flatMap(({ change, to }) => {
    const quantity = change === undefined ? undefined : registry.find(change.value);
    if (quantity === undefined || to === undefined) return [];
    return [{ quantity, measured: to.target, keySpan: undefined, span: to.span, reading: undefined }];
  });
}
