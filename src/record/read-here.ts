// Reads a number or a window that stands as one scalar, with its problems placed in the file; knows no quantity.
import type { Notation, ParseOptions, Parsed } from '../measure/measure.ts';
import { parseMeasure } from '../measure/parse.ts';
import type { Reader } from './entry.ts';
import { isEmpty, type Tree } from './tree.ts';

/** Undefined where nothing can be read, which the shape or a problem says. */
export function readHere(
  tree: Tree | undefined,
  notation: Notation,
  options: ParseOptions,
  reader: Reader,
): Parsed['value'] {
  if (tree?.kind !== 'scalar' || isEmpty(tree) || typeof tree.plain === 'boolean') return undefined;
  const { value, problems } = parseMeasure(tree.source, notation, options);
  const { offset, span } = tree;
  for (const problem of problems) {
    const at =
      offset === undefined ? span : { start: problem.span.start + offset, end: problem.span.end + offset };
    reader.problems.push({ ...problem, span: at });
  }
  return value;
}
