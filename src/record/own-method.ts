// Refuses names of a workspace's own methods that could be read as something else behind `by`; knows no figure.
import { quote } from '../measure/quote.ts';
import { findUnit } from '../measure/units.ts';
import type { Reader } from './entry.ts';
import type { Pair } from './tree.ts';

/** Whether the name is good. */
export function checkMethodName({ key, keySpan }: Pair, reader: Reader): boolean {
  const wrong = whatElse(key, reader);
  if (wrong === undefined) return true;
  reader.problems.push({
    code: 'unknown-word',
    span: keySpan,
    found: key.trim() === '' ? 'a method without a name' : `${quote(key)}, ${wrong}`,
    expected: 'a method in words that mean nothing else, such as `laser`',
  });
  return false;
}

/** What the name would be read as; undefined where it is good. */
function whatElse(key: string, { registry }: Reader): string | undefined {
  if (registry.findMethod(key) !== undefined) return undefined;
  const lower = key.trim().toLowerCase();
  if (lower === '') return 'which is no word';
  // Behind `by` in one line YAML itself takes some of these for the end of the words.
  if (/±|\+-|\+\/-|[#:,[\]{}]|[\p{Cc}]/u.test(key)) return 'in which a sign says something else';
  if (lower.split(/\s+/).includes('by')) return 'in which `by` would be followed by a method';
  if (/^[~+\-−.]?\d+(?:[.,]\d+)?(?:\s|$)/.test(lower)) return 'which begins like a measurement';
  const unit = findUnit(key.trim());
  if (unit !== undefined) return `a unit of ${unit.dimension}`;
  const isDirection = registry.quantities.some(({ directions }) =>
    directions.some(({ word }) => word.toLowerCase() === lower),
  );
  return isDirection ? 'a direction' : undefined;
}
