// A comparison in words, the same on the command line, on a page and in an editor; compares nothing.
import { counted } from '../measure/counted.ts';
import { nameWithin } from '../checks/agreement.ts';
import { verdictWords } from '../checks/verdict-words.ts';
import { inPoints, showSize, showSpread, showValue, showWindow } from '../measure/show.ts';
import type { Quantity } from '../registry/quantity.ts';
import type { Standing } from '../judgement/goal-standing.ts';
import { percent } from '../checks/verdict-words.ts';
import { upperFirst } from '../measure/quote.ts';
import type {
  Comparison,
  Difference,
  FaultChange,
  Figure,
  GoalChange,
  HeldBetween,
  Judged,
  QuantityChange,
  ShotsOf,
  Size,
  TemplateComparison,
  WindowRow,
} from './comparison.ts';
import { differenceWords } from './outcome-words.ts';

/** Two records alone cannot tell whether a lesson between them decided the plan already. */
export function heldTitle({ plan }: HeldBetween): string {
  const [own, other] = plan === 'first' ? ['A', 'B'] : ['B', 'A'];
  return `The plan of ${own}, as ${other} has it (the first later lesson decides)`;
}

/** "49.0 cm ± 0.7 cm", with "computed" or "expected" where it is no entry; a dash where there is none. */
export function figureWords(quantity: Quantity, figure: Figure | undefined): string {
  if (figure === undefined) return '–';
  const origin = { entered: '', derived: ' (computed)', expected: ' (expected)' }[figure.kind];
  const side = figure.from === undefined ? '' : ` ${figure.from.word}`;
  return `${showValue(quantity, figure.value, figure.u)}${side}${origin}`;
}

/** "7.0 cm less ± 1.0 cm"; a dash where one of the numbers is missing. */
export function changeWords(quantity: Quantity, { value, u, isTurned }: Difference): string {
  if (value === undefined) return '–';
  const words = isTurned ? `${showSize(quantity, value, u)} apart` : differenceWords(quantity, value, u);
  return u === undefined || value === 0 ? words : `${words} ± ${inPoints(showSpread(quantity, u))}`;
}

/** How many standard uncertainties the difference is, "7.1 u". */
function timesWords({ value, u }: Difference): string {
  if (value === undefined || u === undefined) return '';
  const times = Math.abs(value) / u;
  return times >= 99.5 ? 'over 99 u' : `${times.toFixed(1)} u`;
}

/** "larger, 7.1 u", "no larger, 0.9 u". */
export function sizeInShort(difference: Difference): string {
  if (difference.size === 'not known') return '';
  return `${difference.size === 'larger' ? 'larger' : 'no larger'}, ${timesWords(difference)}`;
}

export const sizeWords: Readonly<Record<Size, string>> = {
  larger: 'larger than measuring it twice explains',
  within: 'no larger than measuring it twice explains',
  'not known': '',
};

/** What the column of sizes means, for whoever reads a page of them. */
export const sizesExplained =
  'Measuring one and the same thing twice gives two numbers too. A difference d is called larger than that explains where |d| > 1.96 u, ' +
  'u = √(u₁² + u₂²) from the uncertainties of the two entries: where nothing has changed, that happens in 5 of 100 cases (k = 1.96).';

/** "stance width at address". */
export function nameOf({ quantity }: Pick<QuantityChange, 'quantity'>): string {
  return nameWithin(quantity);
}

/** What else changed about an entry than its number: "method, note". */
export function aspectWords({ aspects }: QuantityChange): string {
  return aspects.filter((aspect) => aspect !== 'value').join(', ');
}

/** "supported (93 %)", "not in its fault book". */
export function judgedWords(judged: Judged | undefined): string {
  return judged === undefined ? 'not judged' : verdictWords(judged);
}

export function faultWords({ title, at }: FaultChange): string {
  return at === undefined ? title : `${title}, at ${at.replaceAll('_', ' ')}`;
}

export const faultStates: Readonly<Record<FaultChange['state'], string>> = {
  new: 'stated now',
  gone: 'no longer stated',
  changed: 'stated in both, judged otherwise',
};

/** Two numbers of one quantity stand on a page where entries and goals do; which is which. */
export const whatGoalsGoBy =
  'Goals go by what all entries of a record together say; entries stand as they were entered.';

/** "carry 176..180 m". */
export function goalName({ key, quantity, before, after }: GoalChange): string {
  const { min, max } = (after ?? before)!.wanted;
  const title = nameWithin(quantity);
  return key === 'contact' ? `${title} ahead of the ball` : `${title} ${showWindow(quantity, min, max)}`;
}

/** "171 m ± 3 m (4 %)". */
export function standingWords(standing: Standing | undefined): string {
  if (standing === undefined) return 'no goal';
  const { wanted, value, u, chance } = standing;
  if (value === undefined || chance === undefined) return 'not known';
  return `${showValue(wanted.quantity, value, u)} (${percent(chance)})`;
}

/** "170.2 m ± 1.4 m, spread 5 m, 12 shots". */
export function shotsWords(quantity: Quantity, shots: ShotsOf | undefined): string {
  if (shots === undefined) return '–';
  const spread = shots.sd === undefined ? '' : `, spread ${showSpread(quantity, shots.sd)}`;
  return `${showValue(quantity, shots.mean, shots.u)}${spread}, ${counted(shots.count, 'shot')}`;
}

