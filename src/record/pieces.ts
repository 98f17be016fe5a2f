// Cuts a file into its keys, values and comments, each a stretch of text, so that they can be put together anew; knows no meaning of theirs.
import type { Span } from '../measure/measure.ts';
import { lineEnd, lineStart } from './lines.ts';
import { readTree } from './read-tree.ts';
import type { ListTree, MapTree, Tree } from './tree.ts';

/** A value: one stretch of text, or what a mapping or a list holds. */
export type Piece = Leaf | Branch;

export interface Leaf {
  readonly kind: 'leaf';
  readonly text: string;
}

export interface Branch {
  readonly kind: 'map' | 'list';
  readonly style: 'block' | 'flow';
  /** Columns before its children, in block style. */
  readonly indent: number;
  /** In flow style, the signs around the children with their spaces. */
  readonly open: string;
  readonly close: string;
  readonly children: readonly Child[];
}

export interface Child {
  /** The key of a mapping; of a list what its item is about, or all that stands in it. */
  readonly key: string;
  /** The same without the place of an item, which may be changed on its own; of what has none, the key. */
  readonly stem: string;
  /** True where something says what it is about: then another key is another thing. */
  readonly isNamed: boolean;
  /** In block style whole lines of comments and empty ones above it; in flow style the spaces before it. */
  readonly lead: string;
  /** `attack: ` with its colon and the spaces behind, or the sign of an item, `- `. */
  readonly head: string;
  /** What stands behind the head on its line where the value begins on the next, such as a comment. */
  readonly headTail: string;
  readonly value: Piece;
  /** What stands behind the value on its line. */
  readonly tail: string;
}

export interface Pieces {
  readonly root: Branch;
  /** Lines below the last entry. */
  readonly end: string;
  readonly newline: string;
}

/** Undefined where the text cannot be cut so that all of it is kept: damaged, or no mapping of one entry a line or between braces. */
export function piecesOf(text: string): Pieces | undefined {
  const newline = text.includes('\r\n') ? '\r\n' : '\n';
  // Lines end in one way while they are cut; the last one is closed like all others.
  const plain = closed(text.replaceAll('\r\n', '\n'));
  const { tree, isDamaged, problems } = readTree(plain, []);
  if (tree?.kind !== 'map' || isDamaged || problems.length > 0 || isFlow(plain, tree.span)) return undefined;
  try {
    const cut: Cutting = { text: plain, at: 0 };
    const root = cutBlock(tree, cut);
    const pieces: Pieces = { root, end: plain.slice(cut.at), newline };
    return printPieces(pieces) === closed(text) ? pieces : undefined;
  } catch (error) {
    if (error === unlike) return undefined;
    throw error;
  }
}

/** The text again; of what was cut from it, the same text. */
export function printPieces({ root, end, newline }: Pieces): string {
  return (printBlock(root, root.indent, 'line') + end).replaceAll('\n', newline);
}

/** A value as it stands behind its head. */
export function printPiece(piece: Piece): string {
  if (piece.kind === 'leaf') return piece.text;
  return piece.style === 'flow' ? printFlow(piece) : printBlock(piece, piece.indent, 'line');
}

/** One child of a block with its lines, `indent` columns in. `first` says whether its line begins here or behind an item's sign. */
export function printChild(child: Child, indent: number, first: 'line' | 'item'): string {
  const lines = `${child.head}${printValue(child, indent)}`;
  // Behind an item's sign there is no room for comments: they come below.
  return first === 'line' ? `${child.lead}${' '.repeat(indent)}${lines}` : `${lines}${child.lead}`;
}

function printBlock({ children }: Branch, indent: number, first: 'line' | 'item'): string {
  return children.map((child, i) => printChild(child, indent, i === 0 ? first : 'line')).join('');
}

function printValue({ head, headTail, value, tail }: Child, indent: number): string {
  if (value.kind === 'leaf' || value.style === 'flow') return `${printPiece(value)}${tail}\n`;
  // A mapping may begin on the line of an item's sign; where it got comments above its first key, it cannot any more.
  const isOnLine = headTail === '' && head.startsWith('-');
  if (isOnLine) return printBlock(value, indent + head.length, 'item');
  return `${headTail}\n${printBlock(value, value.indent, 'line')}`;
}

function printFlow({ open, close, children }: Branch): string {
  const inner = children.map(
    ({ lead, head, value }, i) => `${i === 0 ? '' : lead}${head}${printPiece(value)}`,
  );
  return `${open}${inner.join(',')}${close}`;
}

interface Cutting {
  readonly text: string;
  /** Up to here the text is cut. */
  at: number;
}

/** Thrown where a text is written in a way that is not cut. */
const unlike = new Error('This text is not cut.');

function cutBlock(tree: MapTree | ListTree, cut: Cutting): Branch {
  const { text } = cut;
  const parts =
    tree.kind === 'map'
      ? [...tree.pairs.values()].map(({ key, keySpan, value }) => ({ key, start: keySpan.start, value }))
      : tree.items.map((value) => ({ key: '', start: signBefore(value, text), value }));
  const [first] = parts;
  if (first === undefined) throw unlike;
  const indent = first.start - lineStart(text, first.start);
  const children = parts.map(({ key, start, value }): Child => {
    const line = lineStart(text, start);
    // The first key of an item stands behind the item's sign.
    const lead = cut.at > line ? '' : text.slice(cut.at, line);
    if (start - line !== indent || start < cut.at) throw unlike;
    return { key, stem: key, isNamed: true, lead, ...cutChild(tree.kind, start, value, cut) };
  });
  return { kind: tree.kind, style: 'block', indent, open: '', close: '', children: named(children, tree) };
}

