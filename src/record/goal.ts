// Reads goals: the shape of shot that is wanted and targets for what the ball does; knows no kind of file.
import type { Goal } from './document.ts';
import { readTarget, type Reader } from './entry.ts';
import type { Tree } from './tree.ts';
import { wordAt } from './word.ts';

export function readGoals(tree: Tree | undefined, reader: Reader): readonly Goal[] {
  if (tree?.kind !== 'list') return [];
  return tree.items.flatMap((item) => (item.kind === 'map' ? [readGoal(item, reader)] : []));
}

function readGoal(tree: Tree & { kind: 'map' }, reader: Reader): Goal {
  const targets = new Map<string, Goal['targets'] extends ReadonlyMap<string, infer T> ? T : never>();
  for (const pair of tree.pairs.values()) {
    const quantity = reader.registry.find(`flight.${pair.key}`);
    if (quantity === undefined) continue;
    const target = readTarget(pair, 'value', quantity, reader);
    if (target !== undefined)
      targets.set(pair.key, { quantity, target, keySpan: pair.keySpan, span: pair.value.span });
  }
  return {
    keys: [...tree.pairs.keys()].filter((key) => key !== 'club' && key !== 'note'),
    shape: wordAt(tree, 'shape'),
    targets,
    contact: wordAt(tree, 'contact'),
    club: wordAt(tree, 'club'),
    span: tree.span,
  };
}
