// The `claims` command: what the stated faults of one record are believed to do, beside physics and the student's other records.
import { jsonText } from './formats/json-text.ts';
import pc from 'picocolors';
import { createCache } from '../analysis/cache.ts';
import { faultCautions } from '../analysis/cautions.ts';
import { traceClaims, type TracedClaim } from '../analysis/history.ts';
import { findLessons } from '../analysis/lessons.ts';
import type { Analysis, FileState } from '../analysis/result.ts';
import { answerOf, beliefOf, effectOf } from '../checks/claim-words.ts';
import { placeWords } from '../checks/verdict-words.ts';
import type { Said } from '../judgement/claims.ts';
import { differenceFromSI } from '../measure/units.ts';
import type { Quantity } from '../registry/quantity.ts';
import { listFolder, loadFile, toPath } from '../disk/files.ts';
import { printable } from './formats/text.ts';
import { analyseRecord } from './record.ts';
import { tidy } from './shots.ts';

/** Prints the claims of the record at `path`; 2 where it cannot be read, is no record or has no fault book. */
export async function claims(path: string, format: 'text' | 'json', signal: AbortSignal): Promise<number> {
  const analysis = await analyseRecord(path, signal);
  if (analysis === undefined) return 2;
  if (analysis.subject.judgement === undefined) {
    process.stderr.write(
      `swingwright: \`${printable(path)}\` has no fault book; expected one at \`faults_from\`.\n`,
    );
    return 2;
  }
  const lessons = await findLessons(analysis, {
    files: new Map<string, FileState>(),
    load: loadFile,
    list: listFolder,
    signal,
    cache: createCache(),
  });
  const traced = traceClaims(analysis, lessons);
  process.stdout.write(format === 'json' ? claimsJson(analysis, traced) : claimsText(analysis, traced));
  return 0;
}

function claimsJson(analysis: Analysis, traced: readonly TracedClaim[]): string {
  const json = {
    format: 1,
    file: toPath(analysis.uri),
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

function claimsText(analysis: Analysis, traced: readonly TracedClaim[]): string {
  if (traced.length === 0) return 'No stated fault is believed to change anything.\n';
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
  return [pc.bold(line(heads)), ...rows.map(line), ...told, ''].join('\n');
}
