// Reads a student's file from its tree: body, bag, goals; knows no record.
import { quote } from '../measure/quote.ts';
import { isDate } from './date.ts';
import type { BagClub, Entry, StudentFile } from './document.ts';
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
  checkBirth(valueAt(tree, 'born'), reader);
  return {
    kind: 'student',
    name: readName(tree),
    hand:
      hand !== undefined && (side === 'left' || side === 'right')
        ? { value: side, span: hand.span }
        : undefined,
    bodyTable: wordAt(tree, 'body_table'),
    entries,
    bag: readBag(valueAt(tree, 'bag'), reader),
    goals: readGoals(valueAt(tree, 'goals'), reader),
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
function checkBirth(tree: Tree | undefined, reader: Reader): void {
  if (tree?.kind !== 'scalar' || !/^\d+-\d+-\d+$/.test(tree.source) || isDate(tree.source)) return;
  reader.problems.push({
    code: 'impossible-date',
    span: innerSpan(tree),
    found: quote(tree.source),
    expected: 'a day of the calendar as year-month-day, such as `1998-05-14`, or only the year',
  });
}