/** What differs, in a few sentences. */
export function summaryOf(comparison: Comparison): readonly string[] {
  const {
    entries,
    sameEntries,
    computed,
    findings,
    faults,
    misses,
    goals,
    plan,
    shots,
    signed,
    words,
    isSame,
  } = comparison;
  if (isSame)
    return [
      `Nothing differs: ${sameEntries === 1 ? '1 entry says' : `${sameEntries} entries say`} the same.`,
    ];
  const larger = entries.filter(({ difference }) => difference.size === 'larger').length;
  const of = entriesInWords(comparison);
  const first = of === '' ? `All ${sameEntries} entries say the same` : of;
  const moved = computed.filter(({ difference }) => difference.size === 'larger').length;
  const parts = [
    `${first}${larger === 0 ? '' : `; ${larger} ${larger === 1 ? 'differs' : 'differ'} by more than measuring twice explains`}.`,
    ...(moved === 0
      ? []
      : [`So ${moved === 1 ? 'does 1 computed number' : `do ${moved} computed numbers`}.`]),
    ...handsWords(comparison),
  ];
  const fresh = findings.filter(({ state }) => state === 'new').length;
  const others = [
    ...(words.length === 0
      ? []
      : [`${words.map(({ of: what }) => what).join(', ')} differ${words.length === 1 ? 's' : ''}`]),
    ...(fresh === 0 ? [] : [`${counted(fresh, 'finding')} new`]),
    ...(findings.length === fresh ? [] : [`${counted(findings.length - fresh, 'finding')} gone`]),
    ...(faults.length === 0 ? [] : [`${counted(faults.length, 'fault')} told otherwise`]),
    ...(misses.length === 0
      ? []
      : [misses.length === 1 ? '1 miss told otherwise' : `${misses.length} misses told otherwise`]),
    ...(goals.every(({ state }) => state === 'same') ? [] : ['goals differ']),
    ...(plan.length === 0 ? [] : ['the plan differs']),
    ...(shots.length === 0 ? [] : ['the shots differ']),
    ...signed.slice(0, mostSigned).map(({ key }) => `${partOf(key)} differs`),
    ...(signed.length > mostSigned ? [`and ${signed.length - mostSigned} more`] : []),
  ];
  return others.length === 0 ? parts : [...parts, `${upperFirst(others.join(', '))}.`];
}

/**
 * Left and right are those of the target line, whoever plays: between two hands the same number is the opposite swing. One rule for
 * numbers and for pictures of club and ball; body and arc alone are drawn as in a mirror, and say so.
 */
function handsWords({ words }: Comparison): readonly string[] {
  const { before, after } = words.find(({ of }) => of === 'hand') ?? {};
  if (before === undefined || after === undefined) return [];
  return [
    `A plays ${before}-handed and B ${after}-handed. Left and right of the target line are compared as they are, not mirrored: ` +
      'a club path to the right is in-to-out for the right-handed player and out-to-in for the left-handed one, ' +
      'and so it is with face, start, curve and aim.',
  ];
}

/** "the note on face-left-open" for `faults.face-left-open.note`; another key as it is written. */
function partOf(key: string): string {
  const about = /^\w+\.(.+)\.note$/.exec(key)?.[1];
  return about === undefined ? key : `the note on ${about}`;
}

/** So many are named, the others counted. */
const mostSigned = 3;

/** "13 entries changed, 2 new, 1 gone, 5 the same". */
function entriesInWords({ entries, sameEntries }: Comparison): string {
  if (entries.length === 0) return '';
  const count = (state: QuantityChange['state']): number =>
    entries.filter((one) => one.state === state).length;
  const said = (
    [
      [count('changed'), 'changed'],
      [count('new'), 'new'],
      [count('gone'), 'gone'],
      [sameEntries, 'the same'],
    ] as const
  )
    .filter(([number]) => number > 0)
    .map(([number, words], i) => `${i === 0 ? counted(number, 'entry', 'entries') : number} ${words}`);
  return said.join(', ');
}

/** "2..6 deg down". */
export function windowWords({ window, edges }: WindowRow): string {
  const { quantity } = window;
  return edges === undefined ? 'the hand is not known' : showWindow(quantity, edges.from, edges.to);
}

/** "outside: 1.3 u". */
export function outsideWords({ state, outsideBy }: WindowRow): string {
  if (outsideBy === undefined || outsideBy === 0) return state;
  return `${state}: ${outsideBy.toFixed(1)} u`;
}

export function templateSummary({ rows, isForOtherClub }: TemplateComparison): readonly string[] {
  const count = (state: WindowRow['state']): number => rows.filter((one) => one.state === state).length;
  const said = (['inside', 'just outside', 'outside', 'not known'] as const)
    .filter((state) => count(state) > 0)
    .map((state) => `${count(state)} ${state}`);
  return [
    rows.length === 0 ? 'The template has no windows.' : `Of ${rows.length} windows: ${said.join(', ')}.`,
    ...(isForOtherClub ? ['The template is for clubs of another kind.'] : []),
  ];
}
