// Reads marks out of a test's text: below a line, carets under the characters and the code of the problem that stands there.
import assert from 'node:assert/strict';
import type { Problem } from '../../src/measure/measure.ts';
import type { FileKind, SwingwrightDocument } from '../../src/record/document.ts';
import { parseDocument } from '../../src/record/parse.ts';

export interface Mark {
  readonly code: string;
  readonly start: number;
  readonly end: number;
}

/** `   ^^^ code`; a leading number sign may hold the place of the first column, and `|` marks an empty place. */
const markLine = /^([ #]*)(\^+|\|) ([a-z-]+)$/;

/** The text without its mark lines, and what they mark in the line above, in offsets. */
export function readMarks(source: string): { readonly text: string; readonly marks: readonly Mark[] } {
  const lines: string[] = [];
  const marks: Mark[] = [];
  let lineStart = 0;
  let next = 0;
  for (const line of source.split('\n')) {
    const match = markLine.exec(line);
    if (match === null) {
      lines.push(line);
      lineStart = next;
      next += line.length + 1;
      continue;
    }
    const [, before = '', carets = '', code = ''] = match;
    const start = lineStart + before.length;
    marks.push({ code, start, end: start + (carets === '|' ? 0 : carets.length) });
  }
  return { text: lines.join('\n'), marks };
}

export function marksOf(problems: readonly Problem[]): readonly Mark[] {
  return problems.map(({ code, span }) => ({ code, ...span }));
}

/** The problems of the document are those marked in its text, no more and no fewer. */
export function assertMarked(kind: FileKind, source: string): SwingwrightDocument {
  const { text, marks } = readMarks(source);
  const document = parseDocument(kind, text);
  const inOrder = [...marks].sort((a, b) => a.start - b.start || a.end - b.end);
  assert.deepEqual(marksOf(document.problems), inOrder, sentencesOf(document));
  return document;
}

/** What is found and expected, a line each. */
export function sentencesOf({ problems, text }: SwingwrightDocument): string {
  return problems
    .map(({ code, span, found, expected, nearest }) => {
      const place = JSON.stringify(text.slice(span.start, span.end));
      return `${code} at ${span.start} ${place}: found ${found}; expected ${expected} (${nearest ?? 'none near'})`;
    })
    .join('\n');
}