function cutChild(
  of: 'map' | 'list',
  start: number,
  value: Tree,
  cut: Cutting,
): Pick<Child, 'head' | 'headTail' | 'value' | 'tail'> {
  const { text } = cut;
  const headEnd = of === 'list' ? start + 1 : colonAfter(start, value, text) + 1;
  if (value.kind !== 'scalar' && !isFlow(text, value.span)) {
    const begin = value.kind === 'map' ? firstKey(value) : signBefore(value.items[0], text);
    const isOnLine = lineStart(text, begin) <= start;
    if (isOnLine && of === 'map') throw unlike;
    const end = lineEnd(text, headEnd);
    cut.at = isOnLine ? begin : end + 1;
    const branch = cutBlock(value, cut);
    return {
      head: text.slice(start, isOnLine ? begin : headEnd),
      headTail: isOnLine ? '' : text.slice(headEnd, end),
      value: branch,
      tail: '',
    };
  }
  const { start: from, end: to } = value.span;
  // Where nothing is written the place of the value is behind the colon.
  const at = from === to ? headEnd : from;
  const stop = Math.max(to, at);
  const end = text[stop - 1] === '\n' ? stop - 1 : lineEnd(text, stop);
  cut.at = end + 1;
  return {
    head: text.slice(start, at),
    headTail: '',
    value: cutInline(value, { start: at, end: Math.min(stop, end) }, text),
    tail: text.slice(Math.min(stop, end), end),
  };
}

function cutInline(tree: Tree, span: Span, text: string): Piece {
  const written = text.slice(span.start, span.end);
  const leaf: Leaf = { kind: 'leaf', text: written };
  // Comments between braces belong to no key.
  if (tree.kind === 'scalar' || written.includes('#') || written.includes('\n')) return leaf;
  const parts =
    tree.kind === 'map'
      ? [...tree.pairs.values()].map(({ key, keySpan, value }) => ({ key, start: keySpan.start, value }))
      : tree.items.map((value) => ({ key: '', start: value.span.start, value }));
  const [first, last] = [parts[0], parts.at(-1)];
  if (first === undefined || last === undefined) return leaf;
  const children = parts.map(({ key, start, value }, i): Child => {
    const comma = i === 0 ? start : text.lastIndexOf(',', start - 1) + 1;
    const from = value.span.start < start ? start : value.span.start;
    const isEmpty = value.span.start === value.span.end;
    const end = isEmpty ? endOfEmpty(start, tree.kind, value, text) : value.span.end;
    const at = isEmpty ? end : from;
    return {
      key,
      stem: key,
      isNamed: true,
      lead: text.slice(comma, start),
      head: text.slice(start, at),
      headTail: '',
      value: cutInline(value, { start: at, end }, text),
      tail: '',
    };
  });
  const branch: Branch = {
    kind: tree.kind,
    style: 'flow',
    indent: 0,
    open: text.slice(span.start, first.start),
    close: text.slice(endOf(children, first.start), span.end),
    children: named(children, tree),
  };
  return printFlow(branch) === written ? branch : leaf;
}

function endOf(children: readonly Child[], start: number): number {
  return children.reduce(
    (at, { lead, head, value }, i) =>
      at + (i === 0 ? 0 : lead.length + 1) + head.length + printPiece(value).length,
    start,
  );
}

function endOfEmpty(start: number, kind: 'map' | 'list', value: Tree, text: string): number {
  return kind === 'map' ? colonAfter(start, value, text) + 1 : value.span.end;
}

function colonAfter(start: number, value: Tree, text: string): number {
  // A quoted key may hold a colon of its own.
  const sign = text[start];
  const from = sign === '"' || sign === "'" ? text.indexOf(sign, start + 1) : start;
  const colon = text.indexOf(':', from);
  if (colon < 0 || colon > value.span.end) throw unlike;
  return colon;
}

function firstKey(tree: MapTree): number {
  const [first] = tree.pairs.values();
  if (first === undefined) throw unlike;
  return first.keySpan.start;
}

/** The sign of the item that holds this value. */
function signBefore(value: Tree | undefined, text: string): number {
  if (value === undefined) throw unlike;
  const sign = text.lastIndexOf('-', value.span.start - (value.span.start === value.span.end ? 0 : 1));
  if (sign < 0 || text.slice(sign + 1, value.span.start).trim() !== '') throw unlike;
  return sign;
}

function isFlow(text: string, { start }: Span): boolean {
  return text[start] === '{' || text[start] === '[';
}

/** Keys that tell one item of a list from another, the most telling first. */
const telling = ['id', 'fault', 'change', 'miss', 'part', 'effect', 'expression'] as const;

function named(children: readonly Child[], tree: MapTree | ListTree): readonly Child[] {
  if (tree.kind === 'map') return children;
  return children.map((child, i) => ({ ...child, ...nameOf(tree.items[i], child.value) }));
}

function nameOf(item: Tree | undefined, value: Piece): Pick<Child, 'key' | 'stem' | 'isNamed'> {
  if (item?.kind === 'map')
    for (const key of telling) {
      const word = item.pairs.get(key)?.value;
      const at = item.pairs.get('at')?.value;
      if (word?.kind === 'scalar' && word.plain !== null)
        return {
          stem: `${key} ${word.source}`,
          key: `${key} ${word.source} ${at?.kind === 'scalar' ? at.source : ''}`,
          isNamed: true,
        };
    }
  const key = printPiece(value);
  return { key, stem: key, isNamed: false };
}

function closed(text: string): string {
  return text === '' || text.endsWith('\n') ? text : `${text}\n`;
}
