// Says which keys are known at a place of a file, from the generated table; knows nothing of values.
import { builtIn, type Registry } from '../registry/registry.ts';
import type { FileKind } from './document.ts';
import { ownKeysAt } from './id-at.ts';
import { knownKeys, type KeyTree } from './keys.generated.ts';

/** The known keys below this path; list places are numbers. Undefined where the user names the keys. */
export function keysAt(
  kind: FileKind,
  path: readonly (string | number)[],
  registry: Registry = builtIn,
): readonly string[] | undefined {
  const own = ownKeysAt(kind, path, registry);
  let tree: KeyTree | undefined = knownKeys[kind];
  for (const part of path) {
    tree = typeof part === 'number' ? tree['[]'] : Object.hasOwn(tree, part) ? tree[part] : tree['*'];
    if (tree === undefined) return own;
  }
  return tree['*'] === undefined ? [...Object.keys(tree).filter((key) => key !== '[]'), ...own] : undefined;
}

/** Keys of this kind of file that hold other keys, those that are no measurements first. */
export function headersOf(kind: FileKind): readonly string[] {
  return (headers[kind] ??= findHeaders(knownKeys[kind]));
}

const headers: Partial<Record<FileKind, readonly string[]>> = {};

function findHeaders(root: KeyTree): readonly string[] {
  const sections = new Set<string>();
  const measures = new Set<string>();
  const look = (tree: KeyTree): void => {
    for (const [key, below] of Object.entries(tree)) {
      if (Object.keys(below).length === 0) continue;
      if (key !== '*' && key !== '[]') (isMeasure(below) ? measures : sections).add(key);
      if (!isMeasure(below)) look(below);
    }
  };
  look(root);
  return [...sections, ...measures];
}

function isMeasure(tree: KeyTree): boolean {
  return Object.hasOwn(tree, 'value') || Object.hasOwn(tree, 'window');
}
