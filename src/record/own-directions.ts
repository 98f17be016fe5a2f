// Reads the direction words of a workspace's own quantity and refuses those that could be read as something else; knows no number.
import type { DirectionWord } from '../measure/measure.ts';
import { quote } from '../measure/quote.ts';
import { findUnit } from '../measure/units.ts';
import type { Reader } from './entry.ts';
import type { Pair, Tree } from './tree.ts';
import { locate } from './word.ts';

/** Undefined where none are given. */
export function directionsOf(tree: Tree | undefined, reader: Reader): readonly DirectionWord[] | undefined {
  if (tree?.kind !== 'map') return undefined;
  const words: DirectionWord[] = [];
  for (const pair of tree.pairs.values()) {
    const sign = locate(pair.value)?.value;
    const wrong = whatElse(pair, words, reader);
    if (wrong !== undefined)
      reader.problems.push({
        code: 'unknown-word',
        span: pair.keySpan,
        found: `${quote(pair.key)}, ${wrong}`,
        expected: 'a direction in words that mean nothing else, such as `open` or `toward heel`',
      });
    else if (sign === 'positive' || sign === 'negative')
      words.push({ word: pair.key, sign: sign === 'positive' ? 1 : -1 });
  }
  return words;
}

/** Letters, in words one space apart; a hyphen or an apostrophe may stand within one. */
const plainWords = /^\p{L}[\p{L}\p{M}]*(?:[-' ]\p{L}[\p{L}\p{M}]*)*$/u;

/** What the word would be read as; undefined where it is good. */
function whatElse({ key }: Pair, before: readonly DirectionWord[], { registry }: Reader): string | undefined {
  const lower = key.toLowerCase();
  const parts = lower.split(' ');
  if (!plainWords.test(key)) return 'which is no word';
  if (parts.includes('by')) return 'in which `by` would be followed by a method';
  if (registry.methodNames.some((name) => name.toLowerCase() === lower)) return 'a method of measuring';
  // A number and its unit come before the direction, so that "in front" would be inches.
  const unit = findUnit(parts.slice(0, 2).join(' ')) ?? findUnit(parts[0] ?? '');
  if (unit !== undefined) return `which would be read as a unit of ${unit.dimension}`;
  if (before.some(({ word }) => word.toLowerCase() === lower)) return 'which stands here already';
  return undefined;
}
