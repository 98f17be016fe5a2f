// The mapping of one reading as it stands in the text: its keys, its braces or its indentation; knows no rewrite.
import type { Span } from '../measure/measure.ts';
import { lineEnd, lineStart } from '../record/lines.ts';
import { readTree } from '../record/read-tree.ts';

export interface LongKey {
  readonly keySpan: Span;
  /** The empty place behind the colon where nothing is written. */
  readonly valueSpan: Span;
}

export interface WrittenMapping {
  readonly style: 'flow' | 'block';
  readonly span: Span;
  readonly keys: ReadonlyMap<string, LongKey>;
  /** Those between its first and last character. */
  readonly comments: readonly string[];
}

/** The mapping that stands at `span`; undefined where it cannot be read alone (an alias, a line that YAML cannot read). */
export function writtenMapping(text: string, span: Span): WrittenMapping | undefined {
  const end = span.start + text.slice(span.start, span.end).trimEnd().length;
  const column = span.start - lineStart(text, span.start);
  const { tree, comments, isDamaged } = readTree(' '.repeat(column) + text.slice(span.start, end), []);
  if (tree?.kind !== 'map' || isDamaged) return undefined;
  const move = ({ start, end: last }: Span): Span => ({
    start: start - column + span.start,
    end: last - column + span.start,
  });
  return {
    style: text[span.start] === '{' ? 'flow' : 'block',
    span: { start: span.start, end },
    keys: new Map(
      [...tree.pairs].map(([key, pair]) => [
        key,
        { keySpan: move(pair.keySpan), valueSpan: move(pair.value.span) },
      ]),
    ),
    comments: [...comments.values()].map((comment) => comment.trimEnd()),
  };
}

/** Puts `key: value` behind the value of another key: after a comma, or on a line of its own as far in. */
export function insertAfter(
  text: string,
  { style, span }: WrittenMapping,
  { keySpan, valueSpan }: LongKey,
  put: string,
): { readonly span: Span; readonly text: string } {
  const end = Math.max(
    keySpan.end,
    valueSpan.start + text.slice(valueSpan.start, valueSpan.end).trimEnd().length,
  );
  if (style === 'flow') return { span: { start: end, end }, text: `, ${put}` };
  const column = span.start - lineStart(text, span.start);
  const at = lineEnd(text, end);
  const feed = text.includes('\r\n') ? '\r\n' : '\n';
  return { span: { start: at, end: at }, text: `${feed}${' '.repeat(column)}${put}` };
}

/** Writes the value of a key that has none yet, or another one. */
export function writeValue(
  text: string,
  { keySpan, valueSpan }: LongKey,
  put: string,
): { readonly span: Span; readonly text: string } {
  if (valueSpan.start < valueSpan.end) return { span: valueSpan, text: put };
  const at = text.indexOf(':', keySpan.end) + 1;
  return { span: { start: at, end: at }, text: ` ${put}` };
}
