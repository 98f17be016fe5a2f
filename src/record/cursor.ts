// Says where in a file a cursor stands: under which keys, as a key or as a value; reads lines and brackets only, so that half-written text is no hindrance.
import type { Span } from '../measure/measure.ts';
import { walkLines } from './cursor-lines.ts';
import { createWalk } from './cursor-walk.ts';
import { lineEnd } from './lines.ts';

export interface Cursor {
  /** `item`: at the start of an item of a list, where a value or the first key of a mapping may stand. */
  readonly role: 'key' | 'value' | 'item' | 'comment';
  /** Of the mapping that the key belongs to; of the value itself. List places are numbers. */
  readonly path: readonly (string | number)[];
  /** The other keys of the mapping around, those below the cursor included, with where each begins. */
  readonly siblings: ReadonlyMap<string, number>;
  /** What is written there; empty, and at the cursor, where nothing is. Quotes belong to a key, and not to a value. */
  readonly word: Span;
  readonly quote: '' | '"' | "'";
  readonly style: 'block' | 'flow';
  /** What must be written before the word so that it stands right: a missing space, indentation, the dash of an item. */
  readonly before: string;
  /** The column at which a key stands, once `before` is written. */
  readonly column: number;
  /** What follows a key, up to the end of the line. */
  readonly after: string;
}

/** Undefined in free text of several lines, at the very start of a value, and wherever nothing may be written. */
export function cursorAt(text: string, offset: number): Cursor | undefined {
  const walk = createWalk(text, offset);
  walkLines(walk);
  if (walk.found === undefined) return undefined;
  const { frames, slot } = walk.found;
  const isKey = slot.role === 'key';
  const mapping = slot.mapping?.keys ?? (slot.role === 'value' ? frames.at(-1)?.keys : undefined) ?? [];
  return {
    role: slot.role,
    path: (isKey ? frames.slice(0, -1) : frames).map(({ kind, key, index }) =>
      kind === 'map' ? key : index,
    ),
    siblings: new Map(
      mapping.flatMap(({ name, start }) => (start === slot.word.start || name === '' ? [] : [[name, start]])),
    ),
    word: slot.word,
    quote: slot.quote,
    style: slot.style,
    before: slot.before,
    column: slot.column,
    after: slot.after,
  };
}

/** The word that another key of the mapping around has for its value, where it stands on one line. */
export function wordBeside(text: string, { siblings }: Cursor, key: string): string | undefined {
  const start = siblings.get(key);
  if (start === undefined) return undefined;
  const line = text.slice(start, lineEnd(text, start));
  return /^[^:]*:\s+(?:"([^"]*)"|'([^']*)'|([^\s,{}[\]#][^,{}[\]#]*))/
    .exec(line)
    ?.slice(1)
    .find((word) => word !== undefined)
    ?.trim();
}
