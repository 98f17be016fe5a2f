// Renames a fault, a club or what a workspace has of its own wherever it is mentioned, or says in a sentence why that cannot be; writes nothing itself.
import type { Span } from '../measure/measure.ts';
import { collapseSpaces, quote } from '../measure/quote.ts';
import { ownName } from '../record/own.ts';
import { parseDocument } from '../record/parse.ts';
import { isPlainWord } from '../record/plain-word.ts';
import { lastNameIn } from '../record/reference.ts';
import { cardOf, type Card } from './cards.ts';
import type { Mention, Thing } from './mentions.ts';
import { booksFrom, definersOf, occurrencesOf } from './occurrences.ts';
import { declarationOf, ownIdsFor, registryFrom, type OwnIds, type OwnQuantity } from './renaming-own.ts';

export interface FileEdits {
  readonly uri: string;
  /** Before the edits. */
  readonly text: string;
  /** In the order of the text; none meets another. */
  readonly edits: readonly { readonly span: Span; readonly text: string }[];
}

export type Renaming =
  | { readonly kind: 'edits'; readonly files: readonly FileEdits[] }
  | { readonly kind: 'refused'; readonly reason: string };

/** Nobody says more when a club or a fault is spoken of. */
const longestName = 80;

/** Why what stands here cannot be renamed at all; undefined where it can. */
export function whyNotRenamed(mention: Mention | undefined, cards: readonly Card[]): string | undefined {
  if (mention === undefined)
    return `Only ${renamable} can be renamed, and the cursor is on none; put it on the name of one.`;
  const { thing } = mention;
  switch (thing.kind) {
    case 'quantity':
      if (thing.workspace === undefined)
        return `${quote(thing.name)} is a quantity of the format, whose name is the same in all records; only ${renamable} can be renamed.`;
      return declarationOf(thing, cards) === undefined ? notLookedThrough(thing) : undefined;
    case 'check':
    case 'relation':
      return cards.some(({ mentions }) => mentions.some((one) => isDefinitionOf(thing, one)))
        ? undefined
        : notLookedThrough(thing);
    case 'miss':
      return `${quote(thing.name)} is a word of the trade for a miss; only ${renamable} can be renamed.`;
    case 'file':
      return `A file is renamed where files are listed; here only ${renamable} can be renamed.`;
    case 'fault':
      return definersOf(thing, cards).size > 0
        ? undefined
        : `${quote(thing.name)} stands in no fault book that this file leads to; write it into the book first, or correct it here.`;
    case 'club':
      return bagOf(thing, cards).has(thing.name)
        ? undefined
        : `${quote(thing.name)} is not in the student's bag; write it into the bag first, or correct it here.`;
  }
}

const renamable = "faults, clubs and a workspace's own quantities, checks and relations";

function notLookedThrough({ name }: Thing): string {
  return `${quote(name)} stands in no \`swingwright.yaml\` that was looked through; look through the folder that holds it.`;
}

function isDefinitionOf(
  thing: Thing & { kind: 'check' | 'relation' },
  { thing: other, role }: Mention,
): boolean {
  return (
    role === 'definition' &&
    other.kind === thing.kind &&
    other.name === thing.name &&
    other.workspace === thing.workspace
  );
}

/** Every edit that gives this thing another name in these files, each read back before it is given out. */
export function rename(mention: Mention | undefined, to: string, cards: readonly Card[]): Renaming {
  const name = collapseSpaces(to);
  const reason =
    whyNotRenamed(mention, cards) ?? whyNotCalled(name, to) ?? whyTaken(mention!.thing, name, cards);
  if (reason !== undefined) return { kind: 'refused', reason };
  const { thing } = mention!;
  if (name === thing.name) return { kind: 'edits', files: [] };
  if (thing.kind === 'quantity') {
    const own = ownIdsFor(thing, name, cards);
    return typeof own === 'string' ? { kind: 'refused', reason: own } : renameOwn(thing, own, cards);
  }
  const occurrences = occurrencesOf(thing, cards);
  const files: FileEdits[] = [];
  for (const card of cards) {
    const spans = unique(occurrences.filter(({ uri }) => uri === card.uri).map(({ span }) => span));
    if (spans.length === 0) continue;
    const edits = spans.map((span) => rewrite(card.text, span, name));
    const starts = new Set(spans.map(({ start }) => start));
    const nameOf = ({ thing: other, span }: Mention): string =>
      other.kind === thing.kind && other.name === thing.name && starts.has(span.start) ? name : other.name;
    if (!isReadBack(card, edits, card.home, nameOf)) return writtenOddly(thing, card);
    files.push({ uri: card.uri, text: card.text, edits });
  }
  return { kind: 'edits', files };
}

/** Only the last word of each id changes, and in all files the same, as keys or in expressions. */
function renameOwn(thing: OwnQuantity, { ids, oldKey, newKey }: OwnIds, cards: readonly Card[]): Renaming {
  const isMeant = ({ thing: other }: Mention): boolean =>
    other.kind === 'quantity' && other.workspace === thing.workspace && ids.has(other.name);
  const changed = cards.flatMap((card) => {
    const spans = unique(card.mentions.filter(isMeant).map(({ span }) => span));
    const edits = spans.map(({ end }) => ({ span: { start: end - oldKey.length, end }, text: newKey }));
    return spans.length === 0 || newKey === oldKey ? [] : [{ card, edits }];
  });
  const own = changed.find(({ card }) => card.uri === thing.workspace);
  const registry = own && registryFrom(applyEdits({ text: own.card.text, edits: own.edits }));
  for (const { card, edits } of changed) {
    const isWord = edits.every(({ span }) => card.text.slice(span.start, span.end) === oldKey);
    const home = registry === undefined || card === own?.card ? card.home : { ...card.home, registry };
    const nameOf = (one: Mention): string => (isMeant(one) ? ids.get(one.thing.name)! : one.thing.name);
    if (!isWord || !isReadBack(card, edits, home, nameOf)) return writtenOddly(thing, card);
  }
  return {
    kind: 'edits',
    files: changed.map(({ card: { uri, text }, edits }) => ({ uri, text, edits })),
  };
}

