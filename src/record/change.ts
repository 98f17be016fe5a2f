// Reads which quantity is to be changed, and to what; knows no kind of file.
import { quote } from '../measure/quote.ts';
import type { Quantity } from '../registry/quantity.ts';
import { expectId, nearestId } from '../registry/registry.ts';
import type { Entry, Located, PlannedChange } from './document.ts';
import { readEntry, readTarget, type Reader } from './entry.ts';
import { noValue } from './no-value.ts';
import { valueAt, type Tree } from './tree.ts';
import { wordAt, wordsAt, wordsOf } from './word.ts';

export function readPlan(tree: Tree | undefined, reader: Reader): readonly PlannedChange[] {
  if (tree?.kind !== 'list') return [];
  return tree.items.flatMap((item) => (item.kind === 'map' ? [readPlannedChange(item, reader)] : []));
}

function readPlannedChange(tree: Tree & { kind: 'map' }, reader: Reader): PlannedChange {
  const change = wordAt(tree, 'change');
  const quantity = findNamed(change, reader);
  const to = tree.pairs.get('to');
  const target = quantity && to && readTarget(to, 'value', quantity, reader);
  if (change !== undefined && quantity !== undefined && to === undefined)
    reader.problems.push(noValue(change.span, 'to'));
  return {
    change,
    quantity,
    to: target && { target, span: to.value.span },
    because: wordsOf(valueAt(tree, 'because')),
    proof: wordAt(tree, 'proof'),
    feel: wordsAt(tree, 'feel'),
    note: wordsAt(tree, 'note'),
    span: tree.span,
  };
}

/** Where a prediction comes from; in the place of the method that measured. */
export const origins = ['model', 'belief'] as const;
export type Origin = (typeof origins)[number];

/** By the full ids that it is written with. */
export function readPredicted(tree: Tree | undefined, reader: Reader): ReadonlyMap<string, Entry> {
  const predicted = new Map<string, Entry>();
  if (tree?.kind !== 'map') return predicted;
  for (const pair of tree.pairs.values()) {
    const quantity = findNamed({ value: pair.key, span: pair.keySpan }, reader);
    if (quantity !== undefined)
      predicted.set(
        quantity.id,
        readEntry(pair, quantity, { ...reader, registry: { ...reader.registry, methodNames: origins } }),
      );
  }
  return predicted;
}

/** The quantity whose full id is written here; a problem where there is none. */
export function findNamed(id: Located<string> | undefined, reader: Reader): Quantity | undefined {
  if (id === undefined) return undefined;
  const quantity = reader.registry.find(id.value);
  if (quantity !== undefined) return quantity;
  const nearest = nearestId(id.value, reader.registry);
  reader.problems.push({
    code: 'unknown-word',
    span: id.span,
    found: quote(id.value),
    expected: expectId(id.value, reader.registry, 'checkpoints.address.stance_width'),
    ...(nearest === undefined ? {} : { nearest }),
  });
  return undefined;
}
