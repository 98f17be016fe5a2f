// Says which id a key has at a place of a file, for quantities that the schema does not know; knows no values.
import type { Registry } from '../registry/registry.ts';
import type { FileKind } from './document.ts';

export type Path = readonly (string | number)[];

/** What the ids of the keys at this place begin with; undefined where no quantity may stand. */
export function prefixAt(kind: FileKind, path: Path): string | undefined {
  const isListed = path.length === 2 && typeof path[1] !== 'undefined';
  if (isListed && path[0] === 'goals') return 'flight';
  if (kind === 'swing' && isListed && path[0] === 'shots') return 'flight';
  if (kind === 'student')
    return path.length === 0 ? 'student' : isListed && path[0] === 'bag' ? 'club' : undefined;
  const isSwing = kind === 'swing' || kind === 'template';
  return isSwing && path.length > 0 && path.every((part) => typeof part === 'string')
    ? path.join('.')
    : undefined;
}

/** The keys at this place that only the workspace's own quantities bring, each with what comes next of their ids. */
export function ownKeysAt(kind: FileKind, path: Path, { own }: Registry): readonly string[] {
  const prefix = own.length === 0 ? undefined : prefixAt(kind, path);
  if (prefix === undefined) return [];
  const below = own.filter(({ id }) => id.startsWith(`${prefix}.`));
  return [...new Set(below.map(({ id }) => id.slice(prefix.length + 1).split('.')[0]!))];
}
