// Analyses invented files held in memory, as an editor would, and reads the marks that tests put below lines.
import assert from 'node:assert/strict';
import { analyse } from '../../src/analysis/analyse.ts';
import type { AnalysisCache } from '../../src/analysis/cache.ts';
import type { Analysis, FileState, TextRange } from '../../src/analysis/result.ts';
import type { TextEdit } from '../../src/checks/check.ts';

/** File names within one folder; the first is the one that is analysed. */
export type Files = Readonly<Record<string, string>>;

export const folder = 'file:///lessons/2026/';

export function filesOf(source: string | Files): Files {
  return typeof source === 'string' ? { 'lesson.swing.yaml': source } : source;
}

export function uriOf(name: string): string {
  return folder + name;
}

export function firstUri(files: Files): string {
  return uriOf(Object.keys(files)[0]!);
}

/** Every file that is not in `files` is missing. */
export function analyseFiles(source: string | Files, cache?: AnalysisCache): Analysis {
  const files = filesOf(source);
  const byUri = new Map(Object.entries(files).map(([name, text]) => [uriOf(name), text]));
  const file = (uri: string): FileState => {
    const text = byUri.get(uri);
    return text === undefined ? { kind: 'missing' } : { kind: 'text', text };
  };
  return analyse(firstUri(files), { file }, cache);
}

export interface Mark {
  readonly code: string;
  readonly severity: string;
  readonly range: TextRange;
}

/** A line `# ^^^ error[code]` below a line; the number sign may be left out, and `|` marks an empty place. */
const markLine = /^([ #]*)(\^+|\|) (error|warning|information|hint)\[([a-z/-]+)\]$/;

/** The text without its mark lines, and what they mark in the line above them. */
export function readMarks(source: string): { readonly text: string; readonly marks: readonly Mark[] } {
  const lines: string[] = [];
  const marks: Mark[] = [];
  for (const line of source.split('\n')) {
    const match = markLine.exec(line);
    if (match === null) {
      lines.push(line);
      continue;
    }
    const [, before = '', carets = '', severity = '', code = ''] = match;
    const start = { line: lines.length - 1, character: before.length };
    const width = carets === '|' ? 0 : carets.length;
    marks.push({ code, severity, range: { start, end: { ...start, character: start.character + width } } });
  }
  return { text: lines.join('\n'), marks };
}

/** The findings of this code are those marked in the first file, each with its severity and its exact range. */
export function assertMarked(code: string, source: string | Files): Analysis {
  const files = filesOf(source);
  const [first = ''] = Object.keys(files);
  const { text, marks } = readMarks(files[first]!);
  const analysis = analyseFiles({ ...files, [first]: text });
  const found = analysis.findings
    .filter((finding) => finding.code === code)
    .map(({ severity, range }) => ({ code, severity, range }));
  assert.deepEqual(found, marks, messagesOf(analysis));
  return analysis;
}

/** Nothing of this code is found. */
export function assertNone(code: string, source: string | Files): Analysis {
  const analysis = analyseFiles(source);
  const codes = analysis.findings.map((finding) => finding.code);
  assert.ok(!codes.includes(code), messagesOf(analysis));
  return analysis;
}

/** What is found, in order, but for the hints of what a short text leaves out. */
export function codesOf({ findings }: Analysis): readonly string[] {
  return findings.map(({ code }) => code).filter((code) => code !== 'no-value-yet');
}

export function messageOf(analysis: Analysis, code: string): string {
  return analysis.findings.find((finding) => finding.code === code)?.message ?? '';
}

/** The preferred fix of the first finding of this code, applied; the finding is gone then. */
export function assertFixedTo(code: string, source: string | Files, expected: string): void {
  const files = filesOf(source);
  const [first = ''] = Object.keys(files);
  const finding = analyseFiles(files).findings.find((found) => found.code === code);
  const fix = finding?.fixes[0];
  assert.ok(fix, `no fix for ${code}`);
  const fixed = applied(files[first]!, fix.edits);
  assert.equal(fixed, expected);
  assertNone(code, { ...files, [first]: fixed });
}

export function applied(text: string, edits: readonly TextEdit[]): string {
  return [...edits]
    .sort((a, b) => b.span.start - a.span.start)
    .reduce((done, { span, text: put }) => done.slice(0, span.start) + put + done.slice(span.end), text);
}

function messagesOf({ findings }: Analysis): string {
  return findings.map(({ code, message, range }) => `${range.start.line}: ${code}: ${message}`).join('\n');
}
