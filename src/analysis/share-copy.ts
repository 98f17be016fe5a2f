// Copies the tree of one file without what is private and without what was not understood; knows no paths but those it is given.
import { upperFirst } from '../measure/quote.ts';
import type { Problem, Span } from '../measure/measure.ts';
import { headersOf } from '../record/known-keys.ts';
import type { FileKind } from '../record/document.ts';
import type { Copy } from '../record/print-tree.ts';
import { readTree } from '../record/read-tree.ts';
import type { Pair, Tree } from '../record/tree.ts';
import type { Analysis } from './result.ts';
import type { Coined, SharedNames } from './share-names.ts';
import { coinedBelow, treatments, type PrivatePart, type Treatment } from './share-parts.ts';
import { cleaned, shiftedDay, type Alias } from './share-words.ts';

/** What a copy lacks: private parts, comments, and values that the format does not know. */
export type Left = Exclude<PrivatePart, 'names'> | 'comments' | 'unread';

export interface CopyWish {
  readonly kind: Exclude<FileKind, 'review'>;
  readonly analysis: Analysis;
  readonly aliases: readonly Alias[];
  readonly names: SharedNames;
  /** Codes of findings and names of methods: what may stand for itself. */
  readonly isCode: (word: string) => boolean;
  readonly days: number;
  readonly keep: ReadonlySet<PrivatePart>;
  /** What the student of this file is called in the copy. */
  readonly aliasOfStudent: string | undefined;
  /** The path to write for one that stands in this file; undefined where the file is not copied. */
  readonly pathTo: (written: string) => string | undefined;
  /** Counts what is left out. */
  readonly leftOut: Map<Left, number>;
}

/** Problems of values that were understood all the same: they hold no word that the format does not know. */
const understood: ReadonlySet<string> = new Set([
  'bare-number',
  'bare-direction',
  'no-value-yet',
  'missing-key',
  'missing-direction',
  'direction-with-sign',
  'number-out-of-range',
  'uncertainty-not-positive',
  'window-reversed',
  'wrong-dimension',
]);

export function copyOf(wish: CopyWish): Copy {
  const { kind, analysis } = wish;
  const { tree, comments } = readTree(analysis.document.text, headersOf(kind));
  count(wish, 'comments', comments.size);
  const unread = analysis.subject.problems.filter(({ code }) => !understood.has(code));
  return (
    (tree &&
      copyTree(tree, { ...wish, unread, treatment: undefined, coined: undefined, owner: '', depth: 0 })) ?? {
      kind: 'map',
      pairs: [],
    }
  );
}

interface Place extends CopyWish {
  readonly unread: readonly Problem[];
  readonly treatment: Treatment | undefined;
  /** What the keys right below name, if a coach names them. */
  readonly coined: Coined | undefined;
  /** What the innermost named thing around is called in the copy. */
  readonly owner: string;
  /** How many mappings the value stands in. */
  readonly depth: number;
}

function copyTree(tree: Tree, place: Place): Copy | undefined {
  if (tree.kind === 'scalar') return copyScalar(tree, place);
  if (place.unread.some(({ span }) => covers(span, tree.span))) return left(place, 'unread');
  if (tree.kind === 'list')
    return { kind: 'list', items: tree.items.flatMap((item) => copyItem(item, place)) };
  return { kind: 'map', pairs: [...tree.pairs.values()].flatMap((pair) => copyPair(pair, place)) };
}

/** What an item is about; without it the rest of the item would hang in the air, and nobody would have read it. */
const about = ['fault', 'change', 'miss', 'effect', 'expression', 'of', 'part'];

function copyItem(item: Tree, place: Place): readonly Copy[] {
  const copy = copyTree(item, place);
  if (copy === undefined || item.kind !== 'map' || copy.kind !== 'map')
    return copy === undefined ? [] : [copy];
  const lost = about.some((key) => item.pairs.has(key) && !copy.pairs.some(([kept]) => kept === key));
  return lost ? [] : [copy];
}

