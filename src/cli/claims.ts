// The `claims` command: what the stated faults of one record are believed to do, beside physics and the student's other records.
import { jsonText } from './formats/json-text.ts';
import pc from 'picocolors';
import { faultCautions } from '../analysis/cautions.ts';
import { faultsNotUnderstoodIn, type NotUnderstood } from '../analysis/not-understood.ts';
import { traceClaims, type TracedClaim } from '../analysis/history.ts';
import { findLessons } from '../analysis/lessons.ts';
import type { Analysis } from '../analysis/result.ts';
import { answerOf, beliefOf, effectOf } from '../checks/claim-words.ts';
import { placeWords } from '../checks/verdict-words.ts';
import type { Said } from '../judgement/claims.ts';
import { differenceFromSI } from '../measure/units.ts';
import type { Quantity } from '../registry/quantity.ts';
import { toPath } from '../disk/files.ts';
import { printable } from './formats/text.ts';
import { practiceAround } from './practice.ts';
import { analyseRecord } from './record.ts';
import { tidy } from './shots.ts';
import { unreadBlock, unreadWords } from './unread-words.ts';

/** Prints the claims of the record at `path`; 2 where it cannot be read, is no record or has no fault book. */
export async function claims(path: string, format: 'text' | 'json', signal: AbortSignal): Promise<number> {
  const analysis = await analyseRecord(path, signal);
  if (analysis === undefined) return 2;
  const unread = faultsNotUnderstoodIn(analysis);
  if (analysis.subject.judgement === undefined) {
    for (const line of unread.map(unreadWords)) process.stderr.write(`${printable(line)}\n`);
    const isNamed = analysis.document.outline.some(({ name }) => name === 'faults_from');
    const found = isNamed ? 'has no fault book that can be read' : 'has no fault book';
    process.stderr.write(`swingwright: \`${printable(path)}\` ${found}; expected one at \`faults_from\`.\n`);
    return 2;
  }
  const lessons = await findLessons(analysis, practiceAround(signal));
  const traced = traceClaims(analysis, lessons);
  process.stdout.write(
    format === 'json' ? claimsJson(analysis, traced, unread) : claimsText(analysis, traced, unread),
  );
  return 0;
}

function claimsJson(
  analysis: Analysis,
  traced: readonly TracedClaim[],
  unread: readonly NotUnderstood[],
): string {
  const json = {
    format: 1,
    file: toPath(analysis.uri),
    notUnderstood: unread.map(({ at, reason }) => ({ line: at.line + 1, column: at.character + 1, reason })),
    claims: traced.map(claimJson),
    cautions: faultCautions(analysis),
  };
  return jsonText(json);
}

function claimJson(claim: TracedClaim) {
  const { fault, uri, stated, quantity, sign, cause, toward, over, overIs, amount, u, physics, history } =
    claim;
  return {
    fault: fault.id.value,
    book: toPath(uri),
    at: stated.at ?? null,
    effect: quantity.id,
    for:
      cause === undefined
        ? null
        : { cause: cause.id, difference: inUnit(cause, toward * over), unit: cause.unit, is: overIs },
    belief: {
      sign,
      difference: amount === undefined ? null : inUnit(quantity, amount),
      u: u === undefined ? null : inUnit(quantity, u),
      unit: quantity.unit,
    },
    physics: saidJson(quantity, physics),
    history: { ...saidJson(quantity, history), records: history.records },
  };
}

function saidJson(quantity: Quantity, { answer, probability, amount, u, size, reason }: Said) {
  return {
    answer,
    probability: probability === undefined ? null : Number(probability.toFixed(4)),
    difference: amount === undefined ? null : inUnit(quantity, amount),
    u: u === undefined ? null : inUnit(quantity, u),
    unit: quantity.unit,
    size: size ?? null,
    reason: reason ?? null,
  };
}

function inUnit({ unit }: Quantity, difference: number): number {
  return tidy(differenceFromSI(difference, unit));
}

function claimsText(
  analysis: Analysis,
  traced: readonly TracedClaim[],
  unread: readonly NotUnderstood[],
): string {
  const leftOut = unread.length === 0 ? [] : [...unreadBlock(unread).map(printable), ''];
  if (traced.length === 0)
    return [...leftOut, 'No stated fault is believed to change anything.', ''].join('\n');
  const rows = traced.map((claim) => [
    printable(`${claim.fault.id.value}${placeWords(claim.stated.at)}`),
    printable(effectOf(claim)),
    beliefOf(claim, claim.u ?? null),
    answerOf(claim.quantity, claim.physics),
    answerOf(claim.quantity, claim.history),
  ]);
  const heads = ['fault', 'effect', 'belief', 'physics', 'history'];
  const widths = heads.map((head, at) =>
    Math.max(...[heads, ...rows].map((row) => (row[at] ?? head).length)),
  );
  const line = (row: readonly string[]): string =>
    row
      .map((cell, at) => cell.padEnd(widths[at]!))
      .join('  ')
      .trimEnd();
  const cautions = faultCautions(analysis);
  const told =
    cautions.length === 0 ? [] : ['', 'Caution', ...cautions.map((words) => printable(`  ${words}`))];
  return [...leftOut, pc.bold(line(heads)), ...rows.map(line), ...told, ''].join('\n');
}
