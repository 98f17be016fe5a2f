// Says where a key waits for its value; knows nothing of what the keys mean.
import type { Problem, Span } from '../measure/measure.ts';
import { quote } from '../measure/quote.ts';
import { isEmpty, type ScalarTree, type Tree } from './tree.ts';

export function noValue(span: Span, key: string): Problem {
  return {
    code: 'no-value-yet',
    span,
    found: `no value for ${quote(key)} yet`,
    expected: 'one when it is known',
  };
}

/** Of a measurement as a form leaves it: unit, direction and method wait for their number. */
export function noNumber({ source, span }: ScalarTree): Problem {
  return {
    code: 'no-value-yet',
    span,
    found: `no number with ${quote(source)} yet`,
    expected: 'one when it is known',
  };
}

/** By list, the key that says what an item is about. */
const namedBy: ReadonlyMap<string, string> = new Map([
  ['faults', 'fault'],
  ['misses', 'miss'],
  ['plan', 'change'],
  ['changes', 'change'],
  ['tends_to', 'effect'],
  ['evidence', 'expression'],
  ['injuries', 'part'],
]);

/** Every empty place of the tree, empty brackets and items that do not say what they are about included; `name` is the key above. */
export function findEmpty(tree: Tree, problems: Problem[], name = ''): void {
  if (tree.size === 1 && (tree.kind !== 'scalar' || isEmpty(tree))) problems.push(noValue(tree.span, name));
  else if (tree.kind === 'map')
    for (const { key, value } of tree.pairs.values()) findEmpty(value, problems, key);
  else if (tree.kind === 'list')
    for (const item of tree.items) {
      problems.push(...unnamedIn(item, namedBy.get(name)));
      findEmpty(item, problems, name);
    }
}

function unnamedIn(item: Tree, key: string | undefined): readonly Problem[] {
  if (key === undefined || item.kind !== 'map' || item.pairs.has(key)) return [];
  const [first] = item.pairs.values();
  if (first === undefined) return [];
  const found = `no ${quote(key)} beside ${quote(first.key)}`;
  return [
    {
      code: 'no-value-yet',
      span: first.keySpan,
      found,
      expected: `${quote(key)}, without which nothing is made of the rest`,
    },
  ];
}
