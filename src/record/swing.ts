// Reads a swing record from its tree; what stands in the files that it refers to is not known here.
import { quote } from '../measure/quote.ts';
import { readPlan, readPredicted } from './change.ts';
import { isDate } from './date.ts';
import type { Entry, Located, StatedFault, StatedMiss, SwingRecord } from './document.ts';
import { readSection } from './entries.ts';
import { readEntry, type Reader } from './entry.ts';
import { readGoals } from './goal.ts';
import { findShotQuantity } from './shot-quantity.ts';
import { valueAt, type Tree } from './tree.ts';
import { innerSpan, locate, wordAt, wordsAt } from './word.ts';

export type SwingParts = Omit<SwingRecord, 'text' | 'problems' | 'silences' | 'outline'>;

const sections = ['conditions', 'checkpoints', 'delivery', 'ground', 'strike', 'flight'];

export function readSwing(tree: Tree, reader: Reader): SwingParts {
  const entries = new Map<string, Entry>();
  for (const section of sections) readSection(tree, section, entries, reader);
  return {
    kind: 'swing',
    student: wordAt(tree, 'student'),
    date: readDate(valueAt(tree, 'date'), reader),
    club: wordAt(tree, 'club'),
    language: wordAt(tree, 'language'),
    template: wordAt(tree, 'template'),
    faultsFrom: wordAt(tree, 'faults_from'),
    shotsFile: wordAt(tree, 'shots'),
    entries,
    shots: readShots(valueAt(tree, 'shots'), reader),
    shape: wordAt(valueAt(tree, 'flight'), 'shape'),
    faults: readStatedFaults(valueAt(tree, 'faults')),
    misses: readMisses(valueAt(tree, 'misses')),
    goals: readGoals(valueAt(tree, 'goals'), reader),
    plan: readPlan(valueAt(tree, 'plan'), reader),
    predicted: readPredicted(valueAt(tree, 'predicted'), reader),
  };
}

/** A day of the calendar; anything else is a problem and no date. */
function readDate(tree: Tree | undefined, reader: Reader): Located<string> | undefined {
  if (tree?.kind !== 'scalar' || tree.plain === null) return undefined;
  const span = innerSpan(tree);
  if (isDate(tree.source)) return { value: tree.source, span };
  reader.problems.push({
    code: 'impossible-date',
    span,
    found: quote(tree.source),
    expected: 'a day of the calendar as year-month-day, such as `2026-05-14`',
  });
  return undefined;
}

function readShots(tree: Tree | undefined, reader: Reader): readonly ReadonlyMap<string, Entry>[] {
  if (tree?.kind !== 'list') return [];
  return tree.items.flatMap((item) => {
    if (item.kind !== 'map') return [];
    const entries = new Map<string, Entry>();
    for (const pair of item.pairs.values()) {
      const quantity = findShotQuantity(pair.key, reader.registry);
      if (quantity !== undefined) entries.set(quantity.id, readEntry(pair, quantity, reader));
    }
    return [entries];
  });
}

function readStatedFaults(tree: Tree | undefined): readonly StatedFault[] {
  if (tree?.kind !== 'list') return [];
  return tree.items.flatMap((item) => {
    const fault = locate(valueAt(item, 'fault'));
    if (fault === undefined) return [];
    return [{ fault, at: wordAt(item, 'at'), note: wordsAt(item, 'note'), span: item.span }];
  });
}

/** Words, or mappings with a note; the shape of the file says which words there are. */
function readMisses(tree: Tree | undefined): readonly StatedMiss[] {
  if (tree?.kind !== 'list') return [];
  return tree.items.flatMap((item) => {
    const miss = item.kind === 'map' ? wordAt(item, 'miss') : locate(item);
    return miss === undefined ? [] : [{ miss, note: wordsAt(item, 'note') }];
  });
}
