// What the hover on a stated fault says of its believed effects: belief, physics and history in columns of their own.
import { traceClaims, type History } from '../analysis/history.ts';
import type { Lesson } from '../analysis/lessons.ts';
import type { Analysis } from '../analysis/result.ts';
import { nameWithin } from '../checks/agreement.ts';
import { answerOf, beliefOf, effectOf, occasionOf } from '../checks/claim-words.ts';
import type { Claim } from '../judgement/claims.ts';
import type { StatedVerdict } from '../judgement/judgement.ts';
import { escapeMarkdown } from './markdown.ts';

/** A hover has room for so many effects. */
const mostRows = 4;

interface Column {
  readonly head: string;
  readonly cells: readonly string[];
}

/**
 * A table in Markdown; without the column of history where nobody has looked for the student's other records. An editor's hover
 * is low: what all rows have in common stands once, above the table the occasion, below it an answer.
 */
export function claimLines(
  analysis: Analysis,
  one: StatedVerdict,
  lessons: readonly Lesson[] | undefined,
): readonly string[] {
  const claims: readonly (Claim & { readonly history?: History })[] =
    lessons === undefined ? (analysis.subject.judgement?.claims ?? []) : traceClaims(analysis, lessons);
  const rows = claims.filter(({ stated }) => stated === one).slice(0, mostRows);
  if (rows.length === 0) return [];
  const occasion = inCommon(rows.map(occasionOf));
  const columns: Column[] = [
    {
      head: 'Tends to change',
      cells: rows.map((claim) => (occasion === undefined ? effectOf(claim) : nameWithin(claim.quantity))),
    },
    { head: 'Belief', cells: rows.map((claim) => beliefOf(claim, claim.u ?? null)) },
    { head: 'Physics', cells: rows.map(({ quantity, physics }) => answerOf(quantity, physics)) },
    ...(lessons === undefined
      ? []
      : [{ head: 'History', cells: rows.map(({ quantity, history }) => answerOf(quantity, history!)) }]),
  ];
  const [effects, belief, ...answers] = columns as [Column, Column, ...Column[]];
  // Only what has no number: an amount that two rows share by chance belongs to its row.
  const said = answers.filter(({ cells }) => inCommon(cells)?.startsWith('no say: ') === true);
  return [
    ...(occasion === undefined ? [] : [`W${escapeMarkdown(occasion.slice(1))}:`, '']),
    ...tableOf([effects, belief, ...answers.filter((one) => !said.includes(one))]),
    ...said.flatMap(({ head, cells }) => ['', `${head} has ${escapeMarkdown(cells[0]!)}.`]),
  ];
}

/** What they all are, where there are several. */
function inCommon(words: readonly (string | undefined)[]): string | undefined {
  return words.length > 1 && words.every((one) => one === words[0]) ? words[0] : undefined;
}

function tableOf(columns: readonly Column[]): readonly string[] {
  const [first] = columns;
  return [
    row(columns.map(({ head }) => head)),
    row(columns.map(() => '---')),
    ...first!.cells.map((_, at) => row(columns.map(({ cells }) => escapeMarkdown(cells[at]!)))),
  ];
}

function row(cells: readonly string[]): string {
  return `| ${cells.join(' | ')} |`;
}
