// The edits that put top-level blocks into a record, and the reading back that shows that they harm nothing; knows no plan.
import type { OutlineNode, SwingRecord } from '../record/document.ts';
import { documentEnd } from '../record/document-end.ts';
import { lineEnd, lineStart } from '../record/lines.ts';
import { parseDocument } from '../record/parse.ts';
import type { Registry } from '../registry/registry.ts';
import type { TextEdit } from './check.ts';

/**
 * Puts top-level blocks in the place of those of the same key, or behind the last line; touches nothing else. Comments on the items
 * of a key go with them, one on the key itself stays.
 */
export function blockEdits(
  uri: string,
  { text, outline }: SwingRecord,
  blocks: readonly (readonly [key: string, text: string])[],
): readonly TextEdit[] {
  const newline = text.includes('\r\n') ? '\r\n' : '\n';
  const last = documentEnd(text);
  const added: string[] = [];
  const edits: TextEdit[] = [];
  for (const [key, lines] of blocks) {
    const put = lines.replaceAll('\n', newline);
    const node = outline.find(({ name }) => name === key);
    if (node === undefined) {
      if (put !== '') added.push(put);
      continue;
    }
    const start = lineStart(text, node.nameSpan.start);
    if (start !== node.nameSpan.start) return [];
    const after = text.indexOf('\n', Math.max(node.span.end - 1, node.nameSpan.end));
    const end = Math.min(after < 0 ? text.length : after + 1, last);
    const commented = withComment(put, commentOn(text, node), newline);
    const closed =
      commented !== '' && end === text.length && !text.endsWith('\n') ? commented.trimEnd() : commented;
    edits.push({ uri, span: { start, end }, text: closed });
  }
  if (added.length > 0) {
    const lead = last === 0 || text[last - 1] === '\n' ? '' : newline;
    edits.push({ uri, span: { start: last, end: last }, text: lead + added.join('') });
  }
  return edits;
}

/** The edits if the edited text reads back with no more problems and no fewer accepting comments; else none. */
export function readBack(
  document: SwingRecord,
  registry: Registry,
  edits: readonly TextEdit[],
): readonly TextEdit[] {
  if (edits.length === 0) return edits;
  const edited = parseDocument('swing', edit(document.text, edits), registry);
  return edited.problems.length <= document.problems.length ? edits : [];
}

/** The text with the edits made; they do not overlap. */
export function edit(text: string, edits: readonly Pick<TextEdit, 'span' | 'text'>[]): string {
  return [...edits]
    .sort((a, b) => b.span.start - a.span.start)
    .reduce((done, { span, text: put }) => done.slice(0, span.start) + put + done.slice(span.end), text);
}

/** The comment on the line of a key, or behind a value in brackets; of a block below the key those on its items are not meant. */
function commentOn(text: string, { nameSpan, span }: OutlineNode): string {
  const head = /^\s*:\s*[[{]?\s*(#.*)$/.exec(text.slice(nameSpan.end, lineEnd(text, nameSpan.end)))?.[1];
  if (head !== undefined) return head.trimEnd();
  const isFlow = /^\s*:\s*[[{]/.test(text.slice(nameSpan.end));
  const isOneLine = !text.slice(nameSpan.end, span.end).trimEnd().includes('\n');
  if (!isFlow && !isOneLine) return '';
  const end = nameSpan.end + text.slice(nameSpan.end, span.end).trimEnd().length;
  return (/^\s+(#.*)$/.exec(text.slice(end, lineEnd(text, end)))?.[1] ?? '').trimEnd();
}

/** Behind the key in the first line, or alone where nothing comes in the place of the block. */
function withComment(put: string, comment: string, newline: string): string {
  if (comment === '') return put;
  if (put === '') return comment + newline;
  const end = lineEnd(put, 0);
  return `${put.slice(0, end)} ${comment}${put.slice(end)}`;
}
