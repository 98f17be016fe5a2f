// What is kept while a text is walked toward its cursor: the open mappings and lists, and the place once it is met; reads no text itself.
import type { Span } from '../measure/measure.ts';
import { lineEnd } from './lines.ts';

/** An open mapping or list. */
export interface Frame {
  readonly kind: 'map' | 'list';
  /** Of its keys or dashes; -1 in brackets. */
  readonly column: number;
  readonly keys: { readonly name: string; readonly start: number }[];
  key: string;
  index: number;
  /** True while the last key or dash has nothing behind it on its line. */
  isOpen: boolean;
}

/** The place of the cursor, as `Cursor` tells it. */
export interface Slot {
  readonly role: 'key' | 'value' | 'item' | 'comment';
  readonly word: Span;
  readonly quote: '' | '"' | "'";
  readonly style: 'block' | 'flow';
  readonly before: string;
  readonly column: number;
  readonly after: string;
  /** For a place that may be a key: the mapping that it belongs to. */
  readonly mapping?: Frame;
}

export interface Walk {
  readonly text: string;
  readonly offset: number;
  readonly frames: Frame[];
  /** Frames as they were when the cursor was met; their lists of keys go on growing. */
  found: { readonly frames: readonly Omit<Frame, 'column' | 'isOpen'>[]; readonly slot: Slot } | undefined;
}

export function createWalk(text: string, offset: number): Walk {
  return { text, offset, frames: [], found: undefined };
}

export function slotAt(role: Slot['role'], start: number, end = start): Slot {
  return { role, word: { start, end }, quote: '', style: 'block', before: '', column: -1, after: '' };
}

export function newFrame(kind: 'map' | 'list', column: number): Frame {
  return { kind, column, keys: [], key: '', index: 0, isOpen: true };
}

/** Keeps the place, the first time. */
export function meet(walk: Walk, slot: Slot, frames: readonly Frame[] = walk.frames): void {
  walk.found ??= { frames: frames.map(({ kind, key, index, keys }) => ({ kind, key, index, keys })), slot };
}

/** The cursor may stand in the comment that begins at or after `from` on this line. */
export function meetComment(walk: Walk, from: number, end: number): void {
  const sign = walk.text.indexOf('#', from);
  if (sign !== -1 && sign < end && walk.offset > sign && walk.offset <= end)
    meet(walk, slotAt('comment', walk.offset));
}

/** The column of the innermost mapping or list in block style; -1 where there is none. */
export function blockColumn({ frames }: Walk): number {
  return frames.findLast(({ column }) => column >= 0)?.column ?? -1;
}

/** Lets go of what stands further in than `column`. */
export function closeTo({ frames }: Walk, column: number): void {
  while (frames.length > 0 && frames.at(-1)!.column > column) frames.pop();
}

export function openItem(walk: Walk, column: number): void {
  closeTo(walk, column);
  const top = walk.frames.at(-1);
  if (top?.kind === 'list' && top.column === column) top.index += 1;
  else walk.frames.push(newFrame('list', column));
}

export function openMapping(walk: Walk, column: number): Frame {
  const { frames } = walk;
  closeTo(walk, column);
  if (frames.at(-1)?.kind === 'list' && frames.at(-1)!.column === column) frames.pop();
  const top = frames.at(-1);
  if (top?.kind === 'map' && top.column === column) return top;
  const frame = newFrame('map', column);
  frames.push(frame);
  return frame;
}

/** The quotation mark that a key begins with. */
export function quoteOf(key: string): '' | '"' | "'" {
  const first = key.charAt(0);
  return first === '"' || first === "'" ? first : '';
}

/** The end of a key in quotes; where the closing one is missing, of what can belong to it on its line. */
export function quotedEnd(text: string, at: number): number {
  const rest = text.slice(at, lineEnd(text, at));
  const closed = /^(?:"(?:[^"\\]|\\.)*"|'[^']*')/.exec(rest);
  const [word] = closed ?? /^["'][^"':#,{}[\]]*/.exec(rest)!;
  return at + (closed === null ? word.trimEnd() : word).length;
}

/** Without its quotes. */
export function bare(key: string): string {
  return /^(["']).*\1$/s.test(key) ? key.slice(1, -1) : key;
}
