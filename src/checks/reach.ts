// Finds the readings and targets that lie outside a range of their quantity; the range is the caller's.
import type { Span } from '../measure/measure.ts';
import type { Box } from '../judgement/walk.ts';
import type { Reader } from '../judgement/room.ts';
import { isOutside } from '../registry/registry.ts';
import type { Quantity, Range } from '../registry/quantity.ts';
import { clubKindAimedWith, clubKindOf, entriesOf, targetsOf } from './entries.ts';
import { handOf } from './handed.ts';
import type { Subject } from './subject.ts';

export interface Outlier {
  readonly quantity: Quantity;
  /** SI; of a window, the end that lies outside. */
  readonly value: number;
  readonly span: Span;
}

/** Fault books and templates are as for a right-handed player; a window of a record or a student's file as this one sees it. */
export function readerOf(subject: Subject, clubKind: string | undefined): Reader {
  const { document, registry } = subject;
  const isOfPlayer = document.kind === 'swing' || document.kind === 'student';
  return { hand: isOfPlayer ? handOf(subject) : 'right', registry, clubKind };
}

/** `rangeOf` is given the hand, and the kind of club that the reading was taken with or of, where they are known. */
export function readingsOutside(
  subject: Subject,
  rangeOf: (quantity: Quantity, reader: Reader) => Range | undefined,
): readonly (Outlier & { readonly clubKind: string | undefined })[] {
  return entriesOf(subject.document).flatMap((entry) => {
    const { quantity, readings } = entry;
    const clubKind = clubKindOf(subject, entry);
    const range = rangeOf(quantity, readerOf(subject, clubKind));
    if (range === undefined) return [];
    return readings
      .filter(({ measure }) => isOutside(measure.value, range))
      .map(({ measure, span }) => ({ quantity, value: measure.value, span, clubKind }));
  });
}

/** `rangeOf` is given the hand, and the kind of club that is aimed with, where they are known. */
export function targetsOutside(
  subject: Subject,
  rangeOf: (quantity: Quantity, reader: Reader) => Range | undefined,
): readonly (Outlier & { readonly clubKind: string | undefined })[] {
  return targetsOf(subject.document).flatMap((placed) => {
    const { quantity, target, span } = placed;
    const clubKind = clubKindAimedWith(subject, placed);
    const range = rangeOf(quantity, readerOf(subject, clubKind));
    if (range === undefined) return [];
    const ends = target.kind === 'window' ? [target.from, target.to] : [target.value];
    const value = ends.find((end) => isOutside(end, range));
    return value === undefined ? [] : [{ quantity, value, span, clubKind }];
  });
}

/** All values that these quantities can have, or those in a narrower range of them. */
export function boxOf(
  quantities: readonly Quantity[],
  rangeOf: (quantity: Quantity) => Pick<Range, 'min' | 'max'> = ({ bounds }) => bounds,
): Box {
  const ranges = quantities.map(rangeOf);
  return { min: ranges.map(({ min }) => min), max: ranges.map(({ max }) => max) };
}
