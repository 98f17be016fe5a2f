// The hover on a measured entry: its value, what it means, how sure it is, and what the other entries say of it.
import type { Analysis } from '../analysis/result.ts';
import { clubKindOf } from '../checks/entries.ts';
import { readerOf } from '../checks/reach.ts';
import type { Reader } from '../judgement/room.ts';
import { standingWords, templateStandings, windowWords } from '../checks/template-words.ts';
import { practiceFor } from '../judgement/room.ts';
import { withArticle } from '../measure/article.ts';
import { secondUnit, showValue, showWindow } from '../measure/show.ts';
import type { Value } from '../model/value.ts';
import type { Entry, Reading } from '../record/document.ts';
import { practiceWith, standardUncertainty } from '../registry/registry.ts';
import type { Quantity } from '../registry/quantity.ts';
import { entriesOf } from './entries.ts';
import { standingOf } from './hover-agreement.ts';
import type { Remark } from './hover.ts';
import { code, escapeMarkdown } from './markdown.ts';
import { holds } from './places.ts';

export function hoverOnEntry(analysis: Analysis, offset: number): Remark | undefined {
  const entry = entriesOf(analysis.document).find(
    ({ keySpan, valueSpan }) =>
      holds(keySpan, offset) || (holds(valueSpan, offset) && valueSpan.end > valueSpan.start),
  );
  if (entry === undefined) return undefined;
  const reading = entry.readings.find(({ span }) => holds(span, offset));
  const value = reading === undefined ? undefined : valueOf(reading, entry, analysis);
  return {
    span: reading?.span ?? entry.keySpan,
    ...(isOfRecord(entry, analysis) && { why: entry.id }),
    lines: [
      headline(entry, value ?? combined(entry, analysis)),
      ...describe(entry.quantity),
      ...certainty(entry, reading, analysis),
      ...standingOf(analysis, entry, reading),
      ...note(reading),
      ...templateLine(entry, analysis),
      practice(entry.quantity, readerOf(analysis.subject, clubKindOf(analysis.subject, entry))),
    ],
  };
}

/** "Template: 4..12 deg forward (firm; common practice): inside." */
function templateLine({ id }: Entry, analysis: Analysis): string[] {
  if (analysis.document.kind !== 'swing') return [];
  const standing = templateStandings(analysis.subject).find((one) => one.id === id);
  if (standing === undefined) return [];
  const where = standingWords(standing);
  return [`Template: ${escapeMarkdown(windowWords(standing))}${where === undefined ? '' : `: ${where}`}.`];
}

/** Whether the model knows of it: an entry of the record itself with a value, and not of one of its shots. */
function isOfRecord({ id }: Entry, { document, derivation }: Analysis): boolean {
  return document.kind === 'swing' && document.entries.has(id) && derivation?.values.has(id) === true;
}

/** "**Shaft lean** at impact". */
export function titleOf({ title, checkpoint }: Quantity): string {
  return `**${title}**${checkpoint === undefined ? '' : ` at ${checkpoint.replaceAll('_', ' ')}`}`;
}

/** One sentence of meaning, and where the measure is taken. */
export function describe({ meaning, from, to }: Quantity): string[] {
  return [meaning, ...(from === '' || to === '' ? [] : [`Measured from ${from} to ${to}.`])];
}

/** The value in the unit shown and in a second one: "9.0 deg forward ± 1.5 deg = 0.157 rad". */
export function inTwoUnits(quantity: Quantity, value: number, u: number | null): string {
  const other = secondUnit(quantity);
  // The second value is rounded like the first, but its uncertainty need not be said again.
  const second = other === undefined ? '' : ` = ${showValue(quantity, value, u, other).split(' ± ')[0]}`;
  return `${showValue(quantity, value, u)}${second}`;
}

