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

/** Every empty place of the tree, empty brackets included; `name` is the key above. */
export function findEmpty(tree: Tree, problems: Problem[], name = ''): void {
  if (tree.size === 1 && (tree.kind !== 'scalar' || isEmpty(tree))) problems.push(noValue(tree.span, name));
  else if (tree.kind === 'map')
    for (const { key, value } of tree.pairs.values()) findEmpty(value, problems, key);
  else if (tree.kind === 'list') for (const item of tree.items) findEmpty(item, problems, name);
}
