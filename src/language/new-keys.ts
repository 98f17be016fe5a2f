// The edits that put keys without a value into a record, in block or flow style, each at the end of the mapping that it belongs to.
import type { OutlineNode, SwingRecord } from '../record/document.ts';
import { documentEnd } from '../record/document-end.ts';
import { lineEnd, lineStart, stepOf } from '../record/lines.ts';
import type { RewriteEdit } from './rewrite.ts';

/** The edits for these ids, with the parts of a record that are not there yet; undefined where a number stands in place of a mapping. */
export function keysIntoRecord(
  document: SwingRecord,
  ids: readonly string[],
): readonly RewriteEdit[] | undefined {
  const keys = treeOf(ids.map((id) => id.split('.')));
  const place = ([part]: readonly [string, Keys]): number => order.indexOf(part);
  const edits: RewriteEdit[] = [];
  for (const [part, below] of [...keys].sort((a, b) => place(a) - place(b))) {
    const node = document.outline.find(({ name }) => name === part);
    const inner = node === undefined ? [newPart(document, part, below)] : keysInto(document, node, below);
    if (inner === undefined) return undefined;
    edits.push(...inner);
  }
  return joined(edits);
}

/** The keys at the top of a record, in their order. */
const order = [
  'swing',
  'student',
  'date',
  'club',
  'template',
  'faults_from',
  'conditions',
  'checkpoints',
  'delivery',
  'ground',
  'strike',
  'flight',
];

/** Behind the last part that comes before it, or at the end. */
function newPart({ text, outline }: SwingRecord, part: string, below: Keys): RewriteEdit {
  const feed = text.includes('\r\n') ? '\r\n' : '\n';
  const lines = [`${part}:`, ...block(below, stepOf(text), stepOf(text))];
  const before = outline.filter(
    ({ name }) => order.includes(name) && order.indexOf(name) < order.indexOf(part),
  );
  const last = before.toSorted((a, b) => a.nameSpan.start - b.nameSpan.start).at(-1);
  if (last !== undefined)
    return put(lineEnd(text, endOf(text, last)), lines.map((line) => feed + line).join(''));
  const end = documentEnd(text);
  const gap = end === 0 || text[end - 1] === '\n' ? '' : feed;
  return put(end, gap + lines.map((line) => line + feed).join(''));
}

/** One edit for each place, so that what goes to the same place comes in order. */
function joined(edits: readonly RewriteEdit[]): readonly RewriteEdit[] {
  const byPlace = new Map<number, RewriteEdit>();
  for (const edit of edits) {
    const before = byPlace.get(edit.span.start);
    byPlace.set(edit.span.start, before === undefined ? edit : { ...before, text: before.text + edit.text });
  }
  return [...byPlace.values()];
}

/** Keys by key; empty below what holds a number. */
export type Keys = ReadonlyMap<string, Keys>;

export function treeOf(paths: readonly (readonly string[])[]): Keys {
  const byFirst = new Map<string, string[][]>();
  for (const [first, ...rest] of paths) {
    const below = byFirst.get(first!) ?? [];
    if (rest.length > 0) below.push(rest);
    byFirst.set(first!, below);
  }
  return new Map([...byFirst].map(([key, below]) => [key, treeOf(below)]));
}

/** One edit for each mapping that gets keys; undefined where a number stands in place of a mapping. */
export function keysInto(
  document: SwingRecord,
  node: OutlineNode,
  keys: Keys,
): readonly RewriteEdit[] | undefined {
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
  const own = insertion(document, node, fresh);
  return own && [...edits, own];
}

function insertion(document: SwingRecord, node: OutlineNode, keys: Keys): RewriteEdit | undefined {
  const { text } = document;
  const { nameSpan, span, children } = node;
  const value = text.slice(nameSpan.end, span.end);
  const last = children.at(-1);
  if (/^\s*:\s*\{/.test(value) && text[span.end - 1] === '}') {
    const inside = text.indexOf('{', nameSpan.end) + 1;
    return last === undefined ? put(inside, ` ${flow(keys)} `) : put(endOf(text, last), `, ${flow(keys)}`);
  }
  // A number or a list stands where the keys would go.
  if (last === undefined && !/^\s*:?\s*$/.test(value)) return undefined;
  if (last === undefined && isInBraces(document, node))
    return put(text.indexOf(':', nameSpan.end) + 1, ` { ${flow(keys)} }`);
  const feed = text.includes('\r\n') ? '\r\n' : '\n';
  const column = nameSpan.start - lineStart(text, nameSpan.start);
  const indent =
    last === undefined ? column + stepOf(text) : last.nameSpan.start - lineStart(text, last.nameSpan.start);
  const lines = block(keys, indent, stepOf(text)).map((line) => feed + line);
  return put(lineEnd(text, last === undefined ? nameSpan.end : endOf(text, last)), lines.join(''));
}

function isInBraces({ text, outline }: SwingRecord, { nameSpan }: OutlineNode): boolean {
  if (/^(?:\s|#.*)*\{/.test(text)) return true;
  const isAround = ({ nameSpan: name, span, children }: OutlineNode): boolean =>
    name.end < nameSpan.start &&
    nameSpan.start < span.end &&
    (/^\s*:\s*\{/.test(text.slice(name.end, span.end)) || children.some(isAround));
  return outline.some(isAround);
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
