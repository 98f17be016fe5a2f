// Says where in a file a cursor stands: under which keys, as a key or as a value; reads lines and brackets only, so that half-written text is no hindrance.
import type { Span } from '../measure/measure.ts';
import { walkLines } from './cursor-lines.ts';
import { createWalk } from './cursor-walk.ts';

export interface Cursor {
  /** `item`: at the start of an item of a list, where a value or the first key of a mapping may stand. */
  readonly role: 'key' | 'value' | 'item' | 'comment';
  /** Of the mapping that the key belongs to; of the value itself. List places are numbers. */
  readonly path: readonly (string | number)[];
  /** The other keys of that mapping, those below the cursor included. */
  readonly siblings: ReadonlySet<string>;
  /** What is written there, quotes aside; empty, and at the cursor, where nothing is. */
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

/** Undefined in free text of several lines, at the very start of a word, and wherever nothing may be written. */
export function cursorAt(text: string, offset: number): Cursor | undefined {
  const walk = createWalk(text, offset);
  walkLines(walk);
  if (walk.found === undefined) return undefined;
  const { frames, slot } = walk.found;
  const isKey = slot.role === 'key';
  const mapping = slot.mapping?.keys ?? [];
  return {
    role: slot.role,
    path: (isKey ? frames.slice(0, -1) : frames).map(({ kind, key, index }) => (kind === 'map' ? key : index)),
    siblings: new Set(mapping.flatMap(({ name, start }) => (start === slot.word.start ? [] : [name]))),
    word: slot.word,
    quote: slot.quote,
    style: slot.style,
    before: slot.before,
    column: slot.column,
    after: slot.after,
  };
}
