// The rewrites that take a doubt about one reading back: `doubtful: true` and `~` go, and all else stays; knows no other mark.
import type { Analysis } from '../analysis/result.ts';
import type { Span } from '../measure/measure.ts';
import { lineEnd, lineStart } from '../record/lines.ts';
import { writtenMapping, type LongKey } from './long-form.ts';
import type { MeasuredPlace } from './measured-place.ts';
import { isSameMeasured, saysTheSame, type Rewrite, type RewriteEdit } from './rewrite.ts';

export function takeDoubtBack(analysis: Analysis, place: MeasuredPlace): readonly Rewrite[] {
  const { reading, measured } = place;
  if (reading === undefined) return [];
  const known = { ...place, reading: { ...reading, doubtful: false } };
  const counted = { ...place, measured: { ...measured, estimate: false } };
  return [
    ...(reading.doubtful
      ? offered(analysis, place, 'Mark it no longer doubtful', withoutKey(analysis, place), known)
      : []),
    ...(reading.measure.estimate
      ? offered(analysis, place, 'Mark it no estimate', withoutSign(analysis, place), counted)
      : []),
  ];
}

/** Only where the text then reads as `meant`. */
function offered(
  analysis: Analysis,
  place: MeasuredPlace,
  title: string,
  edit: RewriteEdit | undefined,
  meant: MeasuredPlace,
): readonly Rewrite[] {
  if (edit === undefined) return [];
  const isRight = saysTheSame(analysis, [edit], place, (_, after) => isSameMeasured(meant, after));
  return isRight ? [{ title, edits: [edit] }] : [];
}

function withoutSign({ document: { text } }: Analysis, { reading }: MeasuredPlace): RewriteEdit | undefined {
  const { start } = reading!.measure.spans.number;
  const sign = /~\s*$/.exec(text.slice(Math.max(0, start - mostSpace), start));
  return sign === null ? undefined : { span: { start: start - sign[0].length, end: start }, text: '' };
}

/** Characters between the sign and its number that are looked through. */
const mostSpace = 40;

/** With its comma, or its line; a comment there would lose what it is about. */
function withoutKey({ document: { text } }: Analysis, { span }: MeasuredPlace): RewriteEdit | undefined {
  const mapping = writtenMapping(text, span);
  const keys = [...(mapping?.keys ?? [])];
  const at = keys.findIndex(([key]) => key === 'doubtful');
  const [before, own, after] = [keys[at - 1]?.[1], keys[at]?.[1], keys[at + 1]?.[1]];
  if (mapping === undefined || own === undefined || keys.length < 2) return undefined;
  const gone =
    mapping.style === 'block'
      ? lineOf(text, own)
      : before === undefined
        ? { start: own.keySpan.start, end: after!.keySpan.start }
        : { start: endOf(text, before), end: endOf(text, own) };
  if (gone === undefined || text.slice(gone.start, gone.end).includes('#')) return undefined;
  return { span: gone, text: '' };
}

/** The line with the break before it; undefined where something else stands there too, such as the dash of a list. */
function lineOf(text: string, { keySpan }: LongKey): Span | undefined {
  const start = lineStart(text, keySpan.start);
  if (text.slice(start, keySpan.start).trim() !== '' || start === 0) return undefined;
  return { start: lineEnd(text, lineStart(text, start - 1)), end: lineEnd(text, start) };
}

function endOf(text: string, { keySpan, valueSpan }: LongKey): number {
  if (valueSpan.start >= valueSpan.end) return text.indexOf(':', keySpan.end) + 1;
  return valueSpan.start + text.slice(valueSpan.start, valueSpan.end).trimEnd().length;
}
