// Writes a plain tree as YAML of its own, for copies that must hold nothing but what the tree says; knows no kind of file.
import { Document, Scalar, YAMLMap, YAMLSeq, type Node } from 'yaml';

/** What a copy holds: words and numbers with their digits, in mappings and lists. */
export type Copy =
  | { readonly kind: 'scalar'; readonly plain: string | number | boolean | null; readonly source: string }
  | { readonly kind: 'map'; readonly pairs: readonly (readonly [string, Copy])[] }
  | { readonly kind: 'list'; readonly items: readonly Copy[] };

/** Longer mappings and lists stand one entry a line. */
const longestLine = 100;

/** The text of a file; no comment, anchor or tag is in it. Reading it gives the same tree, each number with the digits it had. */
export function printTree(copy: Copy): string {
  const document = new Document();
  document.contents = nodeOf(copy, 0);
  return document.toString({ lineWidth: 0, flowCollectionPadding: true });
}

function nodeOf(copy: Copy, depth: number): Node {
  if (copy.kind === 'scalar') return scalarOf(copy);
  const isShort = depth > 0 && isFlat(copy) && lengthOf(copy) <= longestLine;
  if (copy.kind === 'list') {
    const list = new YAMLSeq();
    list.items = copy.items.map((item) => nodeOf(item, depth + 1));
    list.flow = isShort || copy.items.length === 0;
    return list;
  }
  const map = new YAMLMap();
  for (const [key, value] of copy.pairs)
    map.items.push(new Document().createPair(new Scalar(key), nodeOf(value, depth + 1)));
  map.flow = isShort || copy.pairs.length === 0;
  return map;
}

function scalarOf({ plain, source }: Extract<Copy, { kind: 'scalar' }>): Scalar {
  const scalar = new Scalar(plain);
  // 43.0 says more than 43: how finely it was read.
  if (typeof plain === 'number') scalar.minFractionDigits = /\.(\d+)$/.exec(source)?.[1]?.length ?? 0;
  return scalar;
}

function isFlat(copy: Copy): boolean {
  return childrenOf(copy).every((child) => child.kind === 'scalar' || lengthOf(child) < longestLine / 2);
}

function lengthOf(copy: Copy): number {
  if (copy.kind === 'scalar') return copy.source.length + 2;
  if (copy.kind === 'map')
    return copy.pairs.reduce((sum, [key, value]) => sum + key.length + 2 + lengthOf(value), 4);
  return copy.items.reduce((sum, item) => sum + lengthOf(item), 4);
}

function childrenOf(copy: Copy): readonly Copy[] {
  if (copy.kind === 'map') return copy.pairs.map(([, value]) => value);
  return copy.kind === 'list' ? copy.items : [];
}
