// Gives what a coach named a name that tells nothing, the same one wherever it stands, and knows which words tell nothing anyway; knows no file.
import { bodyWords } from '../registry/body.ts';
import { clubKinds, comparatives, contacts } from '../registry/generated.ts';
import type { Registry } from '../registry/registry.ts';
import { functionNames } from '../judgement/functions.ts';
import { unitRows } from '../measure/unit-table.ts';
import { formatWords } from './format-words.ts';

/** What a coach gives a name to. */
export type Coined = 'club' | 'fault' | 'method' | 'quantity' | 'check' | 'direction' | 'source';

export interface SharedNames {
  /** What something is called in the copies: its own name where that is made of words of the trade alone. */
  readonly nameFor: (of: Coined, name: string) => string;
  /** A measurement, an expression or an id with every coined name in it replaced; undefined where words are left that the format does not know. */
  readonly wordsFor: (words: string) => string | undefined;
}

/** Words of measurements, expressions and lists of choice, beyond the ids of the format. */
const valueWords: ReadonlySet<string> = new Set([
  ...formatWords,
  ...[
    ...unitRows.flatMap(({ name, aliases }) => [name, ...aliases]),
    ...contacts.flatMap(({ word, also }) => [word, ...also]),
    ...comparatives.flatMap(({ more, less }) => [...more, ...less]),
    ...bodyWords,
    ...functionNames,
    'by to the of in on at per a an and or not from with less more about than',
    'en de female male winter summer lead trail left right both gentle firm setup backswing downswing',
    'error warning information hint off positive negative true false ignore doubtful',
  ].flatMap((word) => tokensOf(word)),
]);

/** What clubs are called by their kind and number; common practice, no source. */
const clubWords: ReadonlySet<string> = new Set([
  ...clubKinds,
  ...'wood woods irons putter pitching gap sand lob utility long mid short blade degree degrees deg'.split(
    ' ',
  ),
  ...'one two three four five six seven eight nine ten eleven'.split(' '),
]);

/** `registries` know each workspace's own quantities and methods; where `cleaned` is given, names stay as it leaves them. */
export function sharedNames(
  registries: readonly Registry[],
  cleaned: ((words: string) => string) | undefined,
): SharedNames {
  const given = new Map<string, string>();
  const counts = new Map<Coined, number>();
  const nameFor = (of: Coined, name: string): string => {
    if (cleaned !== undefined) return cleaned(name);
    if (tellsNothing(of, name)) return name;
    const key = `${of}\0${name.normalize('NFC').trim().toLowerCase()}`;
    const known = given.get(key);
    if (known !== undefined) return known;
    const n = (counts.get(of) ?? 0) + 1;
    counts.set(of, n);
    const alias = spelt(of, n);
    given.set(key, alias);
    return alias;
  };
  const inWords = inWordsOf(registries).map(({ of, name }) => ({
    pattern: new RegExp(`(?<![\\p{L}\\p{M}\\p{N}_-])${escaped(name)}(?![\\p{L}\\p{M}\\p{N}_-])`, 'giu'),
    alias: nameFor(of, name),
  }));
  return {
    nameFor: (of, name) => (of === 'quantity' ? idFor(name, nameFor) : nameFor(of, name)),
    wordsFor: (words) => {
      const rest = inWords.reduce((text, { pattern }) => text.replace(pattern, ' '), words.normalize('NFC'));
      if (!tokensOf(rest).every((token) => valueWords.has(token))) return undefined;
      return inWords.reduce(
        (text, { pattern, alias }) => text.replace(pattern, alias),
        words.normalize('NFC'),
      );
    },
  };
}

/** Of an id only what follows the last point is the coach's own. */
function idFor(id: string, nameFor: SharedNames['nameFor']): string {
  const at = id.lastIndexOf('.') + 1;
  return id.slice(0, at) + nameFor('quantity', id.slice(at));
}

/** The names that stand within measurements and expressions, the longest first. */
function inWordsOf(registries: readonly Registry[]): readonly { of: Coined; name: string }[] {
  const found = registries.flatMap(({ own, ownMethods }) => [
    ...own.map(({ id }) => ({ of: 'quantity' as const, name: id.slice(id.lastIndexOf('.') + 1) })),
    ...own.flatMap(({ directions }) =>
      directions.map(({ word }) => ({ of: 'direction' as const, name: word })),
    ),
    ...[...ownMethods.keys()].map((name) => ({ of: 'method' as const, name })),
  ]);
  return found
    .filter(({ of, name }) => !tellsNothing(of, name))
    .sort((a, b) => b.name.length - a.name.length);
}

function tellsNothing(of: Coined, name: string): boolean {
  const tokens = tokensOf(name);
  if (of === 'source' || tokens.length === 0) return false;
  if (of !== 'club') return !/\p{N}/u.test(name) && tokens.every((token) => valueWords.has(token));
  // A number of one or two digits is that of the club; more would be a day.
  return /^\D*(?:\d{1,2}\D*)?$/u.test(name) && tokens.every((token) => clubWords.has(token));
}

/** As each kind of name has to be spelt to be read. */
function spelt(of: Coined, n: number): string {
  switch (of) {
    case 'club':
    case 'source':
      return `${of} ${n}`;
    case 'fault':
    case 'method':
    case 'check':
      return `${of}-${n}`;
    case 'quantity':
      return `own_${n}`;
    case 'direction':
      // Letters alone: a digit would end the word.
      return `way-${[...String(n)].map((digit) => 'abcdefghij'[Number(digit)]).join('')}`;
  }
}

function tokensOf(words: string): readonly string[] {
  return words
    .toLowerCase()
    .split(/[^\p{L}\p{M}]+/u)
    .filter((token) => token !== '');
}

function escaped(name: string): string {
  return name.replace(/[\\^$.*+?()[\]{}|]/g, String.raw`\$&`);
}
