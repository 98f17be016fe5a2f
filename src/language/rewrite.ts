// A rewrite at the cursor, and the proof that it says the same as before: the edited text is read again; knows no rewrite by name.
import type { Analysis } from '../analysis/result.ts';
import { edit } from '../checks/block-edits.ts';
import type { Measure, Span, Window } from '../measure/measure.ts';
import type { SwingwrightDocument } from '../record/document.ts';
import { parseDocument } from '../record/parse.ts';
import { builtIn, type Registry } from '../registry/registry.ts';
import { measuredPlaces, type MeasuredPlace } from './measured-place.ts';

export interface RewriteEdit {
  readonly span: Span;
  readonly text: string;
  /** The part of `text` that the reader most likely types over, for editors that can select it. */
  readonly placeholder?: string;
}

export interface Rewrite {
  /** An imperative: "Write in inches: 18.5 in". */
  readonly title: string;
  readonly edits: readonly RewriteEdit[];
}

/** What may differ between what was read before and what is read after. */
export type IsMeant = (before: MeasuredPlace, after: MeasuredPlace) => boolean;

/** Whether the edited text says all that was said, with new keys that have no value yet. */
export function keysKept(analysis: Analysis, edits: readonly RewriteEdit[]): boolean {
  return saysTheSame(analysis, edits, undefined, isSameMeasured);
}

/** The edited text read as a file of the same kind, with the same registry. */
export function readEdited(
  { document, subject }: Analysis,
  edits: readonly RewriteEdit[],
): SwingwrightDocument {
  return parseDocument(document.kind, edit(document.text, edits), registryOf(document.kind, subject));
}

/**
 * Whether the edited text says what was meant of `changed`, the same of all else, keeps every accepting comment, and has no
 * problem that it had not before. Asks the reader itself, so that no rule of YAML's quoting needs to be repeated here.
 */
export function saysTheSame(
  analysis: Analysis,
  edits: readonly RewriteEdit[],
  changed: MeasuredPlace | undefined,
  isMeant: IsMeant,
): boolean {
  const edited = readEdited(analysis, edits);
  return keepsTheRest(analysis.document, edited) && keepsMeasured(analysis, edited, changed, isMeant);
}

/** A workspace is read before its own quantities are known. */
function registryOf(kind: SwingwrightDocument['kind'], { registry }: Analysis['subject']): Registry {
  return kind === 'workspace' ? builtIn : registry;
}

function keepsMeasured(
  { document: before, subject }: Analysis,
  after: SwingwrightDocument,
  changed: MeasuredPlace | undefined,
  isMeant: IsMeant,
): boolean {
  const [old, fresh] = [before, after].map((document) => measuredPlaces(document, subject.registry)) as [
    readonly MeasuredPlace[],
    readonly MeasuredPlace[],
  ];
  if (old.length !== fresh.length) return false;
  return old.every((place, at) => {
    const other = fresh[at]!;
    if (place.quantity.id !== other.quantity.id) return false;
    return changed !== undefined && isSamePlace(place, changed)
      ? isMeant(place, other)
      : isSameMeasured(place, other);
  });
}

function isSamePlace(a: MeasuredPlace, b: MeasuredPlace): boolean {
  return a.span.start === b.span.start && a.span.end === b.span.end;
}

/** The same number, uncertainty, method and remarks, whatever the form. */
export function isSameMeasured(a: MeasuredPlace, b: MeasuredPlace): boolean {
  return isSameNumber(a.measured, b.measured) && isSameRemark(a, b);
}

export function isSameRemark({ reading: a }: MeasuredPlace, { reading: b }: MeasuredPlace): boolean {
  return a?.note === b?.note && a?.seen === b?.seen && a?.doubtful === b?.doubtful;
}

function isSameNumber(a: Measure | Window, b: Measure | Window): boolean {
  if (a.kind === 'window') return b.kind === 'window' && a.from === b.from && a.to === b.to;
  return b.kind === 'measure' && a.value === b.value && a.stated === b.stated && isSameSource(a, b);
}

/** Measured the same way, so that a missing uncertainty is filled in alike. */
export function isSameSource(a: Measure, b: Measure): boolean {
  return a.method === b.method && a.estimate === b.estimate && a.bearing === b.bearing;
}

/** These only remark on what is written well enough. */
const remarks: ReadonlySet<string> = new Set(['bare-number', 'bare-direction', 'no-value-yet']);

/** The same problems as before: one that is gone had its text dropped, for no rewrite mends anything. */
function keepsTheRest(before: SwingwrightDocument, after: SwingwrightDocument): boolean {
  const told = ({ problems }: SwingwrightDocument): string =>
    JSON.stringify(
      problems
        .filter(({ code }) => !remarks.has(code))
        .map(({ code, found }) => `${code} ${found}`)
        .sort(),
    );
  const accepted = ({ silences }: SwingwrightDocument): string =>
    JSON.stringify(silences.map(({ code, reason }) => [code.value, reason]));
  return told(after) === told(before) && accepted(after) === accepted(before);
}

/** Whether what stands here was read without a problem; of what was not, a rewrite knows too little to keep it. */
export function isReadWell({ subject: { problems } }: Analysis, { span }: MeasuredPlace): boolean {
  return !problems.some(
    (problem) =>
      !remarks.has(problem.code) && problem.span.start <= span.end && span.start <= problem.span.end,
  );
}

/** Every word and number of a reading, also where nothing stands between them as in `120m`, but those that only give it its form. */
const said = /\p{N}+(?:[.,]\p{N}+)*|[\p{L}_%°′″]+/gu;
const ofForm: ReadonlySet<string> = new Set(['value', 'give_or_take', 'by']);

/** Whether each word and number that stood there stands in the new text too, as often. */
export function keepsWords(text: string, { span: { start, end }, text: put }: RewriteEdit): boolean {
  const left = (put.match(said) ?? []).filter((word) => !ofForm.has(word));
  return (text.slice(start, end).match(said) ?? []).every((word) => {
    if (ofForm.has(word)) return true;
    const at = left.indexOf(word);
    if (at !== -1) left.splice(at, 1);
    return at !== -1;
  });
}
