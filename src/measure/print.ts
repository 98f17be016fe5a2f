// Writes measures and windows in the notation, so that reading them gives the same; knows nothing of documents.
import type { Measure, Notation, Window } from './measure.ts';

export { secondUnit, showValue, showWindow } from './show.ts';

/** The canonical short form; reading it gives the same value, uncertainty, method, direction and estimate. */
export function printMeasure(measure: Measure, notation: Notation): string {
  return `${measure.value} ${notation.unit}`;
}

/** The canonical `A..B UNIT [DIRECTION]`; reading it gives the same window. */
export function printWindow(window: Window, notation: Notation): string {
  return `${window.from}..${window.to} ${notation.unit}`;
}
