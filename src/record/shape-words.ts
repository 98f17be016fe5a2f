// Says in words what the shape of a file expects at a place; holds nothing against it.
import type { Path } from './id-at.ts';

/** Of a condition, what one looks like: "words" would tell nobody what to write there. */
export function expectedAt(path: Path, types: readonly string[]): string {
  const key = path.findLast((part) => typeof part === 'string');
  return conditionKeys.has(String(key))
    ? 'a condition on what is measured, such as `delivery.path <= 2 deg` (right, ahead and up are positive)'
    : shapesOf(types);
}

const conditionKeys: ReadonlySet<string> = new Set(['proof', 'evidence', 'expression', 'when']);

function shapesOf(types: readonly string[]): string {
  const isMeasure = types.includes('number') && types.includes('object');
  if (isMeasure) return 'a measurement, such as `47 cm`';
  const words = types.flatMap((type) => typeWords[type] ?? []);
  // Where free words may stand, a number is taken as words.
  const shown = types.includes('string') ? words.filter((word) => word !== typeWords.number) : words;
  return shown.join(' or ');
}

const typeWords: Readonly<Record<string, string>> = {
  string: 'words',
  number: 'a number',
  integer: 'a whole number',
  boolean: '`true` or `false`',
  object: 'a mapping (keys with values)',
  array: 'a list',
};
