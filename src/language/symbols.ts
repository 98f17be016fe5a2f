// The outline of a document: keys with their value in one line; knows nothing of quantities.
import { lineTableOf, rangeOf, type LineTable } from '../analysis/positions.ts';
import type { Analysis } from '../analysis/result.ts';
import type { OutlineNode } from '../record/document.ts';
import { lineEnd } from '../record/lines.ts';
import type { DocumentSymbol } from './shapes.ts';

const kinds = { group: 3, number: 16, text: 15, list: 18, field: 8 } as const;

const longest = 60;

export function findSymbols({ document }: Analysis): DocumentSymbol[] {
  const lines = lineTableOf(document.text);
  return document.outline.map((node) => toSymbol(node, lines));
}

function toSymbol(node: OutlineNode, lines: LineTable): DocumentSymbol {
  return {
    // An editor refuses a symbol without a name, and a half-typed key has none.
    name: node.name.trim() === '' ? '…' : node.name,
    detail: node.detail.length > longest ? `${node.detail.slice(0, longest - 1)}…` : node.detail,
    kind: kindOf(node),
    range: rangeOf(lines, { start: Math.min(node.span.start, node.nameSpan.start), end: endOf(node, lines) }),
    selectionRange: rangeOf(lines, node.nameSpan),
    children: node.children.map((child) => toSymbol(child, lines)),
  };
}

/** The end of its last line, where nothing but a comment follows there: at the next key the cursor is no longer in it. */
function endOf({ span, nameSpan }: OutlineNode, { text }: LineTable): number {
  const end = nameSpan.end + text.slice(nameSpan.end, span.end).trimEnd().length;
  const rest = text.slice(end, lineEnd(text, end));
  return /^:?\s*(?:#.*)?$/.test(rest) ? end + rest.length : end;
}

function kindOf({ children, detail }: OutlineNode): DocumentSymbol['kind'] {
  if (children.length > 0) return kinds.group;
  if (detail.startsWith('[')) return kinds.list;
  if (/^[~+-]?\s*\.?\d/.test(detail) && !/^\d{4}-\d/.test(detail)) return kinds.number;
  return detail === '' ? kinds.field : kinds.text;
}
