// Makes the plain tree from the yaml package's nodes: keys once, aliases followed within bounds; knows nothing of swings.
import {
  isAlias,
  isMap,
  isPair,
  isScalar,
  isSeq,
  type Alias,
  type Node,
  type Pair as YamlPair,
  type Scalar,
} from 'yaml';
import type { Span } from '../measure/measure.ts';
import { quote } from '../measure/quote.ts';
import type { ListTree, MapTree, Pair, RecordProblem, ScalarTree, Tree } from './tree.ts';

/** More nodes than this, brought in by aliases, are not followed: a record has some hundreds in all. */
const mostAliasedNodes = 4000;

/** A half-typed key that stands where the repaired text has an empty one. */
export interface HalfTypedKey {
  readonly key: string;
  readonly span: Span;
}

interface Growth {
  readonly text: string;
  readonly halfTyped: readonly HalfTypedKey[];
  readonly problems: RecordProblem[];
  readonly anchors: Map<string, Tree>;
  aliasedNodes: number;
}

/** The tree of `root`, whose places are places in `text`, and what is wrong with its keys and aliases. */
export function treeOf(
  root: Node,
  text: string,
  halfTyped: readonly HalfTypedKey[],
): { readonly tree: Tree; readonly problems: readonly RecordProblem[] } {
  const growth: Growth = { text, halfTyped, problems: [], anchors: new Map(), aliasedNodes: 0 };
  return { tree: grow(root, growth), problems: growth.problems };
}

function grow(node: Node, growth: Growth): Tree {
  if (isAlias(node)) return followAlias(node, growth);
  const tree = isMap(node)
    ? growMap(node, node.items, growth)
    : isSeq(node)
      ? growList(node, node.items, growth)
      : growScalar(node, growth.text);
  const anchor = (node as { anchor?: string }).anchor;
  // An anchor counts only from its end on, so that nothing can hold itself.
  if (anchor !== undefined) growth.anchors.set(anchor, tree);
  return tree;
}

function growMap(node: Node, items: readonly unknown[], growth: Growth): MapTree {
  const pairs = new Map<string, Pair>();
  const plain: Record<string, unknown> = {};
  let size = 1;
  for (const item of items) {
    if (!isPair(item)) continue;
    const key = readKey(item, growth);
    if (key === undefined) continue;
    const value = item.value === null ? emptyAt(key.span.end) : grow(item.value as Node, growth);
    const earlier = pairs.get(key.name);
    if (earlier !== undefined) {
      growth.problems.push(duplicateKey(key.name, key.span, earlier.keySpan));
      continue;
    }
    size += value.size;
    pairs.set(key.name, { key: key.name, keySpan: key.span, value });
    if (key.name === '__proto__')
      Object.defineProperty(plain, key.name, { value: value.plain, enumerable: true });
    else plain[key.name] = value.plain;
  }
  return { kind: 'map', span: spanOf(node), pairs, plain, size };
}

function growList(node: Node, items: readonly unknown[], growth: Growth): ListTree {
  const trees = items.map((item) =>
    isPair(item) ? growMap(node, [item], growth) : grow(item as Node, growth),
  );
  const size = trees.reduce((sum, tree) => sum + tree.size, 1);
  return { kind: 'list', span: spanOf(node), items: trees, plain: trees.map((tree) => tree.plain), size };
}

function growScalar(node: Scalar, text: string): ScalarTree {
  const span = spanOf(node);
  const source = node.source ?? '';
  const value = node.value;
  // A number without end, or none at all, is only a word to us.
  const isKept = typeof value === 'boolean' || value === null || Number.isFinite(value);
  const plain = isKept ? (value as ScalarTree['plain']) : source;
  return { kind: 'scalar', span, plain, source, offset: sourceOffset(node, source, span, text), size: 1 };
}

function sourceOffset(node: Scalar, source: string, span: Span, text: string): number | undefined {
  const isQuoted = node.type === 'QUOTE_DOUBLE' || node.type === 'QUOTE_SINGLE';
  if (!isQuoted && node.type !== 'PLAIN') return undefined;
  const start = isQuoted ? span.start + 1 : span.start;
  const length = isQuoted ? span.end - span.start - 2 : span.end - span.start;
  return source.length === length && text.startsWith(source, start) ? start : undefined;
}

