// A comparison for people at a terminal: blocks of aligned rows; compares nothing.
import pc from 'picocolors';
import { proofText } from '../../checks/proof-words.ts';
import {
  aspectWords,
  changeWords,
  faultStates,
  faultWords,
  figureWords,
  goalName,
  whatGoalsGoBy,
  heldTitle,
  judgedWords,
  nameOf,
  outsideWords,
  shotsWords,
  sizeInShort,
  standingWords,
  summaryOf,
  templateSummary,
  windowWords,
} from '../../analysis/comparison-words.ts';
import type { Comparison, QuantityChange, TemplateComparison } from '../../analysis/comparison.ts';
import { changeWords as madeWords, predictionWords, proofWords } from '../../analysis/outcome-words.ts';
import { nameWithin } from '../../checks/agreement.ts';
import { strictnessOf } from '../../judgement/template.ts';
import type { ComparedSide } from '../../draw/sides.tsx';
import { printable } from './text.ts';

/** What "larger" says in a row. */
const larger = '(larger: by more than measuring it twice explains, k = 1.96)';

export function comparisonText(first: ComparedSide, second: ComparedSide, comparison: Comparison): string {
  const { words, entries, computed, findings, faults, misses, goals, plan, predicted, shots, held } =
    comparison;
  const large = computed.filter(({ difference }) => difference.size === 'larger');
  const left = computed.length - large.length;
  const blocks = [
    [sideLine('A', first), sideLine('B', second)].join('\n'),
    summaryOf(comparison).join('\n'),
    block(
      'Head',
      words.map(({ of, before, after }) => [of, `${before ?? '–'} → ${after ?? '–'}`]),
    ),
    block(`Entries ${larger}`, entries.map(numberRow)),
    // Said once, over whichever comes first.
    block(entries.length === 0 ? `Computed ${larger}` : 'Computed', [
      ...large.map(numberRow),
      ...(left === 0
        ? []
        : [[`${left} more moved no further than measuring twice explains, or stand in one record only`]]),
    ]),
    block(
      'Shots',
      shots.map(({ quantity, before, after, difference }) => [
        nameWithin(quantity),
        `${shotsWords(quantity, before)} → ${shotsWords(quantity, after)}`,
        changeWords(quantity, difference),
        sizeInShort(difference),
      ]),
    ),
    block('Faults and misses', [
      ...faults.map((fault) => [
        faultWords(fault),
        faultStates[fault.state],
        `the numbers say ${judgedWords(fault.before)} → ${judgedWords(fault.after)}`,
      ]),
      ...misses.map(({ miss, state }) => [miss, faultStates[state]]),
    ]),
    block(
      'Findings',
      findings.map(({ state, finding: { code, severity, message } }) => [state, severity, code, message]),
    ),
    block(
      'Goals',
      goals.map((goal) => [
        goalName(goal),
        `${standingWords(goal.before)} → ${standingWords(goal.after)}`,
        goal.state === 'same' ? '' : goal.state,
      ]),
    ),
    goals.length === 0 ? '' : whatGoalsGoBy,
    held === undefined
      ? ''
      : block(heldTitle(held), [
          ...held.outcome.changes.map((one) => ['Change', one.quantity.id, madeWords(one)]),
          ...held.outcome.proofs.map((one) => ['Proof', proofText(one.asks), proofWords(one)]),
          ...held.outcome.predictions.map((one) => ['Prediction', one.entry.id, predictionWords(one)]),
        ]),
    block(
      'Plans',
      plan.map(({ change, state, before, after }) => [state, change, `${before ?? '–'} → ${after ?? '–'}`]),
    ),
    block('Predictions that differ', predicted.map(numberRow)),
  ];
  return `${blocks.filter((text) => text !== '').join('\n\n')}\n`;
}

export function templateText(record: ComparedSide, template: string, comparison: TemplateComparison): string {
  const blocks = [
    [sideLine('A', record), sideLine('B', { name: template, club: comparison.title })].join('\n'),
    templateSummary(comparison).join('\n'),
    block(
      'Windows',
      comparison.rows.map((row) => [
        nameWithin(row.window.quantity),
        `${windowWords(row)}, ${strictnessOf(row.window)}`,
        figureWords(row.window.quantity, row.figure),
        outsideWords(row),
      ]),
    ),
  ];
  return `${blocks.filter((text) => text !== '').join('\n\n')}\n`;
}

function sideLine(letter: string, { name, student, date, club }: ComparedSide): string {
  const head = [date, club, student].filter((word) => word !== undefined).join(', ');
  return printable(`${letter}  ${name}${head === '' ? '' : `  (${head})`}`);
}

function numberRow(change: QuantityChange): readonly string[] {
  const { quantity, state, before, after, difference } = change;
  const size = sizeInShort(difference);
  const also = [
    ...(state === 'changed' ? [] : [state === 'new' ? 'new entry' : 'entry gone']),
    ...(aspectWords(change) === '' ? [] : [`also ${aspectWords(change)}`]),
  ];
  return [
    nameOf(change),
    `${figureWords(quantity, before)} → ${figureWords(quantity, after)}`,
    changeWords(quantity, difference),
    [size, ...also].filter((one) => one !== '').join('; '),
  ];
}

/** Cells stand below one another; what the last of a row says may be as long as it likes. */
function block(title: string, rows: readonly (readonly string[])[]): string {
  if (rows.length === 0) return '';
  const safe = rows.map((row) => row.map(printable));
  const wide = (column: number): number =>
    Math.max(0, ...safe.map((row) => (column < row.length - 1 ? row[column]!.length : 0)));
  const lines = safe.map((row) => `  ${row.map((cell, i) => cell.padEnd(wide(i))).join('  ')}`.trimEnd());
  return [pc.bold(printable(title)), ...lines].join('\n');
}
