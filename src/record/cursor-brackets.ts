// Walks through brackets and quotations, over as many lines as they take, up to where block style plainly goes on; knows no YAML library.
import { indentAt, lineEnd } from './lines.ts';
import {
  bare,
  blockColumn,
  meet,
  meetComment,
  newFrame,
  quotedEnd,
  quoteOf,
  slotAt,
  type Frame,
  type Walk,
} from './cursor-walk.ts';

/** A line that can only be a key of a mapping in block style, or an item. */
const blockLine = /^[ \t]*(?:-[ \t]|-$|[^\s#{}[\],"'&*!|>%@`-][^{}[\],"]*?:(?:[ \t]|$))/;

/** From an opening bracket to just behind the closing one, or to the end of the line where it was left open. */
export function walkBrackets(walk: Walk, open: number): number {
  const { text, frames } = walk;
  const depth = frames.length;
  let at = open;
  while (at < text.length) {
    const sign = text[at];
    if (sign === '{' || sign === '[') {
      frames.push(newFrame(sign === '{' ? 'map' : 'list', -1));
      at = walkPlace(walk, at + 1);
    } else if (sign === '}' || sign === ']') {
      frames.pop();
      if (frames.length <= depth) return at + 1;
      at = skipWhite(walk, at + 1);
    } else if (sign === ',') {
      const frame = frames.at(-1)!;
      frame.key = '';
      frame.index += 1;
      at = walkPlace(walk, at + 1);
    } else if (sign === ':') at = walkPlace(walk, at + 1);
    else if (sign === '\n') break;
    else at = skipWhite(walk, at + 1);
  }
  frames.splice(depth);
  return Math.min(at, text.length);
}

/** From a quotation mark to just behind the closing one, or to the end of the line where it was left open. */
export function walkQuoted(
  walk: Walk,
  at: number,
  role: 'key' | 'value' | 'item',
  style: 'block' | 'flow',
): number {
  const { text, offset } = walk;
  const sign = text[at] as '"' | "'";
  let stop = at + 1;
  let isOpen = false;
  for (; stop < text.length && text[stop] !== sign; stop++) {
    if (text[stop] === '\\' && sign === '"') stop++;
    if (text[stop] !== '\n' || !isNewBlock(walk, stop + 1)) continue;
    stop = lineEnd(text, at);
    isOpen = true;
    break;
  }
  stop = Math.min(stop, text.length);
  // On further lines it is free text.
  if (offset > at && offset <= Math.min(stop, lineEnd(text, at)) && role !== 'key')
    meet(walk, { ...slotAt(role, at + 1, stop), quote: sign, style });
  return isOpen ? stop : Math.min(stop + 1, text.length);
}

/** The place behind a bracket, a comma or a colon, up to the next such sign. */
function walkPlace(walk: Walk, from: number): number {
  const { text, offset } = walk;
  const frame = walk.frames.at(-1)!;
  const isKey = frame.kind === 'map' && frame.key === '';
  const role = isKey ? 'key' : frame.kind === 'list' ? 'item' : 'value';
  const at = skipWhite(walk, from);
  const first = text[at] ?? '';
  if (first === '' || /[,}\]{[\n:]/.test(first)) {
    if (!/[{[:]/.test(first)) meetEmpty(walk, role, from, at, frame);
    return at;
  }
  if (first === '"' || first === "'") {
    if (isKey) meetFlowKey(walk, at, quotedEnd(text, at), frame);
    const next = skipWhite(walk, walkQuoted(walk, at, role, 'flow'));
    if (isKey) nameKey(frame, bare(text.slice(at, next).trimEnd()), at, text[next] === ':');
    return next;
  }
  const stop = stopOfPlain(text, at);
  const word = text.slice(at, stop).trimEnd();
  const wordEnd = at + word.length;
  const next = skipWhite(walk, stop);
  if (isKey) {
    meetFlowKey(walk, at, wordEnd, frame);
    nameKey(frame, word, at, text[next] === ':');
  } else if (offset > at && offset <= stop && !/^[&*!|>]/.test(word)) {
    meet(walk, { ...slotAt(role, at, wordEnd), style: 'flow' });
  }
  return next;
}

function meetFlowKey(walk: Walk, at: number, end: number, mapping: Frame): void {
  const { text, offset } = walk;
  if (offset < at || offset > end) return;
  const after = text.slice(end, lineEnd(text, end));
  meet(walk, {
    ...slotAt('key', at, end),
    quote: quoteOf(text.slice(at, end)),
    style: 'flow',
    mapping,
    after,
  });
}

function meetEmpty(walk: Walk, role: 'key' | 'value' | 'item', from: number, at: number, frame: Frame): void {
  const { text, offset } = walk;
  // The white space that leads to a comment, and the comment itself, are no place.
  if (offset < from || offset > at || /#/.test(text.slice(lineStartAfter(text, from, offset), offset)))
    return;
  const needsSpace = text[offset - 1] === ':' || text[offset - 1] === ',';
  const next = text[offset] ?? '';
  if (next === '#') return;
  const after = role === 'key' ? text.slice(offset, lineEnd(text, offset)) : '';
  meet(walk, {
    ...slotAt(role, offset),
    style: 'flow',
    before: needsSpace ? ' ' : '',
    after,
    ...(role === 'key' ? { mapping: frame } : {}),
  });
}

function lineStartAfter(text: string, from: number, offset: number): number {
  return Math.max(from, text.lastIndexOf('\n', offset - 1) + 1);
}

function nameKey(frame: Frame, name: string, start: number, hasColon: boolean): void {
  frame.keys.push({ name, start });
  // A half-typed key has no value: what follows is the next key.
  frame.key = hasColon ? name : '';
}

/** Past spaces, comments and line ends, but not past the end of a line below which block style goes on. */
function skipWhite(walk: Walk, from: number): number {
  const { text } = walk;
  let at = from;
  for (; at < text.length; at++) {
    const sign = text[at]!;
    if (sign === '#' && /\s/.test(text[at - 1] ?? ' ')) {
      const end = lineEnd(text, at);
      meetComment(walk, at, end);
      at = end - 1;
    } else if (sign === '\n') {
      if (isNewBlock(walk, at + 1)) return at;
    } else if (sign !== ' ' && sign !== '\t' && sign !== '\r') break;
  }
  return Math.min(at, text.length);
}

function stopOfPlain(text: string, from: number): number {
  let at = from;
  for (; at < text.length; at++) {
    const sign = text[at]!;
    if (/[,{}[\]\n\r]/.test(sign)) break;
    if (sign === ':' && /^[\s,{}[\]]?$/.test(text[at + 1] ?? '')) break;
    if (sign === '#' && at > from && /\s/.test(text[at - 1]!)) break;
  }
  return at;
}

/** True where a line of block style begins that cannot belong to open brackets or quotes. */
function isNewBlock(walk: Walk, start: number): boolean {
  const { text } = walk;
  const end = lineEnd(text, start);
  return end > start && indentAt(text, start) <= blockColumn(walk) && blockLine.test(text.slice(start, end));
}
