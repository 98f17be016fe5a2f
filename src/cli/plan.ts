// The `plan` command: what the plan of one record leads to and how its goals stand, or a proposal, as text or JSON; writes where asked.
import { jsonText } from './formats/json-text.ts';
import { readFile, writeFile } from 'node:fs/promises';
import { URI } from 'vscode-uri';
import { notUnderstoodIn, type NotUnderstood } from '../analysis/not-understood.ts';
import { unheldGoals } from '../analysis/unheld-goals.ts';
import {
  askedFor,
  forecastOf,
  goalsWith,
  proposalOf,
  tooUnsureToChange,
  type Proposal,
} from '../analysis/plan.ts';
import type { Unseen } from '../judgement/face-need.ts';
import type { Forecast, GoalForecast } from '../judgement/forecast.ts';
import {
  foremostOf,
  goalWords,
  keptWords,
  needWords,
  outlookWords,
  unheldWords,
} from '../checks/forecast-words.ts';
import { edit } from '../checks/block-edits.ts';
import { planEdits } from '../checks/plan-edits.ts';
import { predictedEdits } from '../checks/predicted-edits.ts';
import { changeWords, leftOutWords, nothingFor, nothingWords, whyWords } from '../checks/proposal-words.ts';
import type { Subject } from '../checks/subject.ts';
import type { Analysis } from '../analysis/result.ts';
import { cautionsOf } from '../checks/plan-loads-injury.ts';
import type { TextEdit } from '../checks/check.ts';
import type { Outlook, Prediction } from '../judgement/prediction.ts';
import type { SwingRecord } from '../record/document.ts';
import { differenceFromSI, fromSI } from '../measure/units.ts';
import { toPath } from '../disk/files.ts';
import { printable } from './formats/text.ts';
import { analyseRecord } from './record.ts';
import { tidy } from './shots.ts';
import { unreadBlock, unreadWords } from './unread-words.ts';

export interface PlanRequest {
  readonly format: 'text' | 'json';
  readonly what: 'stated' | 'proposed';
  readonly keep: 'write' | 'print';
  /** What becomes of a plan that stands there where a proposal is written. */
  readonly earlier: 'keep' | 'replace';
}

/** 2 where the record cannot be read or says too little, 1 where there is no goal or nothing that is known helps, else 0. */
export async function plan(path: string, request: PlanRequest, signal: AbortSignal): Promise<number> {
  const analysis = await analyseRecord(path, signal);
  if (analysis === undefined) return 2;
  const { subject, account, document } = analysis;
  if (document.outline.length === 0) {
    process.stderr.write(
      `swingwright: nothing in \`${printable(path)}\` can be read; expected a record that begins with \`swing: 1\`.\n`,
    );
    return 2;
  }
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
  const isInTheWay = request.keep === 'write' && request.earlier === 'keep' && document.plan.length > 0;
  process.stdout.write(
    request.format === 'json'
      ? asJson(analysis, forecast, proposal, unread)
      : asText(analysis, forecast, proposal, request, unread),
  );
  if (request.what === 'proposed' && proposal === undefined) return codeOfNothing[nothingFor(forecast.goals)];
  if (request.keep === 'print') return 0;
  if (proposal !== undefined && isInTheWay) {
    const count = `${document.plan.length} change${document.plan.length === 1 ? '' : 's'}`;
    process.stderr.write(
      `swingwright: \`${printable(path)}\` has a plan of ${count} already, and nothing was written; \`--replace\` puts the proposal in its place.\n`,
    );
    return 2;
  }
  const edits = editsOf(analysis, document, forecast, proposal);
  if (proposal !== undefined && edits.length === 0) {
    process.stderr.write(
      `swingwright: \`${printable(path)}\` has no place where a plan would read back as meant, and nothing was written.\n`,
    );
    return 2;
  }
  return await write(analysis.uri, document.text, edits);
}

/** That every goal is met already is good news. */
const codeOfNothing = { met: 0, 'no goal': 1, 'no help': 1, 'too little known': 2 } as const;

function editsOf(
  { subject }: Analysis,
  document: SwingRecord,
  forecast: Forecast,
  proposal: Proposal | undefined,
): readonly TextEdit[] {
  const coverage = subject.workspace?.document.coverage ?? 1;
  if (proposal === undefined)
    return predictedEdits(subject, document, {
      prediction: forecast.whole,
      further: askedFor(subject, forecast),
      coverage,
    });
  const { changes, prediction } = proposal;
  return planEdits(subject, document, changes, {
    prediction,
    further: furtherOf(subject, forecast, proposal),
    coverage,
  });
}

