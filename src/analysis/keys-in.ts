// Says below which keys of a file a place stands; knows no meaning of keys.
import type { OutlineNode, SwingwrightDocument } from '../record/document.ts';
import { isBefore, lineTableOf, rangeOf } from './positions.ts';
import type { Position, TextRange } from './result.ts';

/** From the outermost key inwards, as far as the outline goes; none at the top of a file, or where it could not be read. */
export function keysIn({
  outline,
  text,
}: Pick<SwingwrightDocument, 'outline' | 'text'>): (range: TextRange) => readonly string[] {
  const table = lineTableOf(text);
  const around = (nodes: readonly OutlineNode[], at: Position): OutlineNode | undefined =>
    nodes.find(({ span }) => {
      const { start, end } = rangeOf(table, span);
      return !isBefore(at, start) && !isBefore(end, at);
    });
  return ({ start }) => {
    const keys: string[] = [];
    for (let node = around(outline, start); node !== undefined; node = around(node.children, start))
      keys.push(node.name);
    return keys;
  };
}
