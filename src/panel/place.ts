// Which thing of a sheet the cursor stands on; knows no page.
import { isBefore } from '../language/places.ts';
import type { Position, TextRange } from '../language/shapes.ts';
import type { Sheet } from '../language/sheet.ts';

/** The id of the entry at a position: the smallest one that holds it, else the only one on its line. */
export function thingAt(things: Sheet['things'], position: Position): string | undefined {
  const placed = Object.entries(things).flatMap(([id, { range }]) => (range === null ? [] : [{ id, range }]));
  const around = placed.filter(({ range }) => holds(range, position));
  if (around.length > 0)
    return around.reduce((best, one) => (isBefore(best.range.start, one.range.start) ? one : best)).id;
  const beside = placed.filter(
    ({ range: { start, end } }) => start.line === position.line && end.line === position.line,
  );
  return beside.length === 1 ? beside[0]!.id : undefined;
}

function holds({ start, end }: TextRange, position: Position): boolean {
  return !isBefore(position, start) && !isBefore(end, position);
}
