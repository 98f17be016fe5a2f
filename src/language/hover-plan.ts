// The hover on a planned change and on the whole plan: what it leads to, each line by model or by belief, and the goals; computes nothing itself.
import { forecastOf } from '../analysis/plan.ts';
import type { Analysis } from '../analysis/result.ts';
import { foremostOf, goalInShort, keptWords, movedWords, spreadOf } from '../checks/forecast-words.ts';
import type { Forecast } from '../judgement/forecast.ts';
import type { Outlook, Prediction } from '../judgement/prediction.ts';
import { showValue } from '../measure/show.ts';
import type { Span } from '../measure/measure.ts';
import { lowerFirst, upperFirst } from '../measure/quote.ts';
import type { Remark } from './hover.ts';
import { titleOf } from './hover-entry.ts';
import { escapeMarkdown } from './markdown.ts';
import { holds } from './places.ts';

/** A hover has room for so many quantities. */
const mostRows = 8;

export function hoverOnPlan(analysis: Analysis, offset: number): Remark | undefined {
  const { document, subject, account, derivation } = analysis;
  if (document.kind !== 'swing' || document.plan.length === 0) return undefined;
  const key = document.outline.find(({ name }) => name === 'plan')?.nameSpan;
  const at = document.plan.find(({ change, to }) => isAt([change?.span, to?.span], offset));
  if (at === undefined && !isAt([key], offset)) return undefined;
  const forecast = forecastOf(subject, account);
  if (forecast === undefined) return undefined;
  if (at === undefined) return ofWhole(forecast, key!);
  const foreseen = forecast.changes.find(({ planned }) => planned === at);
  const span = [at.change?.span, at.to?.span].find((place) => place !== undefined && holds(place, offset));
  if (foreseen === undefined || span === undefined) return undefined;
  const { made, prediction } = foreseen;
  const now = derivation?.values.get(made.quantity.id);
  const before =
    now === undefined ? '' : `, in this record ${escapeMarkdown(showValue(made.quantity, now.value, now.u))}`;
  const to = escapeMarkdown(showValue(made.quantity, made.to, made.u));
  return {
    span,
    lines: [
      `${titleOf(made.quantity)}. Planned: ${to}${before}`,
      ...keptLine(prediction),
      ...goalLine(forecast),
      ...nothing(prediction, forecast),
    ],
    table: tableOf(prediction, forecast),
  };
}

function ofWhole(forecast: Forecast, span: Span): Remark | undefined {
  const { changes, whole } = forecast;
  if (changes.length === 0) return undefined;
  const count = changes.length === 1 ? 'its one change' : `its ${changes.length} changes together`;
  return {
    span,
    lines: [
      `**The plan**, ${count}, leads to:`,
      ...keptLine(whole),
      ...goalLine(forecast),
      ...nothing(whole, forecast),
    ],
    table: tableOf(whole, forecast),
  };
}

function goalLine({ goals, changes }: Forecast): readonly string[] {
  if (goals.length === 0) return [];
  const plan = changes.length === 1 ? 'the plan' : 'the whole plan';
  return [`Chance of each goal, now → with ${plan}: ${escapeMarkdown(goals.map(goalInShort).join('; '))}`];
}

function keptLine(prediction: Prediction): readonly string[] {
  return keptWords(prediction).map((words) => escapeMarkdown(`${upperFirst(words)}.`));
}

function nothing(prediction: Prediction, forecast: Forecast): readonly string[] {
  return rowsOf(prediction, forecast).length > 0
    ? []
    : ['Neither the model nor a belief of the fault book knows what it leads to.'];
}

function tableOf(prediction: Prediction, forecast: Forecast): readonly string[] {
  const rows = rowsOf(prediction, forecast);
  if (rows.length === 0) return [];
  const heads = ['Leads to', 'Now', 'Then', '95 %', ''];
  return [row(heads), row(heads.map(() => '---')), ...rows.map((cells) => row(cells.map(escapeMarkdown)))];
}

/** What a goal asks for is not left out for want of room. */
function rowsOf(prediction: Prediction, { goals }: Forecast): readonly (readonly string[])[] {
  const wanted = new Set(goals.map(({ now }) => now.wanted.quantity.id));
  const all = foremostOf(prediction, [...wanted]);
  const room = mostRows - all.filter(({ quantity }) => wanted.has(quantity.id)).length;
  const others = all.filter(({ quantity }) => !wanted.has(quantity.id)).slice(0, Math.max(0, room));
  return all
    .filter((one) => wanted.has(one.quantity.id) || others.includes(one))
    .slice(0, mostRows)
    .map(cellsOf);
}

function cellsOf({ quantity, origin, value, u, difference, uDifference }: Outlook): readonly string[] {
  const title = lowerFirst(quantity.title);
  const by = `by ${origin}`;
  if (value === null || u === null) {
    const moves = difference === null ? 'moves' : `moves ${movedWords(quantity, difference, uDifference)}`;
    return [title, '', moves, '', by];
  }
  // With the digits that its uncertainty supports; the spread has a column of its own.
  const shown = (number: number): string => showValue(quantity, number, u).split(' ± ')[0]!;
  const now = difference === null ? '' : shown(value - difference);
  return [title, now, shown(value), spreadOf(quantity, value, u), by];
}

function row(cells: readonly string[]): string {
  return `| ${cells.join(' | ')} |`;
}

function isAt(spans: readonly (Span | undefined)[], offset: number): boolean {
  return spans.some((span) => span !== undefined && holds(span, offset));
}
