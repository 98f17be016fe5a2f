// Proposes the codes that a comment may accept, those found on its line first; knows no key.
import type { Analysis } from '../analysis/result.ts';
import { positionAt, lineTableOf, type LineTable } from '../analysis/positions.ts';
import type { Check } from '../checks/check.ts';
import { checkFrom } from '../checks/own-checks.ts';
import { codes, findCheck } from '../checks/table.ts';
import type { Span } from '../measure/measure.ts';
import { unique } from './completion-habits.ts';
import type { Proposal } from './completion-item.ts';
import { lineText } from './places.ts';

/** Between the brackets of `# accept[…]`; nothing anywhere else. */
export function proposeCodes(
  { document, findings, subject }: Analysis,
  offset: number,
): { readonly span: Span; readonly proposals: readonly Proposal[] } {
  const table = lineTableOf(document.text);
  const { line, character } = positionAt(table, offset);
  const words = lineText(table, line);
  const open = /#\s*accept\[([^\]]*,\s*)?([\w/-]*)$/.exec(words.slice(0, character));
  if (open === null) return { span: { start: offset, end: offset }, proposals: [] };
  const rest = words.slice(character);
  const end = offset + /^[\w/-]*/.exec(rest)![0].length;
  const isClosed = /^[^#]*\]/.test(rest.slice(end - offset));
  const isAlone = words.slice(0, open.index).trim() === '';
  const here = isAlone ? nextSaid(table, line) : line;
  const found = findings.filter(({ range }) => range.start.line === here).map(({ code }) => code);
  const own = subject.own.checks.map(checkFrom);
  const checkOf = (code: string): Check | undefined =>
    findCheck(code) ?? own.find((check) => check.code === code);
  const written = (open[1] ?? '').split(',').map((code) => code.trim());
  const proposals = unique([...found, ...own.map(({ code }) => code), ...codes])
    .filter((code) => checkOf(code)?.lasting !== true && !written.includes(code))
    .map((code): Proposal => ({
      label: code,
      text: isClosed ? code : `${code}]: `,
      kind: 'word',
      detail: checkOf(code)?.title,
      isLikely: code === found[0],
    }));
  return { span: { start: offset - open[2]!.length, end }, proposals };
}

/** The next line that is neither blank nor only a comment: the one that a comment of its own line covers. */
function nextSaid(table: LineTable, line: number): number {
  let next = line + 1;
  while (next < table.starts.length && /^\s*(?:#|$)/.test(lineText(table, next))) next += 1;
  return next;
}
