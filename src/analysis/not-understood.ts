// What a forecast leaves out of a plan and its goals, and claims of faults, since it could not be read, each with its place and the reason; computes nothing.
import type { Forecast } from '../judgement/forecast.ts';
import type { Span } from '../measure/measure.ts';
import type { PlannedChange, SwingRecord } from '../record/document.ts';
import { isBefore, lineTableOf, positionAt, rangeOf } from './positions.ts';
import type { Analysis, Finding, Position, TextRange } from './result.ts';

export interface NotUnderstood {
  readonly at: Position;
  readonly reason: string;
}

/** What can be read and is only doubtful. */
const readable: ReadonlySet<string> = new Set(['unknown-club']);
/** Milder than errors, and the text is left out all the same. */
const leftOut: ReadonlySet<string> = new Set(['unknown-key', 'change-of-derived']);
/** These may have cost a part of the plan wherever they stand. */
const everywhere: ReadonlySet<string> = new Set(['yaml-syntax', 'duplicate-key']);

/** In the order of the text. `forecast` is undefined where the record says too little for one. */
export function notUnderstoodIn(
  { document, findings, subject }: Analysis,
  forecast: Pick<Forecast, 'changes'> | undefined,
): readonly NotUnderstood[] {
  if (document.kind !== 'swing') return [];
  const lines = lineTableOf(document.text);
  const told = toldIn({ document, findings }, ['plan', 'goals']);
  const isTold = (span: Span): boolean => told.some(({ range }) => lies(range, rangeOf(lines, span)));
  const silent = unmade(document, forecast, subject.own.derived).filter(({ span }) => !isTold(span));
  return [
    ...told.map(({ range, message }) => ({ at: range.start, reason: message })),
    ...silent.map((one) => ({ at: positionAt(lines, one.span.start), reason: reasonOf(one) })),
  ].sort((a, b) => a.at.line - b.at.line || a.at.character - b.at.character);
}

/** What claims leave out of the faults of a record and of where their book is. */
export function faultsNotUnderstoodIn(analysis: Analysis): readonly NotUnderstood[] {
  return toldIn(analysis, ['faults', 'faults_from'])
    .map(({ range, message }) => ({ at: range.start, reason: message }))
    .sort((a, b) => a.at.line - b.at.line || a.at.character - b.at.character);
}

function toldIn(
  { document, findings }: Pick<Analysis, 'document' | 'findings'>,
  names: readonly string[],
): readonly Finding[] {
  const lines = lineTableOf(document.text);
  const blocks = document.outline
    .filter(({ name }) => names.includes(name))
    .map(({ span }) => rangeOf(lines, span));
  return findings.filter(
    (finding) =>
      everywhere.has(finding.code) ||
      (isOfReading(finding) && blocks.some((block) => lies(finding.range, block))),
  );
}

function isOfReading({ code, severity }: Finding): boolean {
  return leftOut.has(code) || (severity === 'error' && !readable.has(code));
}

function lies({ start, end }: TextRange, block: TextRange): boolean {
  return !isBefore(start, block.start) && !isBefore(block.end, end);
}

/** Without a forecast, those that none could speak of. */
function unmade(
  { plan }: SwingRecord,
  forecast: Pick<Forecast, 'changes'> | undefined,
  derived: ReadonlyMap<string, unknown>,
): readonly PlannedChange[] {
  const made = new Set(forecast?.changes.map(({ planned }) => planned));
  return plan.filter((planned) =>
    forecast === undefined
      ? planned.quantity === undefined || planned.to === undefined || derived.has(planned.quantity.id)
      : !made.has(planned),
  );
}

function reasonOf({ change, quantity, to }: PlannedChange): string {
  if (change === undefined) return 'A change that does not say at `change` what it is of.';
  if (quantity === undefined) return `A change of \`${change.value}\`, which is no quantity.`;
  if (to === undefined) return `The change of \`${quantity.id}\` has no value at \`to\`.`;
  return `The change of \`${quantity.id}\` cannot be made as it is written.`;
}
