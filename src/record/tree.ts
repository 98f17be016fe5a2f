// The plain tree that every reader of a file walks: mappings, lists and scalars with their places; knows no YAML library.
import type { Problem, Span } from '../measure/measure.ts';
import type { RecordCode } from './document.ts';

/** A problem of this floor, or one of the notation below it. */
export type RecordProblem = Problem<RecordCode>;

export interface Pair {
  readonly key: string;
  readonly keySpan: Span;
  readonly value: Tree;
}

export interface MapTree {
  readonly kind: 'map';
  readonly span: Span;
  /** In the order written; a key that stands twice counts where it stands first. */
  readonly pairs: ReadonlyMap<string, Pair>;
  readonly plain: Readonly<Record<string, unknown>>;
  /** How many nodes stand in it, itself included, aliases counted as often as they are used. */
  readonly size: number;
}

export interface ListTree {
  readonly kind: 'list';
  readonly span: Span;
  readonly items: readonly Tree[];
  readonly plain: readonly unknown[];
  readonly size: number;
}

export interface ScalarTree {
  readonly kind: 'scalar';
  /** Where nothing is written, the empty place in which a value would stand. */
  readonly span: Span;
  /** null while there is no value. */
  readonly plain: string | number | boolean | null;
  /** What stands for the value, character by character, before YAML makes it a number or a word. */
  readonly source: string;
  /** The offset of `source` in the text; undefined where escapes, folding or an alias part the two. */
  readonly offset: number | undefined;
  readonly size: 1;
}

export type Tree = MapTree | ListTree | ScalarTree;

export function isEmpty(tree: Tree): boolean {
  return tree.kind === 'scalar' && tree.plain === null;
}

export function valueAt(tree: Tree | undefined, key: string): Tree | undefined {
  return tree?.kind === 'map' ? tree.pairs.get(key)?.value : undefined;
}
