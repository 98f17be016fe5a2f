// What became of a plan in words, the same in lenses, hovers, pages and on the command line; judges nothing.
import { nameWithin } from '../checks/agreement.ts';
import { percent } from '../checks/verdict-words.ts';
import type { ChangeOutcome } from '../judgement/changed.ts';
import type { MeasuredValue } from '../judgement/measured.ts';
import type { Outcome, PredictionOutcome, ProofOutcome } from '../judgement/outcome.ts';
import { counted } from '../measure/counted.ts';
import { showSize, showValue, showWindow } from '../measure/show.ts';
import type { Quantity } from '../registry/quantity.ts';
import type { Course, LastPlan } from './courses.ts';
import type { Lesson } from './lessons.ts';

/** "1 of 2 proofs met, 3 of 4 predictions inside, 1 not measured". */
export function outcomeInShort({ changes, proofs, predictions }: Outcome): string {
  const parts = [changesInShort(changes), proofsInShort(proofs), predictionsInShort(predictions)];
  const said = parts.filter((part) => part !== '');
  return said.length === 0 ? 'nothing that can be held against it' : said.join(', ');
}

function changesInShort(changes: readonly ChangeOutcome[]): string {
  const states = changes.map(({ state }) => state);
  return inShort('change', 'made', states, ['cannot tell', 'not measured']);
}

function proofsInShort(proofs: readonly ProofOutcome[]): string {
  const states = proofs.map(({ state }) => state);
  return inShort('proof', 'met', states, ['cannot tell', 'not measured', 'unreadable']);
}

const openStates: Readonly<Record<'cannot tell' | 'not measured' | 'unreadable', string>> = {
  'cannot tell': 'cannot be told',
  'not measured': 'not measured',
  unreadable: 'not readable',
};

/** "1 of 3 changes made (1 cannot be told)": what is open is never told as not reached, and alone it stands without a count of none. */
function inShort<State extends string>(
  noun: string,
  reached: State,
  states: readonly State[],
  open: readonly (State & keyof typeof openStates)[],
): string {
  const count = (state: State): number => states.filter((one) => one === state).length;
  const isTold = states.some((state) => !open.some((one) => one === state));
  const rest = open.flatMap((state) => (count(state) === 0 ? [] : [{ state, found: count(state) }]));
  const words = rest.map(({ state, found }, i) => {
    const what = i > 0 || isTold ? String(found) : counted(found, noun);
    return `${what} ${openStates[state]}`;
  });
  const told = `${count(reached)} of ${counted(states.length, noun)} ${reached}`;
  const [first = '', ...others] = isTold ? [told, ...words] : words;
  return others.length === 0 ? first : `${first} (${others.join(', ')})`;
}

function predictionsInShort(predictions: readonly PredictionOutcome[]): string {
  if (predictions.length === 0) return '';
  const count = (state: PredictionOutcome['state']): number =>
    predictions.filter((one) => one.state === state).length;
  const judged = count('inside') + count('outside');
  const others = (['not measured', 'not tested', 'no interval'] as const).flatMap((state) => {
    const found = count(state);
    if (found === 0) return [];
    const words = state === 'no interval' ? 'without ±' : state;
    return [judged === 0 ? `${counted(found, 'prediction')} ${words}` : `${found} ${words}`];
  });
  if (judged === 0) return others.join(', ');
  const inside = `${count('inside')} of ${counted(judged, 'prediction')} inside`;
  return others.length === 0 ? inside : `${inside} (${others.join(', ')})`;
}

/** Nearer to an even chance than 19 in 20. */
function isUnsure(probability: number): boolean {
  return probability > 0.05 && probability < 0.95;
}

