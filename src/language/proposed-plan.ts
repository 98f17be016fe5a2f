// A proposed plan in words to pick from, and the edits that write what was picked into the record; searches nothing.
import { forecastOf, predictionOf } from '../analysis/plan.ts';
import { lineTableOf, rangeOf, type LineTable } from '../analysis/positions.ts';
import type { Analysis } from '../analysis/result.ts';
import {
  blockEdits,
  effectsInShort,
  goalInShort,
  planText,
  predictedText,
} from '../checks/forecast-words.ts';
import { cautionsOf } from '../checks/plan-loads-injury.ts';
import type { Candidate, Proposal } from '../judgement/proposal.ts';
import { showValue } from '../measure/show.ts';
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
    const { quantity, from, to, because, why, stage } = change;
    const alone = account === undefined ? undefined : predictionOf(subject, account, [change]).prediction;
    const cautions = cautionsOf({ id: quantity.id, because }, subject).map(({ message }) => message);
    const effects = alone === undefined ? '' : effectsInShort(alone, wanted);
    return {
      id: quantity.id,
      label: `${quantity.title}: ${showValue(quantity, from)} → ${showValue(quantity, to)}`,
      description: `${stages[stage] ?? ''}, because of ${because.join(', ')}`,
      detail: [sentence(why), ...(effects === '' ? [] : [`${sentence(effects)}`]), ...cautions].join(' '),
    };
  });
}

/** "start 30 % → 70 %; curve 20 % → 28 %". */
export function proposalInShort({ subject, account }: Analysis, { standings }: Proposal): string {
  const goals = forecastOf(subject, account)?.goals ?? [];
  return standings
    .flatMap((then) => {
      const goal = goals.find(
        ({ now }) =>
          now.wanted.span === then.wanted.span && now.wanted.quantity.id === then.wanted.quantity.id,
      );
      return goal === undefined ? [] : [goalInShort({ ...goal, then })];
    })
    .join('; ');
}

/** The plan with its reasons and proofs, and what it is predicted to lead to. An earlier plan gives way. */
export function planEdits(
  { uri, document, subject, account }: Analysis,
  changes: readonly Candidate[],
): readonly Edit[] {
  if (document.kind !== 'swing' || account === undefined || changes.length === 0) return [];
  const picked = predictionOf(subject, account, changes);
  const further = (forecastOf(subject, account)?.goals ?? []).map(({ now }) => now.wanted.quantity.id);
  const predicted = predictedText(picked.prediction, further, subject.workspace?.document.coverage ?? 1);
  const table = lineTableOf(document.text);
  return blockEdits(uri, document, [
    ['plan', planText(picked)],
    ['predicted', predicted],
  ]).map(({ span, text }) => ({ range: rangeOf(table, span), newText: text }));
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
  return `${words.charAt(0).toUpperCase()}${words.slice(1)}.`;
}
