// Proposed changes in words, why there are none, and what was left out of the search; shared by editor and command line, searches nothing.
import type { GoalForecast } from '../judgement/forecast.ts';
import type { Standing } from '../judgement/goal-standing.ts';
import { enough, nearOf } from '../judgement/nearness.ts';
import type { ProposedChange } from '../judgement/proposal.ts';
import { showValue, showWindow } from '../measure/show.ts';
import type { Quantity } from '../registry/quantity.ts';
import { nameWithin } from './agreement.ts';
import type { Subject } from './subject.ts';
import { percent, placeWords } from './verdict-words.ts';

/** A number that somebody is asked for, without the zeros that say nothing: "42 cm". */
export function roundWords(quantity: Quantity, value: number): string {
  return showValue(quantity, value).replace(/\.0+(?=\D|$)/, '');
}

/** "stance width at address from 49 cm to 44 cm, because of trail-side-loaded: the fault book says …". */
export function changeWords(change: ProposedChange): string {
  const { quantity, from, to, because } = change;
  const start = from === undefined ? '' : ` from ${roundWords(quantity, from)}`;
  return `${nameWithin(quantity)}${start} to ${roundWords(quantity, to)}, because of ${because.join(', ')}: ${whyWords(change)}`;
}

/** Why it is proposed, by whose word, and for which goal. */
export function whyWords({ against, unstated, serves: { wanted, how } }: ProposedChange): string {
  const goal = nameWithin(wanted.quantity);
  const end =
    how === 'brings' ? `brings ${goal} nearer its window` : `keeps ${goal} inside its window with the others`;
  if (against === undefined) return `the model says that it ${end}`;
  const name = against.fault.title ?? against.fault.id.value;
  const chance = unstated?.probability === undefined ? '' : ` with ${percent(unstated.probability)}`;
  const shown =
    unstated === undefined
      ? ''
      : `, which the numbers show${placeWords(unstated.at)}${chance} and the record does not state`;
  return `the fault book says that it helps against "${name}"${shown}; it ${end}`;
}

/** Why there may be nothing to propose: of goals that are known and not met, nothing that is known helps. */
export function nothingFor(
  goals: readonly GoalForecast[],
): 'no goal' | 'too little known' | 'met' | 'no help' {
  if (goals.length === 0) return 'no goal';
  const known = goals.filter(({ now }) => now.value !== undefined);
  if (known.length === 0) return 'too little known';
  return known.every(({ now }) => (now.chance ?? 0) >= enough) ? 'met' : 'no help';
}

/**
 * Why nothing is proposed.
 *
 * @param unsure what could be changed, were it known well enough for anybody to tell
 */
export function nothingWords(goals: readonly GoalForecast[], unsure: readonly Quantity[]): string {
  const nothing = nothingFor(goals);
  if (nothing === 'no goal')
    return 'Nothing to propose: there is no goal; a plan is searched for `goals` of the record or of the student.';
  const known = goals.filter(({ now }) => now.value !== undefined);
  if (nothing === 'too little known')
    return 'Nothing to propose: the record says too little to tell how its goals stand.';
  if (nothing === 'met') {
    const count = known.length < goals.length ? 'every goal that can be told' : 'every goal';
    return `Nothing to propose: ${count} is more likely met than not with the swing as it is.`;
  }
  const reasons = known.flatMap(({ now }) => {
    const isMet = (now.chance ?? 0) >= enough;
    return !isMet && nearOf(now, now).stands ? [tooWideWords(now)] : [];
  });
  if (unsure.length > 0) {
    const names = unsure.map(nameWithin).join(', ');
    reasons.push(`What is known of ${names} is too unsure for anybody to tell that a change was made.`);
  }
  return ['Nothing that the fault book or the model knows of helps.', ...reasons].join(' ');
}

/** "Carry is known as 132 m ± 21 m only, and 126..138 m is wanted: measure it." */
function tooWideWords({ wanted: { quantity, min, max }, value, u }: Standing): string {
  const window = showWindow(quantity, min, max);
  return `${quantity.title} is known as ${showValue(quantity, value!, u)} only, and ${window} is wanted: measure it.`;
}

/** What a coach may look for in vain: changes that start from a number which nobody measured, and faults that nobody stated. */
export function leftOutWords(
  { judgement, derivation }: Subject,
  changes: readonly ProposedChange[],
): readonly string[] {
  const faults = (judgement?.stated ?? []).filter(({ verdict }) => verdict !== 'contradicted');
  const unmeasured = faults.flatMap(({ fault }) =>
    fault.changes.flatMap(({ quantity, by, byWords }) =>
      quantity === undefined || by === undefined || derivation?.values.has(quantity.id) === true
        ? []
        : [
            `${nameWithin(quantity)} (${byWords ?? 'by'}, against ${fault.id.value}) starts from a number that this record does not have`,
          ],
    ),
  );
  const contradicted = (judgement?.stated ?? []).flatMap(({ fault, verdict, probability }) =>
    verdict !== 'contradicted'
      ? []
      : [
          `${fault.id.value} is stated, and the numbers speak against it${probability === undefined ? '' : ` (${percent(probability)})`}`,
        ],
  );
  const unstated = (judgement?.unstated ?? []).flatMap(({ fault, at, probability }) =>
    changes.some(({ against }) => against?.fault === fault)
      ? []
      : [
          `${fault.id.value} is not stated, though the numbers show it${placeWords(at)}${probability === undefined ? '' : ` with ${percent(probability)}`}; none of its changes brings a goal nearer`,
        ],
  );
  return [...new Set([...unmeasured, ...contradicted, ...unstated])];
}

/** The lines of `plan:`. */
export function planText(changes: readonly ProposedChange[]): string {
  const items = changes.map(
    ({ quantity, to, because, proof }) =>
      `  - change: ${quantity.id}\n    to: ${roundWords(quantity, to)}\n    because: [${because.join(', ')}]\n    proof: ${proof}\n`,
  );
  return `plan:\n${items.join('')}`;
}
