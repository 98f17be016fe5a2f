// Reads one measurement or window written by a coach; knows nothing of YAML or of what is measured.
import type { Notation, Parsed, ParseOptions } from './measure.ts';

/**
 * Reads `["~"] NUMBER ["±" NUMBER] [UNIT] [DIRECTION] ["±" NUMBER [UNIT]] ["by" METHOD]` or `A..B UNIT [DIRECTION]`.
 * Never throws on text; throws RangeError only if `notation.unit` is not in the unit table.
 */
export function parseMeasure(text: string, notation: Notation, options: ParseOptions): Parsed {
  (void text, notation, options);
  return { value: undefined, problems: [] };
}
