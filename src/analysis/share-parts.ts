// Says of each key of each kind of file whether a shared copy may hold it: the one table of what is private; copies nothing.
import type { FileKind } from '../record/document.ts';
import type { Coined } from './share-names.ts';

/** What is left out of a copy unless it is asked for. */
export const privateParts = ['notes', 'health', 'birth', 'texts', 'names'] as const;
export type PrivatePart = (typeof privateParts)[number];

/** In words, one and several, for whoever says what was left out. */
export const partWords: Readonly<Record<Exclude<PrivatePart, 'names'>, readonly [string, string]>> = {
  notes: ['note', 'notes'],
  health: ['note on health', 'notes on health'],
  birth: ['day of birth', 'days of birth'],
  texts: ['explanation, title or drill', 'explanations, titles and drills'],
};

/** How the value of a key is copied: left out as private, moved in time, led to the copy of a file, renamed, or as plain words. */
export type Treatment =
  | { readonly kind: 'private'; readonly part: Exclude<PrivatePart, 'names'> }
  /** A name that a coach gave. */
  | { readonly kind: 'coined'; readonly of: Coined }
  /** `needless` is what the copies of other files make unnecessary. */
  | { readonly kind: 'day' | 'reference' | 'name' | 'title' | 'source' | 'needless' };

const note: Treatment = { kind: 'private', part: 'notes' };
const text: Treatment = { kind: 'private', part: 'texts' };
const day: Treatment = { kind: 'day' };
const reference: Treatment = { kind: 'reference' };
const title: Treatment = { kind: 'title' };
const source: Treatment = { kind: 'source' };
const club: Treatment = { kind: 'coined', of: 'club' };
const fault: Treatment = { kind: 'coined', of: 'fault' };

/**
 * By kind of file and key, wherever the key stands, or with `/` before it at the top of the file alone; what is not in it holds measurements, words that the format knows, ids
 * or expressions. Reviews are never shared: they are all names and remarks.
 */
export const treatments: Readonly<Record<Exclude<FileKind, 'review'>, Readonly<Record<string, Treatment>>>> =
  {
    swing: {
      note,
      notes: note,
      seen: note,
      feel: note,
      date: day,
      club,
      fault,
      because: fault,
      student: reference,
      template: reference,
      faults_from: reference,
      shots: reference,
    },
    student: {
      note,
      notes: note,
      seen: note,
      name: { kind: 'name' },
      club,
      injuries: { kind: 'private', part: 'health' },
      born: { kind: 'private', part: 'birth' },
      since: day,
    },
    template: { note, notes: note, '/title': text, source },
    faults: {
      notes: note,
      '/title': text,
      explanation: text,
      drills: text,
      feel: text,
      title,
      extends: reference,
    },
    workspace: {
      notes: note,
      // Copies of shots name their columns by quantity.
      columns: { kind: 'needless' },
      meaning: text,
      because: text,
      from: text,
      to: text,
      title,
      source,
      message: title,
    },
  };

/** What coaches name with the keys below this key of this kind of file. */
export function coinedBelow(kind: FileKind, key: string): Coined | undefined {
  const table = namedBelow[kind];
  return table !== undefined && Object.hasOwn(table, key) ? table[key] : undefined;
}

const namedBelow: Readonly<Partial<Record<FileKind, Readonly<Record<string, Coined>>>>> = {
  student: { bag: 'club' },
  faults: { book: 'fault' },
  workspace: {
    methods: 'method',
    quantities: 'quantity',
    derived: 'quantity',
    relations: 'check',
    checks: 'check',
    severities: 'check',
    directions: 'direction',
  },
};