function copyPair({ key, keySpan, value }: Pair, place: Place): readonly (readonly [string, Copy])[] {
  if (place.unread.some(({ span }) => meets(span, keySpan))) return left(place, 'unread') ?? [];
  const name = keyFor(key, place);
  if (name === undefined) return left(place, 'unread') ?? [];
  const table = treatments[place.kind];
  const own =
    place.coined === undefined
      ? ((place.depth === 0 ? at(table, `/${key}`) : undefined) ?? at(table, key))
      : undefined;
  if (own?.kind === 'needless') return [];
  // What stands below a title or a note is one too.
  const treatment = own ?? place.treatment;
  if (own?.kind === 'private' && !place.keep.has(own.part)) {
    count(place, own.part, value.kind === 'list' ? value.items.length : 1);
    return [];
  }
  const copy = copyTree(value, {
    ...place,
    treatment,
    coined: place.coined === undefined ? coinedBelow(place.kind, key) : undefined,
    owner: place.coined === undefined ? place.owner : name,
    depth: place.depth + 1,
  });
  return copy === undefined ? [] : [[name, copy]];
}

function keyFor(key: string, { coined, names, isCode, kind }: Place): string | undefined {
  if (coined !== undefined) return coined === 'check' && isCode(key) ? key : names.nameFor(coined, key);
  return kind === 'workspace' && isCode(key) ? key : names.wordsFor(key);
}

function copyScalar(tree: Extract<Tree, { kind: 'scalar' }>, place: Place): Copy | undefined {
  const { plain, source, span } = tree;
  if (plain === null) return { kind: 'scalar', plain: null, source: '' };
  const unread = place.unread.filter((problem) => meets(problem.span, span));
  const [first] = unread;
  if (first !== undefined) {
    left(place, 'unread');
    const measure = unread.every(({ code }) => code === 'unknown-method') && beforeMethod(tree, first.span);
    return measure ? { kind: 'scalar', plain: measure, source: measure } : undefined;
  }
  if (typeof plain !== 'string' && place.treatment === undefined) return { kind: 'scalar', plain, source };
  const words = wordsFor(source, place);
  if (words === undefined && place.treatment?.kind !== 'reference') left(place, 'unread');
  return words === undefined ? undefined : { kind: 'scalar', plain: words, source: words };
}

/** A number says as much without a method that nobody knows. */
function beforeMethod(
  { source, offset }: Extract<Tree, { kind: 'scalar' }>,
  method: Span,
): string | undefined {
  if (offset === undefined) return undefined;
  const before = /^(.*\S)\s+by\s*$/su.exec(source.slice(0, method.start - offset));
  return before?.[1];
}

function wordsFor(words: string, place: Place): string | undefined {
  const { aliases, days, treatment, keep, names, owner } = place;
  switch (treatment?.kind) {
    case 'day':
      return shiftedDay(words, days);
    case 'name':
      return place.aliasOfStudent;
    case 'reference':
      return place.pathTo(words);
    case 'coined':
      return names.nameFor(treatment.of, words);
    case 'title':
      return keep.has('texts') ? cleaned(words, aliases, days) : titleFor(owner);
    case 'source':
      return keep.has('texts') ? cleaned(words, aliases, days) : names.nameFor('source', words);
    case 'private':
      return cleaned(words, aliases, days);
    case 'needless':
    case undefined:
      return names.wordsFor(words);
  }
}

/** "Fault 1" of `fault-1`, "Own 2" of `delivery.own_2`. */
function titleFor(owner: string): string {
  return upperFirst(owner.slice(owner.lastIndexOf('.') + 1).replaceAll(/[-_]/g, ' '));
}

/** A key may be called like something that every object has. */
function at(table: Readonly<Record<string, Treatment>>, key: string): Treatment | undefined {
  return Object.hasOwn(table, key) ? table[key] : undefined;
}

function left(place: Place, what: Left): undefined {
  count(place, what, 1);
  return undefined;
}

function count({ leftOut }: CopyWish, what: Left, howMany: number): void {
  if (howMany > 0) leftOut.set(what, (leftOut.get(what) ?? 0) + howMany);
}

function meets(a: Span, b: Span): boolean {
  return a.start < b.end && a.end > b.start;
}

function covers(a: Span, b: Span): boolean {
  return a.start <= b.start && a.end >= b.end;
}
