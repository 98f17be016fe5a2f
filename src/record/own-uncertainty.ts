// Reads how sure a measurement of a workspace's own quantity is, by method or for all of them; knows no other field.
import type { Notation } from '../measure/measure.ts';
import { findNearest } from '../measure/nearest.ts';
import { quote } from '../measure/quote.ts';
import { showWindow } from '../measure/show.ts';
import type { Quantity, Range } from '../registry/quantity.ts';
import type { Reader } from './entry.ts';
import { readFigure } from './figure.ts';
import { valueAt, type Tree } from './tree.ts';

type Uncertainty = Quantity['uncertainty'];

/** A difference of this share of its window matters, where nobody says how well it can be measured (judgement). */
const readTo = 1 / 20;

export function unknownWithin({ min, max }: Range): Uncertainty {
  return { otherwise: (max - min) * readTo, by: {}, isUnknown: true };
}

/** Undefined where none is given or none can be read, which the problems say. */
export function uncertaintyAt(value: Tree, { dimension }: Notation, reader: Reader): Uncertainty | undefined {
  const tree = valueAt(value, 'uncertainty');
  if (tree?.kind === 'scalar') {
    const otherwise = figureAt(tree, dimension, reader);
    return otherwise === undefined ? undefined : { otherwise, by: {} };
  }
  if (tree?.kind !== 'map') return undefined;
  const by: Record<string, number> = {};
  for (const { key, keySpan, value: below } of tree.pairs.values()) {
    const u = figureAt(below, dimension, reader);
    if (key !== 'otherwise' && !reader.registry.methodNames.includes(key)) {
      const nearest = findNearest(key, ['otherwise', ...reader.registry.methodNames]);
      const expected = '`otherwise` or a method of measuring';
      reader.problems.push({
        code: 'unknown-word',
        span: keySpan,
        found: quote(key),
        expected,
        ...(nearest === undefined ? {} : { nearest }),
      });
    } else if (u !== undefined) by[key] = u;
  }
  const { otherwise = Math.max(0, ...Object.values(by)), ...others } = by;
  return otherwise > 0 ? { otherwise, by: others } : undefined;
}

/** Who knows no more than the bounds is off by less than their width. */
export function checkWidth(
  value: Tree,
  { otherwise }: Uncertainty,
  notation: Notation,
  { min, max }: Range,
  { problems }: Reader,
): void {
  const tree = valueAt(value, 'uncertainty');
  if (tree === undefined || otherwise <= max - min) return;
  problems.push({
    code: 'number-out-of-range',
    span: tree.span,
    found: 'an uncertainty wider than all that is possible',
    expected: `less than the width of ${quote(showWindow(notation, min, max))}`,
  });
}

function figureAt(tree: Tree, dimension: Notation['dimension'], reader: Reader): number | undefined {
  return tree.kind === 'scalar' && tree.plain !== null ? readFigure(tree, dimension, reader) : undefined;
}
