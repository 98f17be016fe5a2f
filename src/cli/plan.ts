// The `plan` command: what the plan of one record leads to and how its goals stand, or a proposal, as text or JSON; writes where asked.
import { readFile, writeFile } from 'node:fs/promises';
import { URI } from 'vscode-uri';
import { notUnderstoodIn, type NotUnderstood } from '../analysis/not-understood.ts';
import { askedFor, forecastOf, proposalOf } from '../analysis/plan.ts';
import type { Forecast } from '../judgement/forecast.ts';
import {
  blockEdits,
  changeWords,
  foremostOf,
  goalWords,
  needWords,
  outlookWords,
  planText,
  predictedText,
  standingWords,
} from '../checks/forecast-words.ts';
import type { Analysis } from '../analysis/result.ts';
import { cautionsOf } from '../checks/plan-loads-injury.ts';
import type { TextEdit } from '../checks/check.ts';
import type { Outlook } from '../judgement/prediction.ts';
import type { Proposal } from '../judgement/proposal.ts';
import { differenceFromSI, fromSI } from '../measure/units.ts';
import { toPath } from '../disk/files.ts';
import { printable } from './formats/text.ts';
import { analyseRecord } from './record.ts';
import { tidy } from './shots.ts';

export interface PlanRequest {
  readonly format: 'text' | 'json';
  readonly what: 'stated' | 'proposed';
  readonly keep: 'write' | 'print';
}

/** 2 where the record cannot be read or nothing can be predicted, 1 where nothing that is known helps, else 0. */
export async function plan(path: string, request: PlanRequest, signal: AbortSignal): Promise<number> {
  const analysis = await analyseRecord(path, signal);
  if (analysis === undefined) return 2;
  const { subject, account, document } = analysis;
  const forecast = forecastOf(subject, account);
  const unread = notUnderstoodIn(analysis, forecast);
  if (document.kind !== 'swing' || forecast === undefined) {
    for (const line of unread.map(unreadWords)) process.stderr.write(`${printable(line)}\n`);
    process.stderr.write(`swingwright: \`${printable(path)}\` says too little to predict anything.\n`);
    return 2;
  }
  const proposal =
    request.what === 'proposed'
      ? proposalOf(subject, account, () => {
          signal.throwIfAborted();
        })
      : undefined;
  const isNothing = request.what === 'proposed' && proposal === undefined;
  process.stdout.write(
    request.format === 'json'
      ? asJson(analysis, forecast, proposal, unread)
      : asText(analysis, forecast, proposal, request, unread),
  );
  if (isNothing) return 1;
  if (request.keep === 'print') return 0;
  const coverage = subject.workspace?.document.coverage ?? 1;
  const further = askedFor(subject, forecast);
  const prediction = proposal?.prediction ?? forecast.whole;
  const blocks: [string, string][] = [['predicted', predictedText(prediction, further, coverage)]];
  if (proposal !== undefined) blocks.unshift(['plan', planText(proposal)]);
  return await write(analysis.uri, document.text, blockEdits(analysis.uri, document, blocks));
}

async function write(uri: string, text: string, edits: readonly TextEdit[]): Promise<number> {
  const made = [...edits]
    .sort((a, b) => b.span.start - a.span.start)
    .reduce((done, { span, text: put }) => done.slice(0, span.start) + put + done.slice(span.end), text);
  const path = toPath(uri);
  try {
    const file = URI.parse(uri).fsPath;
    const mark = (await readFile(file, 'utf8')).startsWith('\ufeff') ? '\ufeff' : '';
    await writeFile(file, mark + made);
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error);
    process.stderr.write(`swingwright: cannot write \`${printable(path)}\`: ${printable(reason)}.\n`);
    return 2;
  }
  process.stderr.write(`Written to ${printable(path)}.\n`);
  return 0;
}

