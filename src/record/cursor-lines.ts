// Walks a text line by line in block style toward its cursor, and decides to which mapping or list a word there belongs; knows no YAML library.
import type { Span } from '../measure/measure.ts';
import { walkBrackets, walkQuoted } from './cursor-brackets.ts';
import {
  bare,
  blockColumn,
  closeTo,
  meet,
  meetComment,
  openItem,
  openMapping,
  quotedEnd,
  quoteOf,
  slotAt,
  type Frame,
  type Walk,
} from './cursor-walk.ts';
import { indentAt, lineEnd } from './lines.ts';

const keyAt =
  /(?:"(?:[^"\\\n]|\\.)*"|'[^'\n]*'|(?:[^\s#{}[\],"'&*!|>%@`:?-]|-(?=[^\s:]))(?:[^\n:#]|:(?=\S)|(?<=\S)#)*?)(?=[ \t]*:(?:[ \t\r\n]|$))/y;
const properties = /(?:[&!][^\s,[\]{}]*[ \t]+)*/y;

export function walkLines(walk: Walk): void {
  const { text } = walk;
  // A byte order mark before the first key is no part of it (YAML 1.2.2, 5.2).
  for (let at = text.startsWith('\ufeff') ? 1 : 0; ;) {
    const feed = text.indexOf('\n', walkLine(walk, at));
    if (feed === -1) return;
    at = feed + 1;
  }
}

/** Walks the line at `start` and the further lines of what it opens; gives an offset on the last of them. */
function walkLine(walk: Walk, start: number): number {
  const { text, offset } = walk;
  const end = lineEnd(text, start);
  const at = start + indentAt(text, start);
  const isHere = start <= offset && offset <= end;
  if (at >= end || text[at] === '#') {
    if (isHere && offset > at && at < end) meet(walk, slotAt('comment', offset));
    else if (isHere && at >= end) meetKey(walk, { start: offset, end: offset }, offset - start, end);
    return end;
  }
  if (/^(?:---|\.\.\.)(?:\s|$)/.test(text.slice(start, start + 4)) || text[start] === '%') {
    walk.frames.splice(0);
    return end;
  }
  return walkDashes(walk, start, at, end);
}

/** Dashes, if any, then a key with its value, or a value alone. */
function walkDashes(walk: Walk, start: number, first: number, end: number): number {
  const { text, offset, frames } = walk;
  let at = first;
  while (text[at] === '-' && (at + 1 >= end || text[at + 1] === ' ' || text[at + 1] === '\t')) {
    openItem(walk, at - start);
    const dash = at;
    at += 1;
    while (at < end && (text[at] === ' ' || text[at] === '\t')) at++;
    const isBare = at >= end || text[at] === '#';
    frames.at(-1)!.isOpen = isBare;
    if (!isBare) continue;
    if (offset > dash && offset <= (at >= end ? end : at - 1)) {
      const before = offset === dash + 1 ? ' ' : '';
      const column = offset + before.length - start;
      const below = lineBelow(text, end).column;
      if (below <= dash - start || below === column)
        meetItem(walk, { start: offset, end: offset }, column, before, end);
    } else meetComment(walk, at, end);
    return end;
  }
  const key = match(keyAt, text, at);
  if (key !== undefined) return walkPair(walk, start, at, key, end);
  return walkAlone(walk, start, at, end, at > first);
}

function walkPair(walk: Walk, start: number, at: number, key: string, end: number): number {
  const { text, offset } = walk;
  const keyEnd = at + key.length;
  const frame = openMapping(walk, at - start);
  frame.key = bare(key);
  frame.keys.push({ name: frame.key, start: at });
  if (at <= offset && offset <= keyEnd) {
    const after = text.slice(keyEnd, end);
    const slot = slotAt('key', at, keyEnd);
    meet(walk, { ...slot, quote: quoteOf(key), column: at - start, after, mapping: frame });
  }
  return walkValue(walk, text.indexOf(':', keyEnd) + 1, end, 'value');
}

