// The rewrites between the short form of a reading and its long form: `7 cm by tape` and `{ value: 7 cm, by: tape }`; nothing said is lost.
import type { Analysis } from '../analysis/result.ts';
import type { Span } from '../measure/measure.ts';
import type { Reading } from '../record/document.ts';
import { lineEnd } from '../record/lines.ts';
import { writtenMapping, type WrittenMapping } from './long-form.ts';
import type { MeasuredPlace } from './measured-place.ts';
import { isSameMeasured, keepsWords, saysTheSame, type Rewrite, type RewriteEdit } from './rewrite.ts';
import { joinNumber, writtenMeasure, type WrittenMeasure } from './written.ts';
import { lowerFirst } from '../measure/quote.ts';

export function turnForm(analysis: Analysis, place: MeasuredPlace): readonly Rewrite[] {
  const { reading, quantity } = place;
  if (reading === undefined) return [];
  const written = writtenMeasure(analysis.document.text, reading.measure);
  if (written === undefined) return [];
  const edit =
    reading.form === 'short' ? toLong(analysis, place, written) : toShort(analysis, place, written);
  if (edit === undefined || !keepsWords(analysis.document.text, edit)) return [];
  if (!saysTheSame(analysis, [edit], place, isSameMeasured)) return [];
  const title = reading.form === 'short' ? 'Write in the long form' : 'Write in the short form';
  return [{ title: `${title}: ${lowerFirst(quantity.title)}`, edits: [edit] }];
}

function toLong({ document }: Analysis, { span }: MeasuredPlace, written: WrittenMeasure): RewriteEdit {
  return { span: trimmed(document.text, span), text: longText(written) };
}

/** Between braces whatever stands around it, so that it stays on its line, before the comment there. */
export function longText({ stated, method, ...number }: WrittenMeasure, ...more: readonly string[]): string {
  const value = `${number.estimate ? '~' : ''}${joinNumber(number)}`;
  const hasUnit = stated !== undefined && /[^\d.eE+-]/.test(stated);
  const parts = [
    `value: ${quoted(value)}`,
    ...(stated === undefined
      ? []
      : [
          `give_or_take: ${quoted(hasUnit || number.unit === undefined ? stated : `${stated} ${number.unit}`)}`,
        ]),
    ...(method === undefined ? [] : [`by: ${quoted(method)}`]),
    ...more,
  ];
  return `{ ${parts.join(', ')} }`;
}

/** Only what stands unquoted between braces without being read as something else. */
const plainText = /^(?:[-~+]?[\d.]|[\p{L}])[^,[\]{}#:]*$/u;

function quoted(words: string): string {
  return plainText.test(words) ? words : JSON.stringify(words);
}

const shortKeys: ReadonlySet<string> = new Set(['value', 'give_or_take', 'by']);

/** Only where the short form can say all, comments included. */
function toShort(
  { document: { text } }: Analysis,
  { keySpan, reading }: MeasuredPlace,
  written: WrittenMeasure,
): RewriteEdit | undefined {
  const mapping = writtenMapping(text, (reading as Reading).span);
  if (mapping === undefined || [...mapping.keys.keys()].some((key) => !shortKeys.has(key))) return undefined;
  const comment = movedComment(text, mapping);
  if (comment === undefined) return undefined;
  const { stated, method, estimate } = written;
  const short =
    [
      `${estimate ? '~' : ''}${joinNumber(written)}`,
      ...(stated === undefined ? [] : [`± ${stated}`]),
      ...(method === undefined ? [] : [`by ${method}`]),
    ].join(' ') + comment;
  const { span, style } = mapping;
  if (style === 'flow' || keySpan === undefined) return { span, text: short };
  // A block that begins below its key moves up to it; a comment beside the key would end up behind the number.
  const between = text.slice(keySpan.end, span.start);
  if (!/^\s*:\s*$/.test(between)) return undefined;
  return { span: { start: keySpan.end + between.indexOf(':') + 1, end: span.end }, text: ` ${short}` };
}

/** One comment among the keys moves behind the number; where there are more, or one stands there already, each keeps its place. */
function movedComment(text: string, { comments, span }: WrittenMapping): string | undefined {
  const [only, ...others] = comments;
  if (only === undefined) return '';
  const isFree = text.slice(span.end, lineEnd(text, span.end)).trim() === '';
  return others.length === 0 && isFree ? ` ${only}` : undefined;
}

function trimmed(text: string, { start, end }: Span): Span {
  return { start, end: start + text.slice(start, end).trimEnd().length };
}
