// Merges two edits of one file by key: what one side changed is kept, and where both changed one value ordinary conflict marks stay; knows no meaning of values.
import { blockOf, inStyleOf } from './piece-style.ts';
import { alignedChildren, type Known } from './piece-align.ts';
import { saysTheSame } from './same-value.ts';
import { piecesOf, printChild, printPiece, type Branch, type Child, type Piece } from './pieces.ts';

export interface MergeWish {
  /** What both sides began with. */
  readonly base: string;
  readonly ours: string;
  readonly theirs: string;
  /** What the sides are called behind the marks. */
  readonly names: readonly [string, string];
  /** How many signs a mark has; git's own is 7. */
  readonly markLength: number;
}

export interface Merged {
  readonly text: string;
  readonly conflicts: number;
}

/** Undefined where one of the texts cannot be cut into keys; lines are then all there is to go by. Never throws. */
export function merge({ base, ours, theirs, names, markLength }: MergeWish): Merged | undefined {
  const [b, o, t] = [base, ours, theirs].map(piecesOf);
  // Two people may begin the same file, such as a review.
  const isNew = base.trim() === '';
  if ((b === undefined && !isNew) || o === undefined || t === undefined) return undefined;
  const marks = (own: string, other: string): string =>
    `${'<'.repeat(markLength)} ${names[0]}\n${own}${'='.repeat(markLength)}\n${other}${'>'.repeat(markLength)} ${names[1]}\n`;
  const context: Context = { side: 'both', marks, tally: { conflicts: 0 } };
  const root = mergeBlock(b?.root, o.root, t.root, o.root.indent, context).text;
  const end = chooseText(b?.end ?? '', o.end, t.end, context);
  const text = (root + end).replaceAll('\n', o.newline);
  return { text, conflicts: context.tally.conflicts };
}

type Side = 'ours' | 'theirs';

interface Context {
  /** `both` writes marks around what is in conflict; a side takes its own there. */
  readonly side: 'both' | Side;
  readonly marks: (own: string, other: string) => string;
  readonly tally: { conflicts: number };
}

/** Below the marks of an outer conflict each side is written without marks. */
function asSide(context: Context, side: Side): Context {
  return { ...context, side, tally: { conflicts: 0 } };
}

function mergeBlock(
  b: Branch | undefined,
  o: Branch,
  t: Branch,
  indent: number,
  context: Context,
  first: 'line' | 'item' = 'line',
): { readonly text: string; readonly isFirstInConflict: boolean } {
  let isFirstInConflict = false;
  let text = '';
  for (const known of alignedChildren(b, o, t)) {
    const place = text === '' ? first : 'line';
    const before = context.tally.conflicts;
    const child = mergeChild(known, { own: o, base: b, other: t }, indent, place, context);
    if (text === '' && context.tally.conflicts > before) isFirstInConflict = true;
    text += child;
  }
  return { text, isFirstInConflict };
}

interface Parents {
  readonly base: Branch | undefined;
  readonly own: Branch;
  readonly other: Branch;
}

/** The lines of one child, empty where it goes. */
function mergeChild(
  { b, o, t }: Known,
  parents: Parents,
  indent: number,
  first: 'line' | 'item',
  context: Context,
): string {
  const lines = (child: Child | undefined, parent: Branch | undefined): string =>
    child === undefined || parent === undefined ? '' : shifted(child, parent.indent, indent, first);
  const [base, own, other] = [lines(b, parents.base), lines(o, parents.own), lines(t, parents.other)];
  if (own === other || other === base) return own;
  if (own === base) return other;
  if (o === undefined || t === undefined) {
    const kept = o ?? t;
    const looks = b !== undefined && kept !== undefined && saysTheSame(bare(b), bare(kept));
    return looks ? '' : chooseText(base, own, other, context);
  }
  return mergeBoth(b, o, t, { indent, first }, context);
}

/** A child without the empty lines above it, which are no change; comments there are. */
function bare(child: Child): string {
  return printChild({ ...child, lead: child.lead.replace(/^\s*\n/gm, '') }, 0, 'line');
}