function writtenOddly({ name }: Thing, { uri }: Card): Renaming {
  return {
    kind: 'refused',
    reason: `${quote(name)} cannot be replaced in ${quote(lastNameIn(uri))}, where it is written in a way of its own; write it there as a plain word first.`,
  };
}

export function applyEdits({ text, edits }: Pick<FileEdits, 'text' | 'edits'>): string {
  let changed = '';
  let from = 0;
  for (const { span, text: written } of edits) {
    changed += text.slice(from, span.start) + written;
    from = span.end;
  }
  return changed + text.slice(from);
}

function whyNotCalled(name: string, to: string): string | undefined {
  if (name === '') return 'Nothing was typed; expected the new name.';
  // eslint-disable-next-line no-control-regex -- these are what a name must not hold
  if (/[\u0000-\u001f\u007f-\u009f\u2028\u2029\ufeff]|[\ud800-\udbff](?![\udc00-\udfff])/.test(to.trim()))
    return `${quote(name)} holds characters that cannot be seen; expected a name in one line.`;
  if (name.length > longestName)
    return `The new name has ${name.length} characters; expected at most ${longestName}.`;
  return undefined;
}

function whyTaken(thing: Thing, name: string, cards: readonly Card[]): string | undefined {
  if (name === thing.name) return undefined;
  if (thing.kind === 'check' || thing.kind === 'relation') {
    if (!ownName.test(name))
      return `Found ${quote(name)}; expected a name in small letters, with hyphens between its words.`;
    return cards.some(({ mentions }) => mentions.some((one) => isDefinitionOf({ ...thing, name }, one)))
      ? `${quote(name)} stands in \`swingwright.yaml\` already; expected a name that no other ${thing.kind} has.`
      : undefined;
  }
  if (thing.kind === 'club')
    return bagOf(thing, cards).has(name)
      ? `${quote(name)} is in the student's bag already; expected a name that no other club has.`
      : undefined;
  if (thing.kind !== 'fault') return undefined;
  const books = new Map(cards.filter(({ kind }) => kind === 'faults').map((card) => [card.uri, card]));
  const definers = definersOf(thing, cards);
  // Wherever the fault is reached, the new name must not reach another one.
  const starts = new Set([
    ...books.keys(),
    ...cards.flatMap(({ mentions }) =>
      mentions.flatMap((one) =>
        one.thing.kind === 'fault' && one.thing.book !== undefined ? [one.thing.book] : [],
      ),
    ),
  ]);
  for (const start of starts) {
    const reached = booksFrom(start, books);
    if (!reached.some((uri) => definers.has(uri))) continue;
    const holder = reached.find((uri) => books.get(uri)?.faults.has(name) === true);
    if (holder !== undefined)
      return `${quote(name)} stands in ${quote(lastNameIn(holder))} already; expected a name that no other fault has.`;
  }
  return undefined;
}

function bagOf({ student }: Thing & { kind: 'club' }, cards: readonly Card[]): ReadonlySet<string> {
  const card = cards.find(({ uri }) => uri === student);
  return new Set(
    card?.mentions.flatMap(({ thing, role }) =>
      thing.kind === 'club' && role === 'definition' ? [thing.name] : [],
    ),
  );
}

function unique(spans: readonly Span[]): readonly Span[] {
  const sorted = [...spans].sort((a, b) => a.start - b.start);
  return sorted.filter((span, place) => place === 0 || span.start >= (sorted[place - 1]?.end ?? 0));
}

/** Within its quotes where it has some; with quotes where it has none and YAML would take the new name for something else. */
function rewrite(text: string, span: Span, name: string): { readonly span: Span; readonly text: string } {
  const [before, first] = [text.charAt(span.start - 1), text.charAt(span.start)];
  if (before === text.charAt(span.end) && (before === '"' || before === "'"))
    return { span, text: before === '"' ? JSON.stringify(name).slice(1, -1) : name.replaceAll("'", "''") };
  if (first === '"' || first === "'" || !isPlainWord(name, 'flow'))
    return { span, text: JSON.stringify(name) };
  return { span, text: name };
}

/** The same mentions as before, but for the new names: anything else would be damage. */
function isReadBack(
  card: Card,
  edits: FileEdits['edits'],
  home: Card['home'],
  nameOf: (mention: Mention) => string,
): boolean {
  const text = applyEdits({ text: card.text, edits });
  const changed = cardOf(card.uri, parseDocument(card.kind, text, home.registry), home);
  const expected = card.mentions.map((mention) =>
    keyOf({ ...mention, thing: { ...mention.thing, name: nameOf(mention) } }),
  );
  const found = changed.mentions.map(keyOf);
  return expected.length === found.length && expected.every((key, place) => key === found[place]);
}

function keyOf({ thing, role }: Mention): string {
  return `${role} ${thing.kind} ${thing.name}`;
}
