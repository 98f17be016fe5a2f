// Tells a measurement in which only the number is missing, as a form leaves it, from one that cannot be read; knows no file.
import type { Notation } from './measure.ts';
import { parseMeasure } from './parse.ts';

/** True of `cm ahead by video`: with a number before it, nothing would be wrong. */
export function lacksNumber(text: string, notation: Notation, methods: readonly string[]): boolean {
  const rest = text.trim().replace(/^~\s*/, '');
  if (rest === '' || /^[\d.,+\-−]/.test(rest.replace(/^\+-/, '±'))) return false;
  // Nothing has no direction that it must have.
  const { value, problems } = parseMeasure(`0 ${rest}`, notation, { window: 'no', methods });
  return value !== undefined && problems.length === 0;
}
