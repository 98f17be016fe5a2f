// Takes words and their places from a tree; knows nothing of what they mean.
import type { Span } from '../measure/measure.ts';
import type { Located } from './document.ts';
import { valueAt, type ScalarTree, type Tree } from './tree.ts';

/** The words at this key, quotes aside; undefined for a number, a mapping, a list, or nothing. */
export function wordAt(tree: Tree | undefined, key: string): Located<string> | undefined {
  return locate(valueAt(tree, key));
}

export function locate(value: Tree | undefined): Located<string> | undefined {
  if (value?.kind !== 'scalar' || typeof value.plain !== 'string') return undefined;
  return { value: value.source, span: innerSpan(value) };
}

/** One word, or each of a list of them. */
export function wordsOf(value: Tree | undefined): readonly Located<string>[] {
  const items = value?.kind === 'list' ? value.items : [value];
  return items.flatMap((item) => locate(item) ?? []);
}

/** Free words as they are written, a number included; without their place. */
export function wordsAt(tree: Tree | undefined, key: string): string | undefined {
  const value = valueAt(tree, key);
  return value?.kind === 'scalar' && value.plain !== null ? value.source : undefined;
}

/** Without the quotes where that can be told. */
export function innerSpan({ offset, source, span }: ScalarTree): Span {
  return offset === undefined ? span : { start: offset, end: offset + source.length };
}
