// Where the comment that accepts a finding goes; knows only how the comment is written, not what the finding means.
import { lineTableOf, rangeOf, type LineTable } from '../analysis/positions.ts';
import type { Analysis, Finding } from '../analysis/result.ts';
import { noReasonYet } from '../checks/silence-without-reason.ts';
import { findCheck } from '../checks/table.ts';
import { parseDocument } from '../record/parse.ts';
import { builtIn } from '../registry/registry.ts';
import { holds, lineText, offsetAt } from './places.ts';
import type { TextRange } from './shapes.ts';

/** A comment in three parts, so that an editor can put the cursor on the reason. */
export interface Acceptance {
  readonly range: TextRange;
  readonly before: string;
  readonly reason: string;
  readonly after: string;
  /** How many findings of this code go: a comment covers all of them on its line. */
  readonly count: number;
}

interface Insertion {
  readonly offset: number;
  readonly before: string;
  readonly after: string;
}

/** The comment and its place; undefined where the text there cannot hold a comment (inside a text of several lines). */
export function findAcceptance(analysis: Analysis, finding: Finding): Acceptance | undefined {
  const { text, silences } = analysis.document;
  if (findCheck(finding.code)?.lasting === true) return undefined;
  const table = lineTableOf(text);
  const line = finding.range.start.line;
  // What is found in an accepting comment is to be mended there, not accepted in turn.
  const start = offsetAt(table, finding.range.start);
  if (silences.some(({ span }) => holds(span, start))) return undefined;
  const places = [lineAbove(table, line, finding.code), endOfLine(table, line, finding.code)];
  const place = places.find((candidate) => isRead(analysis, finding, candidate));
  if (place === undefined) return undefined;
  return {
    range: rangeOf(table, { start: place.offset, end: place.offset }),
    before: place.before,
    reason: noReasonYet,
    after: place.after,
    count: analysis.findings.filter(({ code, range }) => code === finding.code && range.start.line === line)
      .length,
  };
}

function lineAbove(table: LineTable, line: number, code: string): Insertion {
  const indent = /^[ ]*/.exec(lineText(table, line))![0];
  const end = /\r\n/.test(table.text) ? '\r\n' : '\n';
  return { offset: table.starts[line] ?? table.length, before: `${indent}# accept[${code}]: `, after: end };
}

function endOfLine(table: LineTable, line: number, code: string): Insertion {
  const offset = (table.starts[line] ?? table.length) + lineText(table, line).length;
  return { offset, before: ` # accept[${code}]: `, after: '' };
}

/** Asks the reader itself: the comment must be found on the finding's line, and must not have broken what is there. */
function isRead(
  { document, subject }: Analysis,
  finding: Finding,
  { offset, before, after }: Insertion,
): boolean {
  const { text, kind } = document;
  const changed = text.slice(0, offset) + before + noReasonYet + after + text.slice(offset);
  const edited = parseDocument(kind, changed, kind === 'workspace' ? builtIn : subject.registry);
  const line = finding.range.start.line + (after === '' ? 0 : 1);
  return (
    edited.silences.some((silence) => silence.code.value === finding.code && silence.line === line) &&
    edited.problems.length <= document.problems.length
  );
}
