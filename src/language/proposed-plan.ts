// A proposed plan in words to pick from, and the edits that write what was picked into the record; searches nothing.
import {
  askedFor,
  forecastOf,
  goalsWith,
  predictionOf,
  tooUnsureToChange,
  type Proposal,
} from '../analysis/plan.ts';
import { lineTableOf, rangeOf, type LineTable } from '../analysis/positions.ts';
import type { Analysis } from '../analysis/result.ts';
import { effectsInShort, goalInShort, keptWords } from '../checks/forecast-words.ts';
import { planEdits } from '../checks/plan-edits.ts';
import { cautionsOf } from '../checks/plan-loads-injury.ts';
import { nameWithin } from '../checks/agreement.ts';
import { nothingWords, roundWords, whyWords } from '../checks/proposal-words.ts';
import { upperFirst } from '../measure/quote.ts';
import { touches } from './places.ts';
import type { Edit, TextRange } from './shapes.ts';

export interface ProposedChange {
  /** The id of the quantity. */
  readonly id: string;
  /** What it does: "Attack angle: 3.0 deg down → 1.0 deg down". */
  readonly label: string;
  /** When in the swing, and the reasons. */
  readonly description: string;
  /** Why, and what it leads to. */
  readonly detail: string;
}

const stages = ['setup', 'backswing', 'downswing'];

/** One for each change, in the order of the swing. */
export function proposedChanges(analysis: Analysis, proposal: Proposal): readonly ProposedChange[] {
  const { subject, account } = analysis;
  const wanted = proposal.standings.map((one) => one.wanted.quantity.id);
  return proposal.changes.map((change) => {
    const { quantity, from, to, because, stage } = change;
    const alone = account === undefined ? undefined : predictionOf(subject, account, [change]);
    const cautions = cautionsOf({ id: quantity.id, because }, subject).map(({ message }) => message);
    const effects = alone === undefined ? '' : effectsInShort(alone, wanted);
    return {
      id: quantity.id,
      label: `${upperFirst(nameWithin(quantity))}: ${from === undefined ? '' : `${roundWords(quantity, from)} `}→ ${roundWords(quantity, to)}`,
      description: `${stages[stage] ?? ''}, because of ${because.join(', ')}`,
      // A row is cut at its end: what can hurt comes first.
      detail: [
        ...cautions,
        ...(effects === '' ? [] : [sentence(effects)]),
        ...(alone === undefined ? [] : keptWords(alone).map(sentence)),
        sentence(whyWords(change)),
      ].join(' '),
    };
  });
}

/** "start 30 % → 70 %; curve 20 % → 28 %". */
export function proposalInShort({ subject, account }: Analysis, proposal: Proposal): string {
  const forecast = forecastOf(subject, account);
  return forecast === undefined ? '' : goalsWith(proposal, forecast).map(goalInShort).join('; ');
}

/** Why nothing is proposed. */
export function whyNothing({ subject, account }: Analysis): string {
  const forecast = forecastOf(subject, account);
  return forecast === undefined
    ? 'Nothing to propose: the record says too little to predict anything.'
    : nothingWords(forecast.goals, tooUnsureToChange(subject, account));
}

/** How many changes the record plans already. */
export function plannedIn({ document }: Analysis): number {
  return document.kind === 'swing' ? document.plan.length : 0;
}

/** The plan with its reasons and proofs, and what it is predicted to lead to. An earlier plan gives way. */
export function proposedPlanEdits(
  { document, subject, account }: Analysis,
  changes: Proposal['changes'],
): readonly Edit[] {
  const forecast = forecastOf(subject, account);
  if (document.kind !== 'swing' || account === undefined || forecast === undefined) return [];
  if (changes.length === 0) return [];
  const table = lineTableOf(document.text);
  return planEdits(subject, document, changes, {
    prediction: predictionOf(subject, account, changes),
    further: askedFor(
      subject,
      forecast,
      changes.map(({ proof }) => proof),
    ),
    coverage: subject.workspace?.document.coverage ?? 1,
  }).map(({ span, text }) => ({ range: rangeOf(table, span), newText: text }));
}

/** On the keys `goals` and `plan`. */
export function isAtPlan({ document }: Analysis, range: TextRange): boolean {
  if (document.kind !== 'swing') return false;
  const table: LineTable = lineTableOf(document.text);
  return document.outline.some(
    ({ name, nameSpan }) => (name === 'goals' || name === 'plan') && touches(rangeOf(table, nameSpan), range),
  );
}

function sentence(words: string): string {
  return `${upperFirst(words)}.`;
}
