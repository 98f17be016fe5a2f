// Reads from the workspace file what the columns of files of shots hold; opens no such file.
import { readMethod } from '../measure/method.ts';
import type { Problem } from '../measure/measure.ts';
import { findNearest } from '../measure/nearest.ts';
import { quote, quoteList } from '../measure/quote.ts';
import { findUnit, unitsOf } from '../measure/units.ts';
import type { Quantity } from '../registry/quantity.ts';
import type { Located, ShotColumn, ShotColumns } from './document.ts';
import type { Reader } from './entry.ts';
import { findShotQuantity, isBrokenShotQuantity, shotKeys } from './shot-quantity.ts';
import { valueAt, type Tree } from './tree.ts';
import { locate, wordAt } from './word.ts';

export const noColumns: ShotColumns = { by: undefined, named: new Map() };

/** A guess costs a look at every quantity; a file with more problems than this is no settings file. */
const mostGuesses = 200;

const ignored: ShotColumn = { kind: 'ignored' };
const ignoreWord = 'ignore';

export function readShotColumns(tree: Tree | undefined, reader: Reader): ShotColumns {
  if (tree?.kind !== 'map') return noColumns;
  const named = new Map<string, ShotColumn>();
  const columns = valueAt(tree, 'columns');
  if (columns?.kind === 'map') {
    for (const { key, value } of columns.pairs.values()) {
      const column = readColumn(value, reader);
      if (column !== undefined) named.set(key, column);
    }
  }
  return { by: methodAt(wordAt(tree, 'by'), reader), named };
}

function readColumn(tree: Tree, reader: Reader): ShotColumn | undefined {
  const word = tree.kind === 'map' ? wordAt(tree, 'quantity') : locate(tree);
  if (word === undefined) return undefined;
  if (word.value === ignoreWord) return ignored;
  const quantity = findShotQuantity(word.value, reader.registry);
  if (quantity === undefined) {
    const isLost = reader.problems.length > mostGuesses || isBrokenShotQuantity(word.value, reader.registry);
    const nearest = isLost ? undefined : findNearest(word.value, [...shotKeys(reader.registry), ignoreWord]);
    reader.problems.push({
      code: 'unknown-word',
      span: word.span,
      found: quote(word.value),
      expected: 'a quantity of flight, delivery or strike, such as `flight.carry`, or `ignore`',
      ...(nearest === undefined ? {} : { nearest }),
      unknown: word.value,
    });
    return undefined;
  }
  const unit = unitAt(wordAt(tree, 'unit'), quantity, reader);
  return { kind: 'quantity', quantity, unit, by: methodAt(wordAt(tree, 'by'), reader) };
}

function unitAt(word: Located<string> | undefined, quantity: Quantity, reader: Reader): string | undefined {
  if (word === undefined) return undefined;
  const { unit, problem } = readUnit(word.value, quantity);
  if (problem !== undefined) reader.problems.push({ ...problem, span: word.span });
  return unit;
}

/** The canonical name of a unit that fits the quantity, or what is wrong with it. */
export function readUnit(
  text: string,
  quantity: Quantity,
): { readonly unit?: string; readonly problem?: Omit<Problem, 'span'> } {
  const unit = findUnit(text);
  if (unit?.dimension === quantity.dimension) return { unit: unit.name };
  const names = unitsOf(quantity.dimension).map(({ name }) => name);
  const nearest = unit === undefined ? findNearest(text, names) : undefined;
  return {
    problem: {
      code: unit === undefined ? 'unknown-unit' : 'wrong-dimension',
      found: quote(text),
      expected: names.length === 0 ? 'no unit' : `a unit of ${quantity.dimension} (${quoteList(names)})`,
      ...(nearest === undefined ? {} : { nearest }),
    },
  };
}

function methodAt(word: Located<string> | undefined, reader: Reader): string | undefined {
  if (word === undefined) return undefined;
  const { name, problem } = readMethod(
    word.value,
    { start: 0, end: word.value.length },
    reader.registry.methodNames,
  );
  if (problem !== undefined) reader.problems.push({ ...problem, span: word.span });
  return name;
}
