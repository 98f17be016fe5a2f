// Finds every mention of one thing among the files of a workspace; knows what makes two mentions the same thing, and reads no file.
import type { Span } from '../measure/measure.ts';
import { lastNameIn } from '../record/reference.ts';
import type { Card } from './cards.ts';
import type { Mention, Thing } from './mentions.ts';

export interface Occurrence {
  readonly uri: string;
  readonly span: Span;
  readonly role: Mention['role'];
}

/** A name as good as any to look for in a text before it is read: without it there is no mention. */
export function wordOf({ kind, name }: Thing): string {
  if (kind === 'quantity') return name.slice(name.lastIndexOf('.') + 1);
  return kind === 'file' ? lastNameIn(name) : name;
}

/** In the order of the cards, then of the text; what defines the thing is among them. */
export function occurrencesOf(thing: Thing, cards: readonly Card[]): readonly Occurrence[] {
  const isSame = sameAs(thing, cards);
  return cards.flatMap(({ uri, mentions }) =>
    mentions.filter((mention) => isSame(mention.thing)).map(({ span, role }) => ({ uri, span, role })),
  );
}

/** Whether another mention speaks of the same thing. */
export function sameAs(thing: Thing, cards: readonly Card[]): (other: Thing) => boolean {
  switch (thing.kind) {
    case 'fault': {
      const { family, definers } = familyOf(thing, cards);
      return (other) =>
        other.kind === 'fault' &&
        other.name === thing.name &&
        (definers.size === 0
          ? other.book === thing.book
          : booksFrom(other.book, family).some((book) => definers.has(book)));
    }
    case 'club':
      return (other) => other.kind === 'club' && other.name === thing.name && other.student === thing.student;
    case 'quantity':
    case 'check':
    case 'relation':
      return (other) =>
        other.kind === thing.kind && other.name === thing.name && other.workspace === thing.workspace;
    case 'miss':
    case 'file':
      return (other) => other.kind === thing.kind && other.name === thing.name;
  }
}

/** The books in which a fault stands under this name: those that one record or book reaches are one family. */
export function definersOf(thing: Thing & { kind: 'fault' }, cards: readonly Card[]): ReadonlySet<string> {
  return familyOf(thing, cards).definers;
}

interface Family {
  /** All fault books by their URI. */
  readonly family: ReadonlyMap<string, Card>;
  readonly definers: ReadonlySet<string>;
}

/**
 * Whoever reaches two books that both have the fault means one by it, since the nearer stands for the farther. So all books that
 * are reached together belong together, from one to the next, until nothing is added.
 */
function familyOf({ name, book }: Thing & { kind: 'fault' }, cards: readonly Card[]): Family {
  const family = new Map(cards.filter(({ kind }) => kind === 'faults').map((card) => [card.uri, card]));
  const definersFrom = (from: string | undefined): readonly string[] =>
    booksFrom(from, family).filter((uri) => family.get(uri)?.faults.has(name) === true);
  const definers = new Set(definersFrom(book));
  const starts = new Set(
    cards.flatMap(({ mentions }) =>
      mentions.flatMap(({ thing }) =>
        thing.kind === 'fault' && thing.name === name && thing.book !== undefined ? [thing.book] : [],
      ),
    ),
  );
  for (let before = -1; before !== definers.size && definers.size > 0;) {
    before = definers.size;
    for (const start of starts) {
      const reached = definersFrom(start);
      if (reached.some((uri) => definers.has(uri))) for (const uri of reached) definers.add(uri);
    }
  }
  return { family, definers };
}

/** A book and those that it extends, one after another, as far as they are there. */
export function booksFrom(
  first: string | undefined,
  family: ReadonlyMap<string, { readonly extends: string | undefined }>,
): readonly string[] {
  const books = new Set<string>();
  for (let next = first; next !== undefined && !books.has(next) && family.has(next);) {
    books.add(next);
    next = family.get(next)?.extends;
  }
  return [...books];
}