function furtherOf(subject: Subject, forecast: Forecast, proposal: Proposal | undefined): readonly string[] {
  return askedFor(
    subject,
    forecast,
    proposal?.changes.map(({ proof }) => proof),
  );
}

async function write(uri: string, text: string, edits: readonly TextEdit[]): Promise<number> {
  const made = edit(text, edits);
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
  { subject, account }: Analysis,
  forecast: Forecast,
  proposal: Proposal | undefined,
  { what }: PlanRequest,
  unread: readonly NotUnderstood[],
): string {
  const { changes, whole, goals } = forecast;
  const unheld = unheldGoals(subject, account).map((goal) => `  ${unheldWords(goal)}`);
  const further = furtherOf(subject, forecast, proposal);
  const effects = (prediction: Prediction): string[] => {
    const lines = [...keptWords(prediction), ...foremostOf(prediction, further).map(outlookWords)];
    return lines.length === 0
      ? ['    nothing that the model or a belief knows of']
      : lines.map((line) => `    ${line}`);
  };
  const blocks: string[][] = [];
  if (unread.length > 0) blocks.push(unreadBlock(unread));
  if (what === 'proposed') {
    blocks.push([
      'Proposed',
      ...(proposal === undefined
        ? [`  ${nothingWords(goals, tooUnsureToChange(subject, account))}`]
        : [...proposal.changes.map((change) => `  ${changeWords(change)}`), ...effects(proposal.prediction)]),
    ]);
    if (proposal !== undefined)
      blocks.push([
        'Goals with it',
        ...goalsWith(proposal, forecast).flatMap((goal) => goalLines(goal, 'plan')),
        ...unheld,
      ]);
    else if (goals.length + unheld.length > 0)
      blocks.push(['Goals', ...goals.flatMap((goal) => goalLines(goal, 'record')), ...unheld]);
    const leftOut = goals.length === 0 ? [] : leftOutWords(subject, proposal?.changes ?? []);
    if (leftOut.length > 0) blocks.push(['Left out', ...leftOut.map((line) => `  ${line}`)]);
  } else {
    for (const { made, prediction } of changes) blocks.push([made.quantity.id, ...effects(prediction)]);
    if (changes.length > 1) blocks.push(['All together', ...effects(whole)]);
    if (goals.length + unheld.length > 0)
      blocks.push([
        'Goals',
        ...goals.flatMap((goal) => goalLines(goal, changes.length > 0 ? 'plan' : 'record')),
        ...unheld,
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

function goalLines(goal: GoalForecast, planned: 'plan' | 'record'): readonly string[] {
  const need = needWords(goal, planned);
  return [`  ${goalWords(goal)}`, ...(need === undefined ? [] : [`    out of reach: ${need}`])];
}

function asJson(
  { uri, subject, account }: Analysis,
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
    kept: whole.kept.map(outlookJson),
    goals: goals.map(({ now, then, need }) => ({
      goal: now.wanted.key,
      quantity: now.wanted.quantity.id,
      chanceNow: now.chance ?? null,
      chanceThen: then.chance ?? null,
      clubSpeedNeeded: need?.kind === 'speed' && need.speed !== undefined ? tidy(need.speed) : null,
      faceNeeded: need?.kind === 'face' && need.unseen !== undefined ? unseenJson(need.unseen) : null,
      outOfReach: need !== undefined,
    })),
    unheldGoals: unheldGoals(subject, account).map(({ shape, reason }) => ({ shape: shape.value, reason })),
    proposal:
      proposal === undefined
        ? null
        : {
            chance: Number(proposal.chance.toFixed(4)),
            changes: proposal.changes.map((change) => {
              const { quantity, to, because, proof, unstated } = change;
              return {
                change: quantity.id,
                to: tidy(fromSI(to, quantity.unit)),
                unit: quantity.unit,
                because,
                proof,
                why: whyWords(change),
                stated: unstated === undefined,
                cautions: cautions(quantity.id, because),
              };
            }),
            kept: proposal.prediction.kept.map(({ quantity }) => quantity.id),
            effects: [...proposal.prediction.outlooks.values()].map(outlookJson),
          },
  };
  return jsonText(json);
}

function unseenJson({ quantity: { id, unit }, needed, seen }: Unseen) {
  const shown = ({ min, max }: { min: number; max: number }) => ({
    min: tidy(fromSI(min, unit)),
    max: tidy(fromSI(max, unit)),
  });
  return { id, unit, ...shown(needed), seen: shown(seen) };
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
