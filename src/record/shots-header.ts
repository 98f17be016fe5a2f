// Tells from the first line of a file of shots what each column holds; knows nothing of the lines below it.
import type { Notation, Problem, Span } from '../measure/measure.ts';
import { findNearest } from '../measure/nearest.ts';
import { quote } from '../measure/quote.ts';
import type { Quantity } from '../registry/quantity.ts';
import type { Registry } from '../registry/registry.ts';
import type { ShotColumn, ShotColumns } from './document.ts';
import { readUnit } from './shot-columns.ts';
import { findShotQuantity, isBrokenShotQuantity, shotKeys } from './shot-quantity.ts';

export interface HeaderCell {
  readonly text: string;
  readonly span: Span;
}

/** A column that is read. */
export interface ReadColumn {
  /** Its place in a row, from 0. */
  readonly index: number;
  readonly quantity: Quantity;
  /** The quantity's, with the unit of the column for bare numbers. */
  readonly notation: Notation;
  readonly by: string | undefined;
}

export interface Header {
  readonly columns: readonly ReadColumn[];
  readonly problems: readonly Problem[];
}

/** Columns that a file may well have and that hold nothing to compute with. */
const wordColumns: ReadonlySet<string> = new Set(['shot', 'shape', 'note']);

/** `carry [yd]`, `carry (yd)`: the name, and the unit in brackets. */
const withUnit = /^(.*\S)\s*(?:\[([^\][]*)\]|\(([^()]*)\))$/s;

/** Names that the workspace gives come first, as a whole; then ids and short keys, with or without a unit in brackets. */
export function readHeader(cells: readonly HeaderCell[], known: ShotColumns, registry: Registry): Header {
  const named = new Map([...known.named].map(([name, column]) => [folded(name), column]));
  const columns: ReadColumn[] = [];
  const problems: Problem[] = [];
  for (const [index, cell] of cells.entries()) {
    const read = readCell(cell, named, [...known.named.keys()], registry);
    if (read === undefined) continue;
    if ('code' in read) {
      problems.push(read);
      continue;
    }
    const { quantity, unit, by } = read;
    if (columns.some((other) => other.quantity.id === quantity.id)) {
      problems.push({
        code: 'unknown-column',
        span: cell.span,
        found: `${quote(cell.text)}, a second column of ${quote(quantity.id)}`,
        expected: 'one',
      });
      continue;
    }
    const notation = unit === undefined ? quantity : { ...quantity, unit };
    columns.push({ index, quantity, notation, by: by ?? known.by });
  }
  return { columns, problems };
}

type Named = Extract<ShotColumn, { readonly kind: 'quantity' }>;
type ColumnMeaning = Pick<Named, 'quantity' | 'unit' | 'by'>;

function readCell(
  { text, span }: HeaderCell,
  named: ReadonlyMap<string, ShotColumn>,
  names: readonly string[],
  registry: Registry,
): ColumnMeaning | Problem | undefined {
  if (text === '') return undefined;
  const mapped = named.get(folded(text));
  if (mapped !== undefined) return mapped.kind === 'ignored' ? undefined : mapped;
  const bracketed = withUnit.exec(text);
  const name = bracketed?.[1] ?? text;
  if (wordColumns.has(folded(name))) return undefined;
  const quantity = findShotQuantity(keyOf(name), registry);
  if (quantity === undefined) {
    const nearest = isBrokenShotQuantity(keyOf(name), registry)
      ? undefined
      : (findNearest(text, names) ?? findNearest(keyOf(name), shotKeys(registry)));
    return {
      code: 'unknown-column',
      span,
      found: quote(text),
      expected: 'the id of a quantity, a short key such as `carry`, or a name in `swingwright.yaml`',
      ...(nearest === undefined ? {} : { nearest }),
    };
  }
  const written = bracketed?.[2] ?? bracketed?.[3];
  if (written === undefined) return { quantity, unit: undefined, by: undefined };
  const { unit, problem } = readUnit(written.trim(), quantity);
  if (problem === undefined) return { quantity, unit, by: undefined };
  return {
    ...problem,
    code: 'unknown-column',
    span,
    found: `${quote(text)}, with the unit ${problem.found}`,
  };
}

/** Letter case and runs of white space do not part two names. */
function folded(name: string): string {
  return name.trim().replace(/\s+/g, ' ').toLowerCase();
}

/** "Ball Speed" is `ball_speed`. */
function keyOf(name: string): string {
  return folded(name).replaceAll(' ', '_');
}
