// Reads which part of the body is meant; knows no kind of file.
import { findNearest } from '../measure/nearest.ts';
import { quote } from '../measure/quote.ts';
import { bodyWords, findBodyPlace, type BodyPlace } from '../registry/body.ts';
import type { Located } from './document.ts';
import type { Reader } from './entry.ts';

/** A problem where the words name no known part: a caution about it would never be met. */
export function readBodyPlace({ value, span }: Located<string>, reader: Reader): BodyPlace | undefined {
  const place = findBodyPlace(value);
  if (place !== undefined) return place;
  const nearest = findNearest(value, bodyWords);
  reader.problems.push({
    code: 'unknown-body-part',
    span,
    found: quote(value),
    expected: 'a part of the body, such as `lower back` or `lead wrist`',
    ...(nearest === undefined ? {} : { nearest }),
  });
  return undefined;
}
