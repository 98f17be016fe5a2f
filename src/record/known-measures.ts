// Reads measurements, and keeps what the last texts of each quantity were read as; knows no file.
import type { Notation, Parsed, ParseOptions } from '../measure/measure.ts';
import { parseMeasure } from '../measure/parse.ts';

/** By the methods that may be named, by notation, by what may stand there and the text itself. */
const kept = new WeakMap<readonly string[], WeakMap<Notation, Map<string, Parsed>>>();

/** A quantity has some readings in the records that are open; more would be texts that nobody has before him any more. */
const mostTexts = 16;

/** As `parseMeasure`, which is pure: the same text is read the same, whatever was read before. Its places are those in `text`. */
export function measureFrom(text: string, notation: Notation, options: ParseOptions): Parsed {
  const known = textsOf(options.methods, notation);
  const key = `${options.window} ${text}`;
  const before = known.get(key);
  if (before !== undefined) return before;
  const parsed = parseMeasure(text, notation, options);
  if (known.size >= mostTexts) known.clear();
  known.set(key, parsed);
  return parsed;
}

function textsOf(methods: readonly string[], notation: Notation): Map<string, Parsed> {
  let byNotation = kept.get(methods);
  if (byNotation === undefined) kept.set(methods, (byNotation = new WeakMap()));
  let texts = byNotation.get(notation);
  if (texts === undefined) byNotation.set(notation, (texts = new Map<string, Parsed>()));
  return texts;
}