/** What is usual, with this kind of club where it makes a difference and the kind is known. */
export function practice(quantity: Quantity, reader: Reader): string {
  const { clubKind } = reader;
  const usual = practiceFor(quantity, reader);
  const range = usual ?? quantity.bounds;
  const club =
    clubKind === undefined || practiceWith(quantity, clubKind) === quantity.practice
      ? ''
      : ` with ${withArticle(escapeMarkdown(clubKind))}`;
  const words = usual === undefined ? 'Possible' : `Usual${club}`;
  return `*${words}: ${showWindow(quantity, range.min, range.max)} (${escapeMarkdown(range.source)}).*`;
}

function headline({ quantity, readings }: Entry, value: Pick<Value, 'value' | 'u'> | undefined): string {
  const title = titleOf(quantity);
  if (value !== undefined) return `${title}: ${inTwoUnits(quantity, value.value, value.u)}`;
  return readings.length === 0 ? `${title}: no value yet; a bare number is read in ${quantity.unit}` : title;
}

/** All readings of an entry as the model takes them together. */
function combined(
  entry: Entry,
  { derivation, document, subject }: Analysis,
): Pick<Value, 'value' | 'u'> | undefined {
  const value =
    document.kind === 'swing' && document.entries.get(entry.id) === entry && derivation?.values.get(entry.id);
  if (value) return value;
  const [only] = entry.readings;
  return only === undefined ? undefined : valueOf(only, entry, { subject });
}

function valueOf(
  { measure, doubtful }: Reading,
  { quantity }: Entry,
  { subject }: Pick<Analysis, 'subject'>,
): { readonly value: number; readonly u: number | null } {
  // How much a doubtful reading is widened is the model's to say, so here it has no uncertainty of its own.
  if (doubtful) return { value: measure.value, u: null };
  return { value: measure.value, u: uncertaintyOf(quantity, measure, subject).u };
}

function uncertaintyOf(
  quantity: Quantity,
  measure: Reading['measure'],
  { workspace, registry }: Analysis['subject'],
): ReturnType<typeof standardUncertainty> {
  return standardUncertainty(quantity, measure, workspace?.document.coverage ?? 1, registry);
}

function certainty({ quantity, readings }: Entry, at: Reading | undefined, { subject }: Analysis): string[] {
  const reading = at ?? (readings.length === 1 ? readings[0] : undefined);
  if (reading === undefined)
    return readings.length > 1 ? [`${readings.length} readings, taken together.`] : [];
  if (reading.doubtful) return ['Marked doubtful: it counts for less than other readings.'];
  const { measure } = reading;
  const { u, origin } = uncertaintyOf(quantity, measure, subject);
  const amount = showSpread(quantity, u);
  const doubled =
    measure.estimate && origin !== 'stated' ? ', doubled because it is marked `~` as an estimate' : '';
  if (origin === 'stated') return [`Uncertainty: ${amount}, as stated.`];
  if (origin === 'quantity')
    return [`Uncertainty: ${amount}, usual for this quantity${doubled}; nothing is stated.`];
  const method = measure.method ?? '';
  const known = subject.registry.findMethod(method);
  const meaning = (known?.ofQuantities?.[quantity.id] ?? known?.uncertainty[quantity.dimension])?.source;
  const source = meaning === undefined ? '' : ` (${escapeMarkdown(meaning)})`;
  return [`Uncertainty: ${amount}, usual for ${code(method)}${source}${doubled}.`];
}

/** A spread alone, without sign or direction: "± 1.5 deg". */
function showSpread(quantity: Quantity, u: number): string {
  const [, spread] = showValue(quantity, 0, u).split(' ± ');
  return spread === undefined ? showValue({ ...quantity, directions: [] }, u) : `± ${spread}`;
}

function note(reading: Reading | undefined): string[] {
  if (reading === undefined) return [];
  return [
    ...(reading.note === undefined ? [] : [`Note: ${escapeMarkdown(reading.note)}`]),
    ...(reading.seen === undefined ? [] : [`Seen: ${escapeMarkdown(reading.seen)}`]),
  ];
}
