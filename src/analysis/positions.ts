// Turns offsets of a text into lines and characters as LSP counts them; knows nothing of what the text says.
import type { Span } from '../measure/measure.ts';
import type { Position, TextRange } from './result.ts';

/** The offsets at which the lines of a text begin, with the text's length. */
export interface LineTable {
  readonly starts: readonly number[];
  readonly length: number;
  readonly text: string;
}

const lineFeed = 10;
const carriageReturn = 13;

/** Lines end at `\n`, `\r\n` or a lone `\r`, as in LSP. */
export function lineTableOf(text: string): LineTable {
  const starts = [0];
  for (let at = 0; at < text.length; at += 1) {
    const code = text.charCodeAt(at);
    if (code !== lineFeed && code !== carriageReturn) continue;
    if (code === carriageReturn && text.charCodeAt(at + 1) === lineFeed) at += 1;
    starts.push(at + 1);
  }
  return { starts, length: text.length, text };
}

/** The position of an offset; one beyond the text is taken as its end, one inside a line break as the line's end. */
export function positionAt(table: LineTable, offset: number): Position {
  const at = Math.min(Math.max(offset, 0), table.length);
  let low = 0;
  let high = table.starts.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if ((table.starts[middle] ?? 0) <= at) low = middle;
    else high = middle - 1;
  }
  const start = table.starts[low] ?? 0;
  const betweenReturnAndFeed =
    at > start && table.text.charCodeAt(at - 1) === carriageReturn && table.text.charCodeAt(at) === lineFeed;
  return { line: low, character: at - start - (betweenReturnAndFeed ? 1 : 0) };
}

export function isBefore(a: Position, b: Position): boolean {
  return a.line < b.line || (a.line === b.line && a.character < b.character);
}

export function rangeOf(table: LineTable, span: Span): TextRange {
  return { start: positionAt(table, span.start), end: positionAt(table, Math.max(span.start, span.end)) };
}
