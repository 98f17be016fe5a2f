// The words that the format itself is made of, in small letters: a name that is one of them cannot be told from it.
import { knownKeys, type KeyTree } from '../record/keys.generated.ts';
import { clubKinds, methods, misses, quantities, shapes } from '../registry/generated.ts';

export const formatWords: ReadonlySet<string> = new Set(
  [
    ...Object.values(knownKeys).flatMap(keysIn),
    ...quantities.flatMap(({ id, directions }) => [id, ...directions.map(({ word }) => word)]),
    ...methods.map(({ name }) => name),
    ...misses.map(({ word }) => word),
    ...shapes.map(({ word }) => word),
    ...clubKinds,
  ].flatMap((word) => word.toLowerCase().split(/[^\p{L}]+/u)),
);

function keysIn(tree: KeyTree): readonly string[] {
  return Object.entries(tree).flatMap(([key, below]) => [key, ...keysIn(below)]);
}