function emptyAt(offset: number): ScalarTree {
  return { kind: 'scalar', span: { start: offset, end: offset }, plain: null, source: '', offset, size: 1 };
}

function readKey(pair: YamlPair, growth: Growth): { readonly name: string; readonly span: Span } | undefined {
  const node = pair.key as Node;
  const span = spanOf(node);
  // The yaml package places an empty key before the white space and comments that lead to its colon.
  const halfTyped = span.start === span.end ? findHalfTyped(growth.halfTyped, span.start) : undefined;
  if (halfTyped !== undefined) return { name: halfTyped.key, span: halfTyped.span };
  if (isScalar(node)) {
    const raw = growth.text.slice(span.start, span.end);
    if (node.type === 'PLAIN' && raw.includes('\n')) return lastLineAsKey(raw, span, growth.problems);
    return { name: node.source ?? '', span };
  }
  const name = isAlias(node) ? followAlias(node, growth) : undefined;
  if (name?.kind === 'scalar' && name.plain !== null) return { name: name.source, span };
  growth.problems.push({
    code: 'yaml-syntax',
    span,
    found: `${quote(growth.text.slice(span.start, span.end))} as a key`,
    expected: 'a single word before the colon',
  });
  return undefined;
}

function findHalfTyped(keys: readonly HalfTypedKey[], offset: number): HalfTypedKey | undefined {
  let nearest: HalfTypedKey | undefined;
  for (const key of keys)
    if (key.span.start >= offset && (nearest === undefined || key.span.start < nearest.span.start))
      nearest = key;
  return nearest;
}

/** A key without its colon joins the next line's: what stands on the last line is the key, what stands above is half-typed. */
function lastLineAsKey(raw: string, span: Span, problems: RecordProblem[]): { name: string; span: Span } {
  const first = raw.slice(0, raw.search(/[ \t\r]*\n/));
  problems.push(halfTypedKey(first, { start: span.start, end: span.start + first.length }));
  const last = raw.slice(raw.lastIndexOf('\n') + 1);
  const name = last.trimStart();
  return { name, span: { start: span.end - name.length, end: span.end } };
}

export function halfTypedKey(word: string, span: Span): RecordProblem {
  return {
    code: 'yaml-syntax',
    span,
    found: `${quote(word)} without a colon`,
    expected: 'a key, a colon and a value, such as `date: 2026-05-14`',
  };
}

function duplicateKey(key: string, span: Span, earlier: Span): RecordProblem {
  return {
    code: 'duplicate-key',
    span,
    found: `${quote(key)} a second time`,
    expected: 'each key once; what stands first counts (a list holds several measurements)',
    related: [{ span: earlier, message: `${quote(key)} stands here first` }],
  };
}

function followAlias(node: Alias, growth: Growth): Tree {
  const span = spanOf(node);
  const target = growth.anchors.get(node.source);
  if (target === undefined) {
    growth.problems.push({
      code: 'yaml-syntax',
      span,
      found: `${quote(`*${node.source}`)}, which nothing above is named`,
      expected: `a value marked ${quote(`&${node.source}`)} further up`,
    });
    return emptyAt(span.end);
  }
  const isTooMuch =
    growth.aliasedNodes <= mostAliasedNodes && growth.aliasedNodes + target.size > mostAliasedNodes;
  growth.aliasedNodes += target.size;
  if (isTooMuch)
    growth.problems.push({
      code: 'too-many-aliases',
      span,
      found: 'aliases that stand for more values than can be read',
      expected: `at most ${mostAliasedNodes} values by way of aliases`,
    });
  if (growth.aliasedNodes > mostAliasedNodes) return emptyAt(span.end);
  return target.kind === 'scalar' ? { ...target, span, offset: undefined } : { ...target, span };
}

function spanOf(node: Node): Span {
  const range = node.range;
  return range ? { start: range[0], end: range[1] } : { start: 0, end: 0 };
}
