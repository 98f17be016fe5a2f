// What a growing selection takes, step by step: the word, the part of a measure, the value, the entry, the section, the file.
import { lineTableOf, rangeOf } from '../analysis/positions.ts';
import type { Analysis } from '../analysis/result.ts';
import type { Span } from '../measure/measure.ts';
import type { OutlineNode } from '../record/document.ts';
import { holds, offsetAt } from './places.ts';
import type { Position, SelectionRange } from './shapes.ts';

export function findSelectionRanges(
  { document }: Analysis,
  positions: readonly Position[],
): SelectionRange[] {
  const { text, outline } = document;
  const table = lineTableOf(text);
  return positions.map((position) => {
    const offset = offsetAt(table, position);
    const steps = stepsAt(offset, text, outline);
    let range: SelectionRange = { range: rangeOf(table, steps[0]!) };
    for (const step of steps.slice(1)) range = { range: rangeOf(table, step), parent: range };
    return range;
  });
}

/** From the whole file inwards; each step holds the next one and is larger. */
function stepsAt(offset: number, text: string, outline: readonly OutlineNode[]): Span[] {
  const steps: Span[] = [{ start: 0, end: text.length }];
  const add = (span: Span): void => {
    const last = steps.at(-1)!;
    const isInside = span.start >= last.start && span.end <= last.end && holds(span, offset);
    if (isInside && span.end > span.start && span.end - span.start < last.end - last.start) steps.push(span);
  };
  for (let nodes = outline; ;) {
    const node = nodes.find(({ span, nameSpan }) => holds(span, offset) || holds(nameSpan, offset));
    if (node === undefined) break;
    const start = Math.min(node.span.start, node.nameSpan.start);
    add({ start, end: Math.max(start, trimmedEnd(text, node.span.end)) });
    if (holds(node.nameSpan, offset)) add(node.nameSpan);
    else {
      const value = valueOf(node, text);
      add(value);
      if (node.children.length === 0) addParts(value, offset, text, add);
    }
    nodes = node.children;
  }
  add(wordAround(offset, text));
  return steps;
}

/** Behind the colon; what an item of a list is named by stands inside of it and is none. */
function valueOf({ span, nameSpan }: OutlineNode, text: string): Span {
  const colon = /^['"]?\s*:\s*/.exec(text.slice(nameSpan.end, span.end))?.[0].length ?? 0;
  const start = nameSpan.end > nameSpan.start && colon > 0 ? nameSpan.end + colon : span.start;
  return { start, end: Math.max(start, trimmedEnd(text, span.end)) };
}

/** Quotes, one of several measurements, and in one the number with its unit, what follows `±`, and what follows `by`. */
function addParts(value: Span, offset: number, text: string, add: (span: Span) => void): void {
  let part = value;
  for (const separator of [/[[\],{}\n]/g, /\s+(?=±|\+-|by\s)/g]) {
    const cut = cutAround(part, offset, text, separator);
    add(cut);
    part = cut;
  }
}

/** What stands between the separators around the offset, without the blanks at its ends. */
function cutAround(part: Span, offset: number, text: string, separator: RegExp): Span {
  let { start, end } = part;
  for (const { index, 0: found } of text.slice(part.start, part.end).matchAll(separator)) {
    const at = part.start + index;
    if (at + found.length <= offset) start = at + found.length;
    else if (at >= offset) {
      end = at;
      break;
    }
  }
  const inner = text.slice(start, end);
  const lead = inner.length - inner.trimStart().length;
  return { start: start + lead, end: Math.max(start + lead, start + inner.trimEnd().length) };
}

function wordAround(offset: number, text: string): Span {
  const isPart = (at: number): boolean => /[\p{L}\p{N}\p{M}_.%°-]/u.test(text.charAt(at));
  let [start, end] = [offset, offset];
  while (start > 0 && isPart(start - 1)) start -= 1;
  while (end < text.length && isPart(end)) end += 1;
  return { start, end };
}

function trimmedEnd(text: string, end: number): number {
  return text.slice(0, end).trimEnd().length;
}
