// Proposes the codes that a comment may accept, those found on its line first; knows no key.
import type { Analysis } from '../analysis/result.ts';
import { positionAt, lineTableOf } from '../analysis/positions.ts';
import { codes, findCheck } from '../checks/table.ts';
import type { Span } from '../measure/measure.ts';
import { unique } from './completion-habits.ts';
import type { Proposal } from './completion-item.ts';
import { lineText } from './places.ts';

/** Between the brackets of `# accept[…]`; nothing anywhere else. */
export function proposeCodes(
  { document, findings }: Analysis,
  offset: number,
): { readonly span: Span; readonly proposals: readonly Proposal[] } {
  const table = lineTableOf(document.text);
  const { line, character } = positionAt(table, offset);
  const words = lineText(table, line);
  const open = /#\s*accept\[([\w-]*)$/.exec(words.slice(0, character));
  if (open === null) return { span: { start: offset, end: offset }, proposals: [] };
  const rest = words.slice(character);
  const end = offset + /^[\w-]*/.exec(rest)![0].length;
  const isClosed = rest.slice(end - offset).startsWith(']');
  const isAlone = words.slice(0, open.index).trim() === '';
  const here = isAlone ? line + 1 : line;
  const found = findings.filter(({ range }) => range.start.line === here).map(({ code }) => code);
  const proposals = unique([...found, ...codes]).map((code): Proposal => ({
    label: code,
    text: isClosed ? code : `${code}]: `,
    kind: 'word',
    detail: findCheck(code)?.title,
  }));
  return { span: { start: offset - open[1]!.length, end }, proposals };
}
