// What the hover on a stated fault says of its believed effects: belief, physics and history in columns of their own.
import { traceClaims, type History } from '../analysis/history.ts';
import type { Lesson } from '../analysis/lessons.ts';
import type { Analysis } from '../analysis/result.ts';
import { answerOf, beliefOf, effectOf } from '../checks/claim-words.ts';
import type { Claim } from '../judgement/claims.ts';
import type { StatedVerdict } from '../judgement/judgement.ts';
import { escapeMarkdown } from './markdown.ts';

/** A hover has room for so many effects. */
const mostRows = 4;

/** A table in Markdown; without the column of history where nobody has looked for the student's other records. */
export function claimLines(
  analysis: Analysis,
  one: StatedVerdict,
  lessons: readonly Lesson[] | undefined,
): readonly string[] {
  const claims: readonly (Claim & { readonly history?: History })[] =
    lessons === undefined ? (analysis.subject.judgement?.claims ?? []) : traceClaims(analysis, lessons);
  const rows = claims.filter(({ stated }) => stated === one).slice(0, mostRows);
  if (rows.length === 0) return [];
  const heads = ['Tends to change', 'Belief', 'Physics', ...(lessons === undefined ? [] : ['History'])];
  const cells = rows.map((claim) => [
    effectOf(claim),
    beliefOf(claim, claim.u ?? null),
    answerOf(claim.quantity, claim.physics),
    ...(claim.history === undefined ? [] : [answerOf(claim.quantity, claim.history)]),
  ]);
  return [row(heads), row(heads.map(() => '---')), ...cells.map((texts) => row(texts.map(escapeMarkdown)))];
}

function row(cells: readonly string[]): string {
  return `| ${cells.join(' | ')} |`;
}
