// Reads which quantity is to be changed, and to what; knows no kind of file.
import { findNearest } from '../measure/nearest.ts';
import { quote } from '../measure/quote.ts';
import type { Quantity } from '../registry/quantity.ts';
import type { Located, PlannedChange } from './document.ts';
import { readTarget, type Reader } from './entry.ts';
import { valueAt, type Tree } from './tree.ts';
import { wordAt, wordsOf } from './word.ts';

export function readPlan(tree: Tree | undefined, reader: Reader): readonly PlannedChange[] {
  if (tree?.kind !== 'list') return [];
  return tree.items.flatMap((item) => (item.kind === 'map' ? [readPlannedChange(item, reader)] : []));
}

function readPlannedChange(tree: Tree & { kind: 'map' }, reader: Reader): PlannedChange {
  const change = wordAt(tree, 'change');
  const quantity = findNamed(change, reader);
  const to = tree.pairs.get('to');
  const target = quantity && to && readTarget(to, 'value', quantity, reader);
  return {
    change,
    to: target && { target, span: to.value.span },
    because: wordsOf(valueAt(tree, 'because')),
    proof: wordAt(tree, 'proof'),
    span: tree.span,
  };
}

/** The quantity whose full id is written here; a problem where there is none. */
export function findNamed(id: Located<string> | undefined, reader: Reader): Quantity | undefined {
  if (id === undefined) return undefined;
  const quantity = reader.registry.find(id.value);
  if (quantity !== undefined) return quantity;
  const ids = reader.registry.quantities.map((known) => known.id);
  // Who leaves out the section most likely means the quantity of that key.
  const nearest = ids.find((known) => known.endsWith(`.${id.value}`)) ?? findNearest(id.value, ids);
  reader.problems.push({
    code: 'unknown-word',
    span: id.span,
    found: quote(id.value),
    expected: 'the full id of a quantity, such as `checkpoints.address.stance_width`',
    ...(nearest === undefined ? {} : { nearest }),
  });
  return undefined;
}
