// Finds what a signature stands under and no other part of a comparison tells: notes, unread values, and whatever comes to records yet.
import { signedLines } from '../record/fingerprint.ts';
import type { Comparison, SignedChange } from './comparison.ts';

type Told = Pick<Comparison, 'words' | 'entries' | 'faults' | 'misses' | 'goals' | 'plan' | 'predicted'>;

/** So that a comparison that finds nothing voids no signature. */
export function compareSigned(first: string, second: string, told: Told): readonly SignedChange[] {
  const [a, b] = [signedLines(first), signedLines(second)];
  if (a === undefined || b === undefined)
    return first === second
      ? []
      : [{ key: 'the text', state: 'changed', before: undefined, after: undefined }];
  const [before, after] = [byKey(a), byKey(b)];
  return [...new Set([...before.keys(), ...after.keys()])].flatMap((key): readonly SignedChange[] => {
    const [was, is] = [before.get(key), after.get(key)];
    if (was?.value === is?.value || isTold((was ?? is)!.path, told)) return [];
    const state = was === undefined ? 'new' : is === undefined ? 'gone' : 'changed';
    return [{ key, state, before: was?.value, after: is?.value }];
  });
}

interface Said {
  readonly path: readonly string[];
  readonly value: string;
}

function byKey(lines: readonly Said[]): ReadonlyMap<string, Said> {
  const found = new Map<string, Said>();
  for (const { path, value } of lines) {
    const key = path.join('.');
    const before = found.get(key);
    found.set(key, { path, value: before === undefined ? value : `${before.value}; ${value}` });
  }
  return found;
}

/** The keys of a record's head, and what a comparison calls them. */
const heads: Readonly<Record<string, Comparison['words'][number]['of']>> = {
  student: 'student',
  date: 'date',
  club: 'club',
  template: 'template',
  faults_from: 'fault book',
  shots: 'shots',
};

function isTold(
  path: readonly string[],
  { words, entries, faults, misses, goals, plan, predicted }: Told,
): boolean {
  const [top = '', about = '', key = ''] = path;
  const id = path.join('.');
  const of = Object.hasOwn(heads, top) ? heads[top] : id === 'flight.shape' ? 'shape' : undefined;
  if (of !== undefined && path.length <= 2 && words.some((word) => word.of === of)) return true;
  if (entries.some(({ quantity }) => quantity.id === id)) return true;
  switch (top) {
    case 'faults':
      return key !== 'note' && faults.some(({ fault, state }) => fault === about && state !== 'changed');
    case 'misses':
      // A list of plain words has places for keys: one word gone moves the others up.
      return (
        key !== 'note' &&
        (/^\d+$/.test(about) ? misses.length > 0 : misses.some(({ miss }) => miss === about))
      );
    case 'goals':
      return goals.some((goal) => goal.key === key && goal.state !== 'same');
    case 'plan':
      return key !== 'note' && plan.some(({ change, state }) => change === about && state !== 'changed');
    case 'predicted':
      return predicted.some(({ quantity }) => `predicted.${quantity.id}` === id);
    default:
      return false;
  }
}