/** A child that both sides have, and that neither has as it was. */
function mergeBoth(
  b: Child | undefined,
  o: Child,
  t: Child,
  place: { readonly indent: number; readonly first: 'line' | 'item' },
  context: Context,
): string {
  const [ov, tv] = [o.value, inStyleOf(o.value, t.value)];
  const bv = b && inStyleOf(o.value, b.value);
  const isBlock = blockOf(ov) !== undefined && blockOf(tv) !== undefined && ov.kind === tv.kind;
  if (
    context.side === 'both' &&
    isBlock &&
    framed(b, o, t, asSide(context, 'ours')) === framed(b, o, t, asSide(context, 'theirs'))
  ) {
    const [outer, inner] = [place.indent, blockOf(ov)!];
    const onLine = o.headTail === '' && o.head.startsWith('-');
    const at = onLine ? outer + o.head.length : inner.indent;
    const before = context.tally.conflicts;
    const merged = mergeBlock(blockOf(bv), inner, blockOf(tv)!, at, context, onLine ? 'item' : 'line');
    if (!(onLine && merged.isFirstInConflict)) {
      const head = place.first === 'line' ? mergedLead(b, o, t, context) + ' '.repeat(outer) : '';
      const tail = pick(b?.headTail, o.headTail, t.headTail, context);
      // A block that lost all that it held says so.
      return `${head}${o.head}${onLine ? '' : `${tail}\n`}${merged.text}`;
    }
    context.tally.conflicts = before;
  }
  const side = (which: Side): string => {
    const inside = asSide(context, which);
    const value = mergeValue(bv, ov, tv, inside);
    const child: Child = {
      ...o,
      lead: mergedLead(b, o, t, inside),
      head: headFor(value, pick(b?.head, o.head, t.head, inside)),
      headTail: pick(b?.headTail, o.headTail, t.headTail, inside),
      tail: pick(b?.tail, o.tail, t.tail, inside),
      value,
    };
    return printChild(child, place.indent, place.first);
  };
  const [own, other] = [side('ours'), side('theirs')];
  if (own === other) return own;
  return resolve(own, other, context);
}

/** A value on the line of its key has a space before it, whatever form it had on the other side. */
function headFor(value: Piece, head: string): string {
  if (value.kind !== 'leaf' && value.style === 'block') return head.startsWith('-') ? head : head.trimEnd();
  return /[:-]$/.test(head) && printPiece(value) !== '' ? `${head} ` : head;
}

/** What stands around the value, to see whether the sides agree on it. */
function framed(b: Child | undefined, o: Child, t: Child, context: Context): string {
  return `${mergedLead(b, o, t, context)}\0${pick(b?.headTail, o.headTail, t.headTail, context)}`;
}

function mergedLead(b: Child | undefined, o: Child, t: Child, context: Context): string {
  return pick(b?.lead, o.lead, t.lead, context);
}

/** A value as one side would have it, with all that the other changed beside. */
function mergeValue(b: Piece | undefined, o: Piece, t: Piece, context: Context): Piece {
  const [base, own, other] = [b && printPiece(b), printPiece(o), printPiece(t)];
  if (own === other || other === base) return o;
  if (own === base) return t;
  // Another form or unit is no change.
  if (saysTheSame(own, other) || (base !== undefined && saysTheSame(other, base))) return o;
  if (base !== undefined && saysTheSame(own, base)) return t;
  if (o.kind === 'leaf' || t.kind !== o.kind) return context.side === 'theirs' ? t : o;
  const from = b?.kind === o.kind ? b : undefined;
  const children = alignedChildren(from, o, t).flatMap((known) => mergedChild(known, context));
  return { ...o, children: o.style === 'flow' ? spaced(children) : children };
}

function mergedChild({ b, o, t }: Known, context: Context): readonly Child[] {
  // The spaces before a child hang on its place, not on what it says.
  const same = (one: Child, other: Child): boolean =>
    printChild({ ...one, lead: '' }, 0, 'item') === printChild({ ...other, lead: '' }, 0, 'item');
  if (o === undefined || t === undefined) {
    const kept = o ?? t;
    if (b === undefined) return kept === undefined ? [] : [kept];
    // One side took it out: it goes where the other left it alone.
    if (kept === undefined || same(b, kept)) return [];
    return (context.side === 'ours' ? o : t) === undefined ? [] : [kept];
  }
  return [
    {
      ...o,
      head: pick(b?.head, o.head, t.head, context),
      tail: pick(b?.tail, o.tail, t.tail, context),
      value: mergeValue(b?.value, o.value, inStyleOf(o.value, t.value), context),
    },
  ];
}

/** Between braces every child but the first has a space before it. */
function spaced(children: readonly Child[]): readonly Child[] {
  return children.map((child, i) => (i > 0 && child.lead === '' ? { ...child, lead: ' ' } : child));
}

/** What stands around a value: the side that changed it says how it is; where both did, the side that is written. */
function pick(b: string | undefined, o: string, t: string, context: Context): string {
  if (o === t || t === b) return o;
  if (o === b) return t;
  return context.side === 'theirs' ? t : o;
}

function chooseText(b: string, o: string, t: string, context: Context): string {
  if (o === t || t === b) return o;
  if (o === b) return t;
  return resolve(o, t, context);
}

function resolve(own: string, other: string, context: Context): string {
  context.tally.conflicts += 1;
  if (context.side === 'both') return context.marks(own, other);
  return context.side === 'ours' ? own : other;
}

/** The child's lines as they stand where the mapping begins at another column. */
function shifted(child: Child, from: number, to: number, first: 'line' | 'item'): string {
  if (from === to) return printChild(child, from, first);
  const lines = printChild(child, from, first).split('\n');
  return lines
    .map((line, i) => {
      if (line === '' || (i === 0 && first === 'item')) return line;
      return to > from
        ? ' '.repeat(to - from) + line
        : line.slice(Math.min(from - to, /^ */.exec(line)![0].length));
    })
    .join('\n');
}
