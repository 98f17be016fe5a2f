// From positions to offsets, the text of a line, and whether two ranges meet; the way back is in the analysis.
import { isBefore, type LineTable } from '../analysis/positions.ts';
import type { Position, TextRange } from '../analysis/result.ts';
import type { Span } from '../measure/measure.ts';

/** The offset of a position; a column beyond its line is taken as the line's end, a line beyond the text as the text's end. */
export function offsetAt(table: LineTable, { line, character }: Position): number {
  const start = table.starts[Math.max(0, line)];
  return start === undefined ? table.length : start + Math.min(character, lineText(table, line).length);
}

/** One line without its end; empty beyond the last line. */
export function lineText({ starts, text }: LineTable, line: number): string {
  const start = starts[line];
  return start === undefined ? '' : text.slice(start, starts[line + 1]).replace(/[\r\n]+$/, '');
}

/** Whether a cursor at `offset` is on the span; just behind the last character counts. */
export function holds(span: Span, offset: number): boolean {
  return span.start <= offset && offset <= span.end;
}

/** Whether two ranges share a place; ends that touch count. */
export function touches(a: TextRange, b: TextRange): boolean {
  return !isBefore(a.end, b.start) && !isBefore(b.end, a.start);
}

export { isBefore };
