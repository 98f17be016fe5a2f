// The hover in a fault book: what a quantity in an expression means and which way it counts, and which fault overrides which.
import { readerOf } from '../checks/reach.ts';
import type { Analysis } from '../analysis/result.ts';
import type { Span } from '../measure/measure.ts';
import type { FaultFile } from '../record/document.ts';
import { lastNameIn } from '../record/reference.ts';
import type { Quantity } from '../registry/quantity.ts';
import { describe, practice, titleOf } from './hover-entry.ts';
import type { Remark } from './hover.ts';
import { code, escapeMarkdown } from './markdown.ts';
import { holds } from './places.ts';

export function hoverOnFaultBook({ document, subject }: Analysis, offset: number): Remark | undefined {
  if (document.kind !== 'faults') return undefined;
  const named = [...document.faults.values()].find(({ id }) => holds(id.span, offset));
  const lower = named && subject.faultBooks.find((book) => book.document.faults.has(named.id.value));
  if (named !== undefined && lower !== undefined) {
    const title = `**${escapeMarkdown(named.title ?? named.id.value)}**`;
    const name = lastNameIn(lower.uri);
    return {
      span: named.id.span,
      lines: [title, `Takes the place of the fault of this name in ${code(name)}.`],
    };
  }
  const span = idAt(document, offset);
  const quantity = span && subject.registry.find(document.text.slice(span.start, span.end));
  return (
    quantity && {
      span,
      lines: [
        titleOf(quantity),
        ...describe(quantity),
        ...signs(quantity),
        practice(quantity, readerOf(subject, undefined)),
      ],
    }
  );
}

/** The id that stands here, in an expression, an effect or a change. */
function idAt({ text, faults }: FaultFile, offset: number): Span | undefined {
  const places = [...faults.values()].flatMap(({ evidence, tendsTo, changes }) => [
    ...evidence.map(({ expression }) => expression.span),
    ...tendsTo.flatMap(({ effect, of }) => [effect.span, ...(of === undefined ? [] : [of.span])]),
    ...changes.map(({ change }) => change.span),
  ]);
  const place = places.find((span) => holds(span, offset));
  if (place === undefined) return undefined;
  const word = [...text.slice(place.start, place.end).matchAll(/[\w.]+/g)]
    .map(({ index, 0: { length } }): Span => ({
      start: place.start + index,
      end: place.start + index + length,
    }))
    .find((span) => holds(span, offset));
  return word;
}

/** "In an expression it is positive forward, negative backward." */
function signs({ directions, lateral }: Quantity): readonly string[] {
  const word = (sign: 1 | -1): string | undefined =>
    directions.find((direction) => direction.sign === sign && direction.bearing === undefined)?.word;
  const [positive, negative] = [word(1), word(-1)];
  if (positive === undefined || negative === undefined) return [];
  const mirrored = lateral
    ? ', as for a right-handed player; for a left-handed one the two change places'
    : '';
  return [`In an expression it is positive ${positive} and negative ${negative}${mirrored}.`];
}
