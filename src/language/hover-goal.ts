// What a hover on a goal says of how it stands, now and after the plan, and of what it would need; computes nothing.
import { forecastOf } from '../analysis/plan.ts';
import type { Analysis } from '../analysis/result.ts';
import { unheldGoals } from '../analysis/unheld-goals.ts';
import { goalWords, needWords, unheldWords } from '../checks/forecast-words.ts';
import type { Goal } from '../record/document.ts';
import type { Span } from '../measure/measure.ts';
import { upperFirst } from '../measure/quote.ts';
import type { Remark } from './hover.ts';
import { escapeMarkdown } from './markdown.ts';
import { holds } from './places.ts';

/** The words of a goal that are no number: its shape and its contact. */
export function hoverOnGoal(analysis: Analysis, offset: number): Remark | undefined {
  const { document } = analysis;
  if (document.kind !== 'swing') return undefined;
  const words = document.goals.flatMap(({ shape, contact }) => [shape, contact]);
  const span = words.find((word) => word !== undefined && holds(word.span, offset))?.span;
  if (span === undefined) return undefined;
  const unheld = unheldGoals(analysis.subject, analysis.account).find((one) => one.shape.span === span);
  const lines = [
    ...standingLines(analysis, (place) => place === span),
    ...(unheld === undefined ? [] : [sentence(unheldWords(unheld))]),
  ];
  return lines.length === 0 ? undefined : { span, lines: ['**Goal**', ...lines] };
}

/** Of one number of a goal. */
export function goalStandingLines(analysis: Analysis, goal: Goal, id: string): readonly string[] {
  const own = [...goal.targets.values()].find(({ quantity }) => quantity.id === id)?.span;
  return own === undefined ? [] : standingLines(analysis, (place) => place === own);
}

function standingLines(
  { uri, document, subject, account }: Analysis,
  isMeant: (span: Span) => boolean,
): readonly string[] {
  if (document.kind !== 'swing') return [];
  const { goals = [] } = forecastOf(subject, account) ?? {};
  const planned = document.plan.length > 0 ? 'plan' : 'record';
  return goals
    .filter((one) => one.uri === uri && isMeant(one.now.wanted.span))
    .flatMap((one) => {
      const need = needWords(one, planned);
      return [
        sentence(goalWords(one)),
        ...(need === undefined ? [] : [escapeMarkdown(`Out of reach: ${need}.`)]),
      ];
    });
}

function sentence(words: string): string {
  return escapeMarkdown(`${upperFirst(words)}.`);
}
