// What changed from one version of a record to the next, a line each, and in one short line: looks make no difference; compares nothing.
import { counted } from '../measure/counted.ts';
import {
  aspectWords,
  changeWords,
  faultStates,
  faultWords,
  figureWords,
  goalName,
  judgedWords,
  nameOf,
  shotsWords,
  sizeInShort,
} from './comparison-words.ts';
import type { ChangeState, Comparison, GoalChange, QuantityChange } from './comparison.ts';
import { nameWithin } from '../checks/agreement.ts';

export interface DiffLine {
  /** What came, what went, what is another. */
  readonly sign: '+' | '-' | '~';
  readonly words: string;
}

const signs: Readonly<Record<ChangeState, DiffLine['sign']>> = { new: '+', gone: '-', changed: '~' };

/** Values first, then what the coach wrote of faults, goals and plan, then findings. None where nothing differs but looks. */
export function diffLines(comparison: Comparison): readonly DiffLine[] {
  const { words, entries, shots, faults, misses, goals, plan, predicted, signed, findings } = comparison;
  return [
    ...words.map(({ of, before, after }): DiffLine => ({
      sign: before === undefined ? '+' : after === undefined ? '-' : '~',
      words: `${of}: ${[before, after].filter((word) => word !== undefined).join(' → ')}`,
    })),
    ...entries.map(entryLine),
    ...shots.map(({ quantity, state, before, after }): DiffLine => ({
      sign: signs[state],
      words: `shots, ${nameWithin(quantity)}: ${shotsWords(quantity, before)} → ${shotsWords(quantity, after)}`,
    })),
    ...faults.map((fault): DiffLine => ({
      sign: signs[fault.state],
      words: `fault, ${faultWords(fault)}: ${faultStates[fault.state]}; the numbers say ${fromTo(judgedWords(fault.before), judgedWords(fault.after))}`,
    })),
    ...misses.map(({ miss, state }): DiffLine => ({ sign: signs[state], words: `miss, ${miss}` })),
    ...goals.flatMap((goal): readonly DiffLine[] =>
      goal.state === 'same' ? [] : [{ sign: signs[goal.state], words: `goal, ${goalWords(goal)}` }],
    ),
    ...plan.map(({ change, state, before, after }): DiffLine => ({
      sign: signs[state],
      words: `plan, ${change}: ${[before, after].filter((word) => word !== undefined).join(' → ')}`,
    })),
    ...predicted.map((change): DiffLine => {
      const line = entryLine(change);
      return { ...line, words: `prediction, ${line.words}` };
    }),
    ...signed.map(({ key, state, before, after }): DiffLine => ({
      sign: signs[state],
      words: `${key}: ${[before, after].flatMap((words) => (words === undefined ? [] : [cut(words)])).join(' → ') || 'changed'}`,
    })),
    ...findings.map(({ state, finding: { code, severity, message } }): DiffLine => ({
      sign: signs[state],
      words: `${severity} ${code}: ${message}`,
    })),
  ];
}

/** One word where both are the same. */
function fromTo(before: string, after: string): string {
  return before === after ? after : `${before} → ${after}`;
}

function goalWords(goal: GoalChange): string {
  const { before, after } = goal;
  if (before === undefined || after === undefined) return goalName(goal);
  return `${goalName({ ...goal, after: undefined })} → ${goalName({ ...goal, before: undefined })}`;
}

/** As much of a text as fits a line. */
function cut(words: string): string {
  return words.length > longest ? `${words.slice(0, longest - 1)}…` : words;
}
const longest = 60;

function entryLine(change: QuantityChange): DiffLine {
  const { quantity, state, before, after, difference } = change;
  const name = nameOf(change);
  if (state === 'new') return { sign: '+', words: `${name}: ${figureWords(quantity, after)}` };
  if (state === 'gone') return { sign: '-', words: `${name}: ${figureWords(quantity, before)}` };
  const also = aspectWords(change);
  const value = change.aspects.includes('value')
    ? `${figureWords(quantity, before)} → ${figureWords(quantity, after)} (${[changeWords(quantity, difference), sizeInShort(difference)].filter((words) => words !== '').join('; ')})`
    : figureWords(quantity, after);
  return { sign: '~', words: `${name}: ${value}${also === '' ? '' : `; other ${also}`}` };
}

/** How many changes a short line names. */
const mostNamed = 3;

/** "club path 5.0 → 3.0 deg right, attack angle new, 2 more; 1 finding new, 1 gone". */
export function diffInShort({ entries, findings, isSame, ...comparison }: Comparison): string {
  if (isSame) return 'no value changed';
  const named = entries.slice(0, mostNamed).map((change) => {
    const { quantity, state, before, after, aspects } = change;
    if (state !== 'changed') return `${nameOf(change)} ${state}`;
    return aspects.includes('value')
      ? `${nameOf(change)} ${plain(figureWords(quantity, before))} → ${plain(figureWords(quantity, after))}`
      : `${nameOf(change)}: ${aspectWords(change)}`;
  });
  const left = entries.length - named.length;
  const kinds = [
    ...comparison.words.map(({ of }) => of),
    ...(comparison.shots.length === 0 ? [] : ['shots']),
    ...(comparison.faults.length + comparison.misses.length === 0 ? [] : ['faults and misses']),
    ...(comparison.goals.every(({ state }) => state === 'same') ? [] : ['goals']),
    ...(comparison.plan.length === 0 ? [] : ['plan']),
    ...(comparison.predicted.length === 0 ? [] : ['predictions']),
    ...comparison.signed.map(({ key }) => key),
  ];
  const more = [...(left === 0 ? [] : [counted(left, 'more entry', 'more entries')]), ...kinds];
  const count = (state: 'new' | 'gone'): number => findings.filter((one) => one.state === state).length;
  const [fresh, gone] = [count('new'), count('gone')];
  const told = [
    ...(fresh === 0 ? [] : [`${counted(fresh, 'finding')} new`]),
    ...(gone === 0 ? [] : [`${fresh === 0 ? counted(gone, 'finding') : gone} gone`]),
  ];
  return [[...named, ...more].join(', '), told.join(', ')].filter((part) => part !== '').join('; ');
}

/** Without the uncertainty. */
function plain(words: string): string {
  return words.replace(/ ± .*$/, '');
}
