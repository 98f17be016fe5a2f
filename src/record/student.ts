// Reads a student's file from its tree: body, bag, goals; knows no record.
import { quote } from '../measure/quote.ts';
import { areSidesApart, bodySides } from '../registry/body.ts';
import { isDate } from './date.ts';
import { readBodyPlace } from './body-place.ts';
import type { BagClub, Entry, Injury, Located, StudentFile } from './document.ts';
import { readEntries } from './entries.ts';
import type { Reader } from './entry.ts';
import { readGoals } from './goal.ts';
import { valueAt, type Tree } from './tree.ts';
import { innerSpan, wordAt, wordsAt } from './word.ts';

export type StudentParts = Omit<StudentFile, 'text' | 'problems' | 'silences' | 'outline'>;

export function readStudent(tree: Tree, reader: Reader): StudentParts {
  const entries = new Map<string, Entry>();
  // The bag and the goals have readers of their own: nothing below them is a quantity of the student.
  readEntries(tree, 'student', entries, reader);
  const hand = wordAt(tree, 'hand');
  const side = hand?.value;
  return {
    kind: 'student',
    name: readName(tree),
    hand:
      hand !== undefined && (side === 'left' || side === 'right')
        ? { value: side, span: hand.span }
        : undefined,
    language: wordAt(tree, 'language'),
    bodyTable: wordAt(tree, 'body_table'),
    born: readBirth(valueAt(tree, 'born'), reader),
    injuries: readInjuries(
      valueAt(tree, 'injuries'),
      side === 'left' || side === 'right' ? side : undefined,
      reader,
    ),
    entries,
    bag: readBag(valueAt(tree, 'bag'), reader),
    goals: readGoals(valueAt(tree, 'goals'), reader),
    notes: wordsAt(tree, 'notes'),
  };
}

function readName(tree: Tree): StudentParts['name'] {
  const value = valueAt(tree, 'name');
  const words = wordsAt(tree, 'name');
  return value?.kind === 'scalar' && words !== undefined
    ? { value: words, span: innerSpan(value) }
    : undefined;
}

function readBag(tree: Tree | undefined, reader: Reader): ReadonlyMap<string, BagClub> {
  const bag = new Map<string, BagClub>();
  if (tree?.kind !== 'map') return bag;
  for (const { key, keySpan, value } of tree.pairs.values()) {
    const entries = new Map<string, Entry>();
    readEntries(value, 'club', entries, reader);
    bag.set(key, { name: { value: key, span: keySpan }, kind: wordAt(value, 'kind'), entries });
  }
  return bag;
}

/** A year alone will do; what is written as a day must be one. */
function readBirth(tree: Tree | undefined, reader: Reader): Located<string> | undefined {
  if (tree?.kind !== 'scalar' || tree.plain === null) return undefined;
  const span = innerSpan(tree);
  if (isDate(tree.source) || /^\d{4}$/.test(tree.source)) return { value: tree.source, span };
  if (!/^\d+-\d+-\d+$/.test(tree.source)) return undefined;
  reader.problems.push({
    code: 'impossible-date',
    span,
    found: quote(tree.source),
    expected: 'a day of the calendar as year-month-day, such as `1998-05-14`, or only the year',
  });
  return undefined;
}

/** A year alone is a number in YAML. */
function readSince(tree: Tree | undefined): Injury['since'] {
  return tree?.kind === 'scalar' && tree.plain !== null
    ? { value: tree.source, span: innerSpan(tree) }
    : undefined;
}

/** Where part and side name different sides, either may be meant: the caution stands for both. */
function readInjuries(
  tree: Tree | undefined,
  hand: 'left' | 'right' | undefined,
  reader: Reader,
): readonly Injury[] {
  if (tree?.kind !== 'list') return [];
  return tree.items.flatMap((item) => {
    const part = wordAt(item, 'part');
    if (part === undefined) return [];
    const place = readBodyPlace(part, reader);
    const written = wordAt(item, 'side');
    const side = bodySides.find((known) => known === written?.value);
    const note = wordsAt(item, 'note');
    const since = readSince(valueAt(item, 'since'));
    if (place?.side === undefined || side === undefined || !areSidesApart(place.side, side, hand))
      return [{ part, place: place && { ...place, side: side ?? place.side }, since, note }];
    const whose = hand === undefined ? 'one player' : `a ${hand}-handed player`;
    reader.problems.push({
      code: 'side-against-part',
      span: written!.span,
      found: `\`side: ${side}\` with ${quote(part.value)}`,
      expected: `one side: of ${whose} these are two, and cautions are given for both`,
    });
    return [{ part, place: { ...place, side: 'both' }, since, note }];
  });
}