/** Something that is neither a key nor behind one: an item of a list, a half-typed key, or a further line of free text. */
function walkAlone(walk: Walk, start: number, at: number, end: number, isItem: boolean): number {
  const { text, offset, frames } = walk;
  if (/[[{"'|>&!*]/.test(text[at]!)) {
    if (isItem) return walkValue(walk, at, end, 'item');
    const top = frames.at(-1);
    const isKey = /["']/.test(text[at]!) && (top?.isOpen !== true || leadsKeys(text, at - start, end));
    const word = { start: at, end: isKey ? quotedEnd(text, at) : at };
    if (isKey && at <= offset && offset <= word.end) meetKey(walk, word, at - start, end);
    if (isKey || top?.isOpen !== true) return end;
    return walkValue(walk, at, end, top.kind === 'map' ? 'value' : 'item');
  }
  const stop = stopOfPlain(text, at, end);
  const word = { start: at, end: stop };
  if (at <= offset && offset <= stop && !isItem) meetKey(walk, word, at - start, end);
  // White space behind an item is where it is written on.
  if (at < offset && offset <= (isItem ? endOfPlace(text, at, end) : at))
    meetItem(walk, word, at - start, '', end);
  meetComment(walk, stop, end);
  return end;
}

/** Whether something in quotes stands right above keys on the same column. */
function leadsKeys(text: string, column: number, end: number): boolean {
  const below = lineBelow(text, end);
  return below.column === column && !below.isItem;
}

/** From behind a colon or a dash to the end of the value. */
function walkValue(walk: Walk, from: number, end: number, role: 'value' | 'item'): number {
  const { text, offset, frames } = walk;
  let at = from;
  while (at < end && (text[at] === ' ' || text[at] === '\t')) at++;
  const isBare = at >= end || text[at] === '#';
  frames.at(-1)!.isOpen = isBare;
  if (isBare) {
    const before = role === 'value' && offset === from ? ' ' : '';
    const isHere = offset >= from && offset <= (at >= end ? end : at - 1);
    if (isHere && !hasBelow(walk, end)) meet(walk, { ...slotAt(role, offset), before });
    meetComment(walk, at, end);
    return end;
  }
  at += match(properties, text, at)?.length ?? 0;
  const sign = text[at];
  if (sign === '|' || sign === '>') return skipBlockText(walk, end);
  if (sign === '{' || sign === '[') return behind(walk, walkBrackets(walk, at));
  if (sign === '"' || sign === "'") return behind(walk, walkQuoted(walk, at, role, 'block'));
  if (sign === '*' || sign === '&' || sign === '!') return end;
  const stop = stopOfPlain(text, at, end);
  if (offset > at && offset <= endOfPlace(text, at, end)) meet(walk, slotAt(role, at, stop));
  meetComment(walk, commentAt(text, at, end), end);
  return end;
}

/** Whether the value of what is open stands on the lines below: then nothing can stand beside the key. */
function hasBelow(walk: Walk, end: number): boolean {
  const { column, isItem } = lineBelow(walk.text, end);
  const outer = walk.frames.at(-1)!;
  return column > outer.column || (isItem && column === outer.column && outer.kind === 'map');
}

/** What follows a closing bracket or quotation on its line. */
function behind(walk: Walk, at: number): number {
  meetComment(walk, at, lineEnd(walk.text, at));
  return at;
}

function skipBlockText(walk: Walk, end: number): number {
  const { text, offset } = walk;
  const least = blockColumn(walk) + 1;
  let last = end;
  for (let feed = text.indexOf('\n', end); feed !== -1; feed = text.indexOf('\n', feed + 1)) {
    const stop = lineEnd(text, feed + 1);
    const indent = indentAt(text, feed + 1);
    const isBlank = feed + 1 + indent >= stop;
    if (!isBlank && indent < least) break;
    // A blank line may be where the next key of the mapping around is typed.
    if (isBlank && feed < offset && offset <= stop && offset - feed - 1 < least) break;
    last = stop;
  }
  return last;
}

/** A word, or none, where a key of block style may stand: decides of which mapping, by its column and the lines around. */
function meetKey(walk: Walk, word: Span, column: number, end: number): void {
  const { text, frames } = walk;
  const below = lineBelow(text, end);
  const target = columnFor(walk, column, below);
  if (target === undefined) return;
  const after = text.slice(word.end, end);
  const before = ' '.repeat(target - column);
  const quote = quoteOf(text.slice(word.start, word.end));
  closeTo(walk, target);
  const top = frames.at(-1);
  const leads = below.column === target && below.isItem && top?.kind === 'map' && top.isOpen;
  if (
    quote === '' &&
    (leads || (top?.kind === 'list' && top.column === target && frames.at(-2)?.column !== target))
  ) {
    openItem(walk, target);
    meetItem(walk, word, target + 2, `${before}- `, end);
    return;
  }
  const mapping = openMapping(walk, target);
  mapping.keys.push({ name: '', start: word.start });
  mapping.key = '';
  mapping.isOpen = false;
  meet(walk, { ...slotAt('key', word.start, word.end), quote, before, column: target, after, mapping });
}

/** The column at which a word that stands at `column` belongs; undefined where no key can stand. */
function columnFor({ frames }: Walk, column: number, below: LineBelow): number | undefined {
  const top = frames.at(-1);
  const isKnown = (at: number): boolean => frames.some((frame) => frame.column === at);
  const isInside = (at: number): boolean => top?.isOpen === true && at > top.column;
  // What stands below may not be torn from the key above it.
  if (below.column > column)
    return isKnown(below.column) || isInside(below.column) ? below.column : undefined;
  if (isKnown(column)) return column;
  if (top === undefined) return column === 0 ? 0 : undefined;
  if (column > top.column)
    return top.isOpen && below.column <= top.column ? column : isOnly(below, column, top);
  return frames.find((frame) => frame.column > column && frame.column >= 0)?.column;
}

function isOnly(below: LineBelow, column: number, top: Frame): number | undefined {
  return top.isOpen && below.column === column ? column : undefined;
}

/** The word after a dash may be an item, or the first key of one. */
function meetItem(walk: Walk, word: Span, column: number, before: string, end: number): void {
  const list = [...walk.frames];
  const mapping = openMapping(walk, column);
  mapping.keys.push({ name: '', start: word.start });
  mapping.isOpen = false;
  const after = walk.text.slice(word.end, end);
  meet(walk, { ...slotAt('item', word.start, word.end), before, column, after, mapping }, list);
}

interface LineBelow {
  /** -1 where nothing more is said. */
  readonly column: number;
  readonly isItem: boolean;
}

function lineBelow(text: string, end: number): LineBelow {
  for (let feed = text.indexOf('\n', end); feed !== -1; feed = text.indexOf('\n', feed + 1)) {
    const column = indentAt(text, feed + 1);
    const at = feed + 1 + column;
    const first = text[at];
    if (first !== undefined && first !== '\n' && first !== '\r' && first !== '#')
      return { column, isItem: first === '-' && /^\s|^$/.test(text.slice(at + 1, at + 2)) };
  }
  return { column: -1, isItem: false };
}

/** The end of a plain value: before the white space that leads to a comment or to the end of the line. */
function stopOfPlain(text: string, at: number, end: number): number {
  return at + text.slice(at, commentAt(text, at, end)).trimEnd().length;
}

/** Where a plain value may still be written on: white space behind it belongs to it, but for the one before a comment. */
function endOfPlace(text: string, at: number, end: number): number {
  const comment = commentAt(text, at, end);
  return comment < end ? comment - 1 : end;
}

function commentAt(text: string, at: number, end: number): number {
  const sign = text.slice(at, end).search(/\s#/);
  return sign === -1 ? end : at + sign + 1;
}

function match(pattern: RegExp, text: string, at: number): string | undefined {
  pattern.lastIndex = at;
  const found = pattern.exec(text);
  return found === null || found[0] === '' ? undefined : found[0];
}
