// Collects the entries below a section by their full ids; keys that the registry does not know are left to the schema.
import { quote } from '../measure/quote.ts';
import { standardUncertainty } from '../registry/registry.ts';
import type { Entry } from './document.ts';
import { readEntry, type Reader } from './entry.ts';
import { valueAt, type Tree } from './tree.ts';

export function readSection(tree: Tree, section: string, entries: Map<string, Entry>, reader: Reader): void {
  const below = valueAt(tree, section);
  if (below !== undefined) readEntries(below, section, entries, reader);
}

/** The entries of this mapping and of the mappings below it; `prefix` is the id of the place. */
export function readEntries(tree: Tree, prefix: string, entries: Map<string, Entry>, reader: Reader): void {
  if (tree.kind !== 'map') return;
  for (const pair of tree.pairs.values()) {
    // A dotted key would look like an id that belongs further down.
    if (pair.key.includes('.')) continue;
    const id = `${prefix}.${pair.key}`;
    const quantity = reader.registry.find(id);
    if (quantity !== undefined) entries.set(id, withUncertainty(readEntry(pair, quantity, reader), reader));
    else readEntries(pair.value, id, entries, reader);
  }
}

/** Readings of which nobody says how sure they are are left out: a number without that could not be held against others. */
function withUncertainty(entry: Entry, { registry, problems }: Reader): Entry {
  const { quantity, readings } = entry;
  if (quantity.uncertainty.isUnknown !== true) return entry;
  const sure = readings.filter(({ measure }) => {
    if (standardUncertainty(quantity, measure, 1, registry).origin !== 'quantity') return true;
    problems.push({
      code: 'missing-uncertainty',
      span: measure.spans.number,
      found: 'a measurement of what is otherwise computed, and nothing that says how sure it is',
      expected: `\`±\`, or \`uncertainty\` where \`swingwright.yaml\` declares ${quote(quantity.id)}`,
    });
    return false;
  });
  return { ...entry, readings: sure };
}