/** "Next lesson 2026-06-02: 1 of 2 proofs met", or why there is nothing to say yet. */
export function courseInShort({ state, held, silent, otherClub, plan, sameDay }: Course): string {
  const passed = silent.length === 0 ? '' : `${silent.map(dayOf).join(', ')} measured nothing of it; `;
  if (held !== undefined)
    return `${passed === '' ? 'Next' : `${passed}next`} lesson ${dayOf(held.next)}: ${outcomeInShort(held.outcome)}`;
  if (state === 'undated') return 'No date: nobody can tell which lesson comes next';
  if (state === 'replaced') return 'A later plan took its place before anything of it was measured';
  const club = plan.club === undefined ? 'without a club' : `with \`${plan.club}\``;
  if (passed !== '')
    return `${silent.map(dayOf).join(', ')} measured nothing of it; no lesson ${club} after that yet`;
  if (otherClub !== undefined)
    return `No later lesson ${club} yet; the next one, ${dayOf(otherClub)}, is ${otherClub.club === undefined ? 'without a club' : `with \`${otherClub.club}\``}`;
  if (sameDay.length > 0) return `No later lesson ${club} yet; one of the same day has no order`;
  return `No later lesson ${club} yet`;
}

/** "Last plan (2026-05-14): 1 of 2 proofs met"; at a later lesson than the one that decided it, what that one said. */
export function lastPlanInShort({ plan, outcome, decided }: LastPlan): string {
  if (decided === undefined) return `Last plan (${dayOf(plan)}): ${outcomeInShort(outcome)}`;
  return `Last plan (${dayOf(plan)}), decided on ${dayOf(decided.next)}: ${outcomeInShort(decided.outcome)}`;
}

/** "2026-06-02". */
export function dayOf({ date }: Lesson): string {
  return date ?? 'without a date';
}

/** "made: 41.2 cm ± 0.5 cm, asked for 41 cm". */
export function changeWords(outcome: ChangeOutcome): string {
  const { state, before, after, share } = outcome;
  if (after === undefined) return changeNumbers(outcome);
  const numbers = changeNumbers(outcome);
  const part = state === 'in part' && share !== undefined ? ` (${percent(share)} of the way)` : '';
  const unknown = state === 'not made' && before === undefined ? '; nobody wrote where it was before' : '';
  return `${changeStates[state]}${part}: ${numbers}${unknown}`;
}

/** "49.0 cm ± 0.7 cm before, 42.0 cm ± 0.7 cm now, asked for 42 cm": the numbers without a verdict. */
export function changeNumbers({ quantity, target, before, after }: ChangeOutcome): string {
  const asked =
    target.from === target.to
      ? showValue(quantity, target.from)
      : showWindow(quantity, target.from, target.to);
  if (after === undefined) return `not measured, asked for ${asked}`;
  const way = before === undefined ? '' : `${showValue(quantity, before.value, before.u)} before, `;
  return `${way}${valueWords(quantity, after)} now, asked for ${asked}`;
}

const changeStates: Readonly<Record<ChangeOutcome['state'], string>> = {
  made: 'made',
  'in part': 'made in part',
  'too far': 'gone too far',
  'not made': 'not made',
  'cannot tell': 'cannot tell, since the measurement fits both',
  'not measured': 'not measured',
};

/** "met (84 % sure): pressure in the lead foot at impact 78 % ± 3 %". */
export function proofWords(outcome: ProofOutcome): string {
  const { state, probability } = outcome;
  if (state === 'unreadable') return 'it cannot be read';
  const numbers = proofNumbers(outcome);
  return `${state}${sureWords(state, probability)}${numbers === '' ? '' : `: ${numbers}`}`;
}

/** "pressure in the lead foot at impact 78 % ± 3 %, no face direction": the numbers without a verdict. */
export function proofNumbers({ values, missing }: ProofOutcome): string {
  const known = values.map(({ quantity, value }) => `${nameWithin(quantity)} ${valueWords(quantity, value)}`);
  return [...known, ...missing.map((quantity) => `no ${nameWithin(quantity)}`)].join(', ');
}

function sureWords(state: ProofOutcome['state'], probability: number | undefined): string {
  if (probability === undefined) return '';
  if (state === 'cannot tell') return ` (met with ${percent(probability)})`;
  const sure = state === 'met' ? probability : 1 - probability;
  return isUnsure(sure) ? ` (${percent(sure)} sure)` : '';
}

/** "inside: predicted 178 m ± 4 m, came 175 m ± 2 m; 3 m less, 0.7 standard uncertainties of the difference". */
export function predictionWords(outcome: PredictionOutcome): string {
  const { entry, state, miss, u } = outcome;
  const { quantity } = entry;
  const numbers = predictionNumbers(outcome);
  if (state === 'no interval') return `without ±, so nothing can be inside: ${numbers}`;
  const off =
    miss === undefined || u === undefined
      ? ''
      : `; ${differenceWords(quantity, miss, u)}, ${(Math.abs(miss) / u).toFixed(1)} standard uncertainties of the difference`;
  if (state === 'not tested') return `not tested, since not all changes were made: ${numbers}`;
  return `${state}: ${numbers}${off}`;
}

/** "predicted 178 m ± 4 m, came 175 m ± 2 m": the numbers without a verdict. */
export function predictionNumbers({ entry: { quantity }, predicted, after }: PredictionOutcome): string {
  const said = `predicted ${showValue(quantity, predicted.value, predicted.u)}`;
  return after === undefined ? said : `${said}, came ${valueWords(quantity, after)}`;
}

/** "3 m less": a difference has no direction word, for left of a left number may still be right. */
export function differenceWords(quantity: Quantity, miss: number, u?: number): string {
  const bare = showSize(quantity, miss, u);
  if (miss === 0) return 'no difference';
  const word = quantity.directions.find(
    ({ sign, bearing }) => bearing === undefined && sign === Math.sign(miss),
  )?.word;
  return word === undefined ? `${bare} ${miss < 0 ? 'less' : 'more'}` : `${bare} further ${word}`;
}

/** "175 m ± 2 m", with "computed" or "mean of 12 shots" where it is no entry. */
function valueWords(quantity: Quantity, { value, u, how, shots, isInDoubt }: MeasuredValue): string {
  const shown = showValue(quantity, value, u);
  const origin = how === 'computed' ? ' (computed)' : how === 'shots' ? ` (mean of ${shots ?? 0} shots)` : '';
  return `${shown}${origin}${isInDoubt ? ' (which does not fit the rest of its record)' : ''}`;
}
