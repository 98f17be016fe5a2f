// What became of a plan in words, the same in lenses, hovers, pages and on the command line; judges nothing.
import { nameWithin } from '../checks/agreement.ts';
import { percent } from '../checks/verdict-words.ts';
import type { ChangeOutcome } from '../judgement/changed.ts';
import type { MeasuredValue } from '../judgement/measured.ts';
import type { Outcome, PredictionOutcome, ProofOutcome } from '../judgement/outcome.ts';
import { showSize, showValue, showWindow } from '../measure/show.ts';
import type { Quantity } from '../registry/quantity.ts';
import type { Course } from './courses.ts';
import type { Lesson } from './lessons.ts';

/** "1 of 2 proofs met, 3 of 4 predictions inside, 1 not measured". */
export function outcomeInShort({ changes, proofs, predictions }: Outcome): string {
  const parts = [changesInShort(changes), proofsInShort(proofs), predictionsInShort(predictions)];
  const said = parts.filter((part) => part !== '');
  return said.length === 0 ? 'nothing that can be held against it' : said.join(', ');
}

function changesInShort(changes: readonly ChangeOutcome[]): string {
  const measured = changes.filter(({ after }) => after !== undefined);
  const made = measured.filter(({ state }) => state === 'made').length;
  if (measured.length === 0)
    return changes.length === 0 ? '' : `${counted(changes.length, 'change')} not measured`;
  return `${made} of ${counted(changes.length, 'change')} made`;
}

function proofsInShort(proofs: readonly ProofOutcome[]): string {
  if (proofs.length === 0) return '';
  const judged = proofs.filter(({ state }) => state === 'met' || state === 'not met');
  const met = judged.filter(({ state }) => state === 'met').length;
  const unreadable = proofs.filter(({ state }) => state === 'unreadable').length;
  const rest = proofs.length - judged.length - unreadable;
  const unsure = judged.filter(({ probability }) => isUnsure(probability)).length;
  const said = [
    ...(judged.length === 0 ? [] : [`${met} of ${counted(proofs.length, 'proof')} met`]),
    ...(unsure === 0 ? [] : [`${unsure} uncertain`]),
    ...(rest === 0
      ? []
      : [judged.length === 0 ? `${counted(rest, 'proof')} not measured` : `${rest} not measured`]),
    ...(unreadable === 0 ? [] : [`${counted(unreadable, 'proof')} not readable`]),
  ];
  return said.length < 2 ? said.join('') : `${said[0]!} (${said.slice(1).join(', ')})`;
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
export function isUnsure(probability: number | undefined): boolean {
  return probability !== undefined && probability > 0.05 && probability < 0.95;
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

/** "2026-06-02". */
export function dayOf({ date }: Lesson): string {
  return date ?? 'without a date';
}

/** "made: 41.2 cm ± 0.5 cm, asked for 41 cm". */
export function changeWords({ quantity, state, target, before, after, share }: ChangeOutcome): string {
  const asked =
    target.from === target.to
      ? showValue(quantity, target.from)
      : showWindow(quantity, target.from, target.to);
  if (after === undefined) return `not measured, asked for ${asked}`;
  const way = before === undefined ? '' : `${showValue(quantity, before.value, before.u)} before, `;
  const numbers = `${way}${valueWords(quantity, after)} now, asked for ${asked}`;
  const part = state === 'in part' && share !== undefined ? ` (${percent(share)} of the way)` : '';
  const unknown = state === 'not made' && before === undefined ? '; nobody wrote where it was before' : '';
  return `${changeStates[state]}${part}: ${numbers}${unknown}`;
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
export function proofWords({ state, probability, values, missing }: ProofOutcome): string {
  if (state === 'unreadable') return 'it cannot be read';
  const known = values.map(({ quantity, value }) => `${nameWithin(quantity)} ${valueWords(quantity, value)}`);
  const numbers = [...known, ...missing.map((quantity) => `no ${nameWithin(quantity)}`)].join(', ');
  const sure = probability === undefined || state === 'met' ? probability : 1 - probability;
  const chance = sure === undefined || !isUnsure(sure) ? '' : ` (${percent(sure)} sure)`;
  return `${state}${chance}${numbers === '' ? '' : `: ${numbers}`}`;
}

/** "inside: predicted 178 m ± 4 m, came 175 m ± 2 m; 3 m less, 0.7 standard uncertainties of the difference". */
export function predictionWords({ entry, state, predicted, after, miss, u }: PredictionOutcome): string {
  const { quantity } = entry;
  const said = `predicted ${showValue(quantity, predicted.value, predicted.u)}`;
  const came = after === undefined ? '' : `, came ${valueWords(quantity, after)}`;
  if (state === 'no interval') return `without ±, so nothing can be inside: ${said}${came}`;
  const off =
    miss === undefined || u === undefined
      ? ''
      : `; ${differenceWords(quantity, miss, u)}, ${(Math.abs(miss) / u).toFixed(1)} standard uncertainties of the difference`;
  if (state === 'not tested') return `not tested, since not all changes were made: ${said}${came}`;
  return `${state}: ${said}${came}${off}`;
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

export function counted(count: number, noun: string): string {
  return `${count} ${noun}${count === 1 ? '' : 's'}`;
}