function asText(
  { subject }: Analysis,
  forecast: Forecast,
  proposal: Proposal | undefined,
  { what }: PlanRequest,
  unread: readonly NotUnderstood[],
): string {
  const { changes, whole, goals } = forecast;
  const further = askedFor(subject, forecast);
  const effects = (outlooks: readonly Outlook[]): string[] =>
    outlooks.length === 0
      ? ['    nothing that the model or a belief knows of']
      : outlooks.map((one) => `    ${outlookWords(one)}`);
  const blocks: string[][] = [];
  if (unread.length > 0)
    blocks.push(['Not understood, and left out', ...unread.map((one) => `  ${unreadWords(one)}`)]);
  if (what === 'proposed') {
    blocks.push([
      'Proposed',
      ...(proposal === undefined
        ? ['  Nothing that the fault book or the model knows of helps.']
        : [
            ...proposal.changes.map((change) => `  ${changeWords(change)}`),
            ...effects(foremostOf(proposal.prediction, further)),
          ]),
    ]);
    if (proposal !== undefined)
      blocks.push([
        'Goals with it',
        ...proposal.standings.map(
          (one) => `  ${one.wanted.quantity.title.toLowerCase()}: ${standingWords(one)}`,
        ),
      ]);
  } else {
    for (const { made, prediction } of changes)
      blocks.push([`${made.quantity.id}`, ...effects(foremostOf(prediction, further))]);
    if (changes.length > 1) blocks.push(['All together', ...effects(foremostOf(whole, further))]);
    if (goals.length > 0)
      blocks.push([
        'Goals',
        ...goals.flatMap((goal) => {
          const need = needWords(goal, changes.length > 0 ? 'plan' : 'record');
          return [`  ${goalWords(goal)}`, ...(need === undefined ? [] : [`    out of reach: ${need}`])];
        }),
      ]);
  }
  const reasons =
    proposal?.changes.map(({ quantity, because }) => ({ id: quantity.id, because })) ??
    changes.map(({ made }) => ({ id: made.quantity.id, because: made.because }));
  const cautions = [
    ...new Set(reasons.flatMap((one) => cautionsOf(one, subject).map(({ message }) => message))),
  ];
  if (cautions.length > 0) blocks.push(['Caution', ...cautions.map((message) => `  ${message}`)]);
  if (blocks.length === 0) blocks.push(['No plan and no goals.']);
  return `${blocks.map((lines) => lines.map(printable).join('\n')).join('\n\n')}\n`;
}

/** "line 7, column 12: Found the key `by`; …". */
function unreadWords({ at, reason }: NotUnderstood): string {
  return `line ${at.line + 1}, column ${at.character + 1}: ${reason}`;
}

function asJson(
  { uri, subject }: Analysis,
  { changes, whole, goals }: Forecast,
  proposal: Proposal | undefined,
  unread: readonly NotUnderstood[],
): string {
  const cautions = (id: string, because: readonly string[]): string[] =>
    cautionsOf({ id, because }, subject).map(({ message }) => message);
  const json = {
    format: 1,
    file: toPath(uri),
    notUnderstood: unread.map(({ at, reason }) => ({
      line: at.line + 1,
      column: at.character + 1,
      reason,
    })),
    changes: changes.map(({ made, prediction }) => ({
      change: made.quantity.id,
      because: made.because,
      effects: [...prediction.outlooks.values()].map(outlookJson),
      cautions: cautions(made.quantity.id, made.because),
    })),
    together: [...whole.outlooks.values()].map(outlookJson),
    goals: goals.map(({ now, then, need }) => ({
      goal: now.wanted.key,
      quantity: now.wanted.quantity.id,
      chanceNow: now.chance ?? null,
      chanceThen: then.chance ?? null,
      clubSpeedNeeded: need?.speed === undefined ? null : tidy(need.speed),
      outOfReach: need !== undefined,
    })),
    proposal:
      proposal === undefined
        ? null
        : {
            chance: Number(proposal.chance.toFixed(4)),
            changes: proposal.changes.map(({ quantity, to, because, proof, why }) => ({
              change: quantity.id,
              to: tidy(fromSI(to, quantity.unit)),
              unit: quantity.unit,
              because,
              proof,
              why,
              cautions: cautions(quantity.id, because),
            })),
            effects: [...proposal.prediction.outlooks.values()].map(outlookJson),
          },
  };
  return `${JSON.stringify(json, null, 2)}\n`;
}

function outlookJson({ quantity: { id, unit }, origin, value, u, difference, uDifference }: Outlook) {
  return {
    id,
    unit,
    by: origin,
    value: value === null ? null : tidy(fromSI(value, unit)),
    u: u === null ? null : tidy(differenceFromSI(u, unit)),
    difference: difference === null ? null : tidy(differenceFromSI(difference, unit)),
    uDifference: uDifference === null ? null : tidy(differenceFromSI(uDifference, unit)),
  };
}
