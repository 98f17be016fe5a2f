// Takes the marks out of a test's text: `$0` for the cursor, so that no test counts lines and columns.
import type { Position } from '../src/analysis/result.ts';

export interface Marked {
  readonly text: string;
  readonly offset: number;
  readonly position: Position;
}

export function marked(source: string): Marked {
  const offset = source.indexOf('$0');
  if (offset < 0) throw new Error('The text has no $0.');
  const before = source.slice(0, offset).split('\n');
  return {
    text: source.slice(0, offset) + source.slice(offset + 2),
    offset,
    position: { line: before.length - 1, character: before.at(-1)!.length },
  };
}
