// Says an audit in words: the columns of its table, each cell, and what stands out; computes nothing.
import { titleWithin } from '../checks/agreement.ts';
import { lowerFirst, upperFirst } from '../measure/quote.ts';
import { showValue } from '../measure/show.ts';
import type { Audit, AuditRow } from './audit.ts';
import type { Analysis } from './result.ts';

/** The columns of the table in their order, whoever shows it. */
export const auditColumns = {
  entry: 'Entry',
  value: 'Value',
  method: 'Method',
  origin: 'Uncertainty from',
  checked: 'Checked',
  residual: 'Residual',
  verdict: 'Verdict',
  twice: 'If twice as unsure',
  second: 'Second opinion',
  share: 'Share of the conclusions',
} as const;

export type AuditCells = Readonly<Record<keyof typeof auditColumns, string>>;

export function auditCells(row: AuditRow, { subject: { registry } }: Analysis): AuditCells {
  const { quantity, judged, second } = row;
  return {
    entry: entryWords(row, (id) => titleWithin(id, registry)),
    value: showValue(quantity, row.value, row.u),
    method: methodWords(row),
    origin: originWords[row.origin],
    checked: judged === undefined ? 'takes no part' : percent(judged.redundancy),
    residual: judged?.w === undefined || judged.w === null ? '' : signed(judged.w),
    verdict: judged === undefined ? '' : verdictWords[judged.verdict],
    twice: row.verdictAtTwice === undefined ? '' : verdictWords[row.verdictAtTwice],
    second:
      second === undefined
        ? ''
        : `${showValue(quantity, second.value, second.u)}, ${signed(second.apart)} u apart`,
    share: row.weight === 0 ? '' : percent(row.weight),
  };
}

export const verdictWords = { fits: 'fits', conflict: 'does not fit', unchecked: 'unchecked' } as const;

function entryWords({ quantity, reading }: AuditRow, titled: (id: string) => string): string {
  const first = upperFirst(titled(quantity.id));
  return reading === 0 ? first : `${first}, reading ${reading + 1}`;
}

function methodWords({ method, estimate, doubtful }: AuditRow): string {
  const words = [
    ...(method === undefined ? [] : [method]),
    ...(estimate ? ['an estimate'] : []),
    ...(doubtful ? ['doubtful'] : []),
  ];
  return words.length === 0 ? 'not said' : words.join(', ');
}

const originWords = { stated: 'stated', method: 'method', quantity: 'quantity' } as const;

/** What a reviewer should look at first, a sentence each. */
export function auditRemarks(
  { rows, leanedOn, concluded, fromGoals, hasUnreadGoals }: Audit,
  analysis: Analysis,
): readonly string[] {
  const name = (row: AuditRow): string => entryWords(row, (id) => titleWithin(id, analysis.subject.registry));
  const conclusions = concluded.map(({ title }) => lowerFirst(title)).join(', ');
  const why = fromGoals
    ? 'as the goals have it'
    : hasUnreadGoals
      ? 'since the goals name nothing for this club that could be read'
      : 'since there are no goals';
  const turned = rows.filter(
    ({ judged, verdictAtTwice }) =>
      judged?.verdict === 'conflict' && verdictAtTwice !== undefined && verdictAtTwice !== 'conflict',
  );
  const [heaviest] = [...rows].sort((a, b) => b.weight - a.weight);
  const guesses = rows.filter(({ isGuess }) => isGuess).length;
  const unchecked = rows.filter(({ judged }) => judged?.verdict === 'unchecked').length;
  return [
    concluded.length === 0
      ? 'The record leads to no conclusion whose uncertainty could be shared out.'
      : `The conclusions are ${conclusions}, ${why}.`,
    ...(heaviest !== undefined && heaviest.weight > 0
      ? [
          `Of the entries, ${lowerFirst(name(heaviest))} weighs most in their uncertainty: ${percent(heaviest.weight)}.`,
        ]
      : []),
    `${rows.length} readings: ${guesses} guessed, ${unchecked} that the others do not check.`,
    leanedOn.length === 0
      ? 'No conclusion leans on a guess that nobody checks.'
      : `Guesses that a conclusion leans on and that nobody checks: ${leanedOn.map(name).join(', ')}.`,
    ...(turned.length === 0
      ? []
      : [`Would fit if every uncertainty were twice as large: ${turned.map(name).join(', ')}.`]),
  ];
}

function percent(share: number): string {
  const number = Math.round(100 * share);
  return share > 0 && number === 0 ? 'under 1 %' : `${number} %`;
}

function signed(value: number): string {
  const number = value.toFixed(1);
  return value > 0 && Number(number) !== 0 ? `+${number}` : number === '-0.0' ? '0.0' : number;
}
