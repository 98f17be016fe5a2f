// Reads what a plan is predicted to lead to: quantities by their full ids, each with where the prediction comes from; knows no plan.
import { findQuantity } from '../registry/registry.ts';
import type { Entry } from './document.ts';
import { readEntry, type Reader } from './entry.ts';
import type { Tree } from './tree.ts';

/** A prediction is not measured: behind `by` stands whether the model or a belief gave it. */
export const predictionOrigins: readonly string[] = ['model', 'belief'];

export function readPredicted(tree: Tree | undefined, reader: Reader): ReadonlyMap<string, Entry> {
  const predicted = new Map<string, Entry>();
  if (tree?.kind !== 'map') return predicted;
  const ownReader: Reader = { ...reader, methods: predictionOrigins };
  for (const pair of tree.pairs.values()) {
    const quantity = findQuantity(pair.key);
    if (quantity !== undefined) predicted.set(quantity.id, readEntry(pair, quantity, ownReader));
  }
  return predicted;
}
