// Writes what was tried into the plan of a record, as the smallest edit: a number in the place of a number, or items behind the last; predicts nothing.
import { lineTableOf, rangeOf } from '../analysis/positions.ts';
import type { Analysis } from '../analysis/result.ts';
import { blockEdits } from '../checks/block-edits.ts';
import { proofOnTheWay } from '../judgement/proposed-proof.ts';
import { showValue } from '../measure/show.ts';
import type { PlannedChange, SwingRecord } from '../record/document.ts';
import type { Quantity } from '../registry/quantity.ts';
import { readEdited, type RewriteEdit } from './rewrite.ts';
import type { Edit } from './shapes.ts';
import { settingsOf, type Move } from './what-if.ts';

interface Wanted {
  readonly quantity: Quantity;
  readonly to: number;
  readonly proof: string | undefined;
}

/**
 * None where the plan says so already; undefined where it is written in a way that nothing can be added to. What is planned for other
 * quantities stays.
 */
export function whatIfEdits(
  analysis: Analysis,
  moves: readonly Move[],
  because: readonly string[],
): readonly Edit[] | undefined {
  const { document, subject, account } = analysis;
  if (document.kind !== 'swing') return undefined;
  const wanted = settingsOf(analysis, moves).flatMap(({ id, to }): Wanted[] => {
    const quantity = subject.registry.find(id);
    if (quantity === undefined) return [];
    return [{ quantity, to, proof: account && proofOnTheWay(quantity, to, account) }];
  });
  const planned = (one: Wanted): PlannedChange | undefined =>
    document.plan.find(({ change }) => change?.value === one.quantity.id);
  const open = wanted.filter((one) => !isAlready(planned(one), one));
  if (open.length === 0) return [];
  const edits = [
    ...open.flatMap((one) => {
      const before = planned(one);
      return before === undefined ? [] : changed(before, one, document, analysis);
    }),
    ...added(
      open.filter((one) => planned(one) === undefined),
      because,
      analysis.uri,
      document,
    ),
  ];
  if (edits.length === 0 || !isPlanned(analysis, edits, wanted)) return undefined;
  const table = lineTableOf(document.text);
  return edits.map(({ span, text }) => ({ range: rangeOf(table, span), newText: text }));
}

/** Whether it is planned for the same number, as it is shown. */
function isAlready(planned: PlannedChange | undefined, { quantity, to }: Wanted): boolean {
  const target = planned?.to?.target;
  return target?.kind === 'measure' && showValue(quantity, target.value) === showValue(quantity, to);
}

/** The number alone, and the proof where it was written for the number before: reasons and any other proof are the coach's. */
function changed(
  { to, change, span, proof }: PlannedChange,
  wanted: Wanted,
  { text }: SwingRecord,
  { account }: Analysis,
): readonly RewriteEdit[] {
  const number = showValue(wanted.quantity, wanted.to);
  if (to !== undefined) {
    const { target } = to;
    const before =
      target.kind === 'measure' && account && proofOnTheWay(wanted.quantity, target.value, account);
    const isOurs = proof !== undefined && text.slice(proof.span.start, proof.span.end) === before;
    const proved = isOurs && wanted.proof !== undefined ? [{ span: proof.span, text: wanted.proof }] : [];
    return [{ span: to.span, text: number }, ...proved];
  }
  const at = change?.span.end ?? span.end;
  const indent = indentOf(text, span.start);
  const lead = indent === undefined ? ', ' : `${newlineOf(text)}${indent}  `;
  return [{ span: { start: at, end: at }, text: `${lead}to: ${number}` }];
}

function added(
  wanted: readonly Wanted[],
  because: readonly string[],
  uri: string,
  document: SwingRecord,
): readonly RewriteEdit[] {
  if (wanted.length === 0) return [];
  const { text, plan } = document;
  const newline = newlineOf(text);
  const pairs = wanted.map(({ quantity, to, proof }) => [
    `change: ${quantity.id}`,
    `to: ${showValue(quantity, to)}`,
    ...(because.length === 0 ? [] : [`because: [${because.map(flowWord).join(', ')}]`]),
    ...(proof === undefined ? [] : [`proof: ${proof}`]),
  ]);
  const last = plan.at(-1);
  const block = (indent: string): string =>
    pairs.map((lines) => `${indent}- ${lines.join(`\n${indent}  `)}\n`).join('');
  if (last === undefined) return blockEdits(uri, document, [['plan', `plan:\n${block('  ')}`]]);
  const indent = indentOf(text, last.span.start);
  if (indent === undefined) {
    const items = pairs.map((lines) => `, { ${lines.join(', ')} }`).join('');
    return [{ span: { start: last.span.end, end: last.span.end }, text: items }];
  }
  const items = block(indent).replaceAll('\n', newline);
  const lineEnd = text.indexOf('\n', Math.max(last.span.end - 1, last.span.start));
  const at = lineEnd < 0 ? text.length : lineEnd + 1;
  const put = lineEnd < 0 ? `${newline}${items.trimEnd()}` : items;
  return [{ span: { start: at, end: at }, text: put }];
}

/** What stands before the dash of an item that has a line of its own; undefined of an item in brackets. */
function indentOf(text: string, at: number): string | undefined {
  const line = text.slice(text.lastIndexOf('\n', at - 1) + 1, at);
  return /^([ ]*)-[ ]+$/.exec(line)?.[1];
}

function newlineOf(text: string): string {
  return text.includes('\r\n') ? '\r\n' : '\n';
}

function flowWord(word: string): string {
  return /^[\w][\w .-]*$/.test(word) ? word : JSON.stringify(word);
}

/** Asks the reader itself whether the edited text plans what was wanted, all that was planned before, and nothing strange. */
function isPlanned(analysis: Analysis, edits: readonly RewriteEdit[], wanted: readonly Wanted[]): boolean {
  const after = readEdited(analysis, edits);
  const { document } = analysis;
  if (after.kind !== 'swing' || document.kind !== 'swing') return false;
  const ids = (plan: SwingRecord['plan']): readonly string[] =>
    plan.flatMap(({ change }) => change?.value ?? []);
  const kept = new Set(ids(after.plan));
  return (
    after.problems.length <= document.problems.length &&
    ids(document.plan).every((id) => kept.has(id)) &&
    after.entries.size === document.entries.size &&
    wanted.every(({ quantity }) =>
      after.plan.some(({ change, to }) => change?.value === quantity.id && to?.target.kind === 'measure'),
    )
  );
}
