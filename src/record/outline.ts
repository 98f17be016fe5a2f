// Makes the outline of a tree: keys, their values in one line, their places; knows only which words name the items of a list.
import type { Span } from '../measure/measure.ts';
import type { OutlineNode } from './document.ts';
import type { Tree } from './tree.ts';

const longestDetail = 80;
const deepestOutline = 6;
/** The keys of which the first one there names an item of a list. */
const naming = ['fault', 'change', 'shape', 'part', 'miss', 'id', 'about', 'effect', 'expression', 'carry'];

/** A node for each key but the version's. */
export function outlineOf(tree: Tree, text: string, versionKey: string): readonly OutlineNode[] {
  return childrenOf(tree, text, 0).filter(({ name }) => name !== versionKey);
}

function childrenOf(tree: Tree, text: string, depth: number): readonly OutlineNode[] {
  if (tree.kind === 'scalar' || depth > deepestOutline) return [];
  if (tree.kind === 'list') {
    return tree.items.flatMap((item, index) =>
      item.kind === 'map' ? [itemNode(item, index, text, depth)] : [],
    );
  }
  const nodes: OutlineNode[] = [];
  for (const { key, keySpan, value } of tree.pairs.values()) {
    // A long form or a list of readings is one value to the reader.
    const isOneValue = value.kind === 'map' && (value.pairs.has('value') || value.pairs.has('window'));
    nodes.push({
      name: key === '' ? '?' : key,
      detail: value.kind === 'map' && !isOneValue ? '' : detailOf(value.span, text),
      span: { start: keySpan.start, end: Math.max(keySpan.end, value.span.end) },
      nameSpan: keySpan,
      children: isOneValue ? [] : childrenOf(value, text, depth + 1),
    });
  }
  return nodes;
}

function itemNode(item: Tree & { kind: 'map' }, index: number, text: string, depth: number): OutlineNode {
  const key = naming.find((name) => item.pairs.get(name)?.value.kind === 'scalar');
  const named = key === undefined ? undefined : item.pairs.get(key)?.value;
  const word = named?.kind === 'scalar' ? named.source : '';
  return {
    name: word === '' ? String(index + 1) : word,
    detail: '',
    span: item.span,
    nameSpan:
      word === '' || named === undefined ? { start: item.span.start, end: item.span.start } : named.span,
    children: childrenOf(item, text, depth + 1),
  };
}

/** What is written, in one line. */
function detailOf({ start, end }: Span, text: string): string {
  const line = text
    .slice(start, Math.min(end, start + 4 * longestDetail))
    .replace(/\s+/g, ' ')
    .trim();
  return line.length > longestDetail ? `${line.slice(0, longestDetail - 1)}…` : line;
}
