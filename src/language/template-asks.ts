// The rewrite that adds the keys for which the template has windows and the record has none, without a value; writes no number.
import type { Analysis } from '../analysis/result.ts';
import { rangeOf, type LineTable } from '../analysis/positions.ts';
import type { OutlineNode, SwingRecord } from '../record/document.ts';
import { indentAt, lineEnd, lineStart } from '../record/lines.ts';
import { keysKept, type Rewrite, type RewriteEdit } from './rewrite.ts';
import { touches } from './places.ts';
import type { TextRange } from './shapes.ts';

/** Offered on the key of a checkpoint or of another part of the record; the innermost one that the cursor is on. */
export function addWhatTemplateAsks(
  analysis: Analysis,
  table: LineTable,
  range: TextRange,
): readonly Rewrite[] {
  const { document, subject } = analysis;
  const windows = subject.template?.document.windows;
  if (document.kind !== 'swing' || windows === undefined) return [];
  const here = placedNodes(document.outline, '').filter(({ node }) =>
    touches(rangeOf(table, node.nameSpan), range),
  );
  const at = here.at(-1);
  if (at === undefined) return [];
  const asked = [...windows.keys()].filter(
    (id) => id.startsWith(`${at.path}.`) && !isThere(at.node, id.slice(at.path.length + 1).split('.')),
  );
  if (asked.length === 0) return [];
  const edits = keysInto(
    document,
    at.node,
    treeOf(asked.map((id) => id.slice(at.path.length + 1).split('.'))),
  );
  if (edits === undefined || !keysKept(analysis, edits)) return [];
  const [first, ...others] = asked.map((id) => `\`${id.split('.').at(-1)!}\``);
  const more = others.length === 0 ? '' : ` and ${others.length} more`;
  return [{ title: `Add what the template asks for here: ${first!}${more}`, edits }];
}

interface PlacedNode {
  readonly path: string;
  readonly node: OutlineNode;
}

/** The parts of a record that templates speak of, outer ones first. */
const parts = ['checkpoints', 'delivery', 'ground', 'strike', 'flight'];

function placedNodes(nodes: readonly OutlineNode[], above: string): readonly PlacedNode[] {
  return nodes.flatMap((node) => {
    const path = above === '' ? node.name : `${above}.${node.name}`;
    if (!parts.some((part) => path === part || path.startsWith(`${part}.`))) return [];
    return [{ path, node }, ...placedNodes(node.children, path)];
  });
}

function isThere(node: OutlineNode, [first, ...rest]: readonly string[]): boolean {
  const child = node.children.find(({ name }) => name === first);
  return child !== undefined && (rest.length === 0 || isThere(child, rest));
}

/** Keys by key; empty below what holds a number. */
type Keys = ReadonlyMap<string, Keys>;

function treeOf(paths: readonly (readonly string[])[]): Keys {
  const byFirst = new Map<string, string[][]>();
  for (const [first, ...rest] of paths) {
    const below = byFirst.get(first!) ?? [];
    if (rest.length > 0) below.push(rest);
    byFirst.set(first!, below);
  }
  return new Map([...byFirst].map(([key, below]) => [key, treeOf(below)]));
}

/** One edit for each mapping that gets keys; undefined where a number stands in place of a mapping. */
function keysInto(document: SwingRecord, node: OutlineNode, keys: Keys): readonly RewriteEdit[] | undefined {
  const edits: RewriteEdit[] = [];
  const fresh = new Map<string, Keys>();
  for (const [key, below] of keys) {
    const child = node.children.find(({ name }) => name === key);
    if (child === undefined) fresh.set(key, below);
    else {
      const inner = keysInto(document, child, below);
      if (inner === undefined) return undefined;
      edits.push(...inner);
    }
  }
  if (fresh.size === 0) return edits;
  const own = insertion(document.text, node, fresh);
  return own && [...edits, own];
}

function insertion(text: string, node: OutlineNode, keys: Keys): RewriteEdit | undefined {
  const { nameSpan, span, children } = node;
  const value = text.slice(nameSpan.end, span.end);
  const last = children.at(-1);
  if (/^\s*:\s*\{/.test(value) && text[span.end - 1] === '}') {
    const inside = text.indexOf('{', nameSpan.end) + 1;
    return last === undefined ? put(inside, ` ${flow(keys)} `) : put(endOf(text, last), `, ${flow(keys)}`);
  }
  // A number or a list stands where the keys would go.
  if (last === undefined && !/^\s*:?\s*$/.test(value)) return undefined;
  const feed = text.includes('\r\n') ? '\r\n' : '\n';
  const column = nameSpan.start - lineStart(text, nameSpan.start);
  const indent =
    last === undefined ? column + stepOf(text) : last.nameSpan.start - lineStart(text, last.nameSpan.start);
  const lines = block(keys, indent, stepOf(text)).map((line) => feed + line);
  return put(lineEnd(text, last === undefined ? nameSpan.end : endOf(text, last)), lines.join(''));
}

/** How far in the file goes at a time; two where it does not go in yet. */
function stepOf(text: string): number {
  for (let feed = text.indexOf('\n'); feed !== -1; feed = text.indexOf('\n', feed + 1)) {
    const indent = indentAt(text, feed + 1);
    if (indent > 0 && /[^\s#-]/.test(text.charAt(feed + 1 + indent))) return indent;
  }
  return 2;
}

function block(keys: Keys, indent: number, step: number): readonly string[] {
  return [...keys].flatMap(([key, below]) => [
    `${' '.repeat(indent)}${key}:`,
    ...block(below, indent + step, step),
  ]);
}

function flow(keys: Keys): string {
  return [...keys]
    .map(([key, below]) => (below.size === 0 ? `${key}: ` : `${key}: { ${flow(below)} }`))
    .join(', ')
    .trimEnd();
}

function endOf(text: string, { span, nameSpan }: OutlineNode): number {
  const end = nameSpan.end + text.slice(nameSpan.end, span.end).trimEnd().length;
  return end === nameSpan.end && text[end] === ':' ? end + 1 : end;
}

function put(at: number, text: string): RewriteEdit {
  return { span: { start: at, end: at }, text };
}
