// The edits that keep in a record what its plan is predicted to lead to: only the lines that change; computes nothing.
import type { TextEdit } from './check.ts';
import { blockEdits, readBack } from './block-edits.ts';
import { predictedPairs, predictedText } from './forecast-words.ts';
import { origins } from '../record/change.ts';
import type { Prediction } from '../judgement/prediction.ts';
import type { Entry, SwingRecord } from '../record/document.ts';
import type { Subject } from './subject.ts';

export interface Kept {
  readonly prediction: Prediction;
  /** Ids of what goals ask for. */
  readonly further: readonly string[];
  readonly coverage: number;
}

/** None where the record says all of it already. What somebody else foresaw, by a method of their own, stays. */
export function predictedEdits(
  { uri, registry }: Pick<Subject, 'uri' | 'registry'>,
  document: SwingRecord,
  kept: Kept,
): readonly TextEdit[] {
  return readBack(document, registry, editsFor(uri, document, kept));
}

function editsFor(uri: string, document: SwingRecord, kept: Kept): readonly TextEdit[] {
  const { text, outline, predicted } = document;
  const block = predictedText(kept.prediction, kept.further, kept.coverage);
  const node = outline.find(({ name }) => name === 'predicted');
  if (node === undefined) return block === '' ? [] : blockEdits(uri, document, [['predicted', block]]);
  const pairs = predictedPairs(kept.prediction, kept.further, kept.coverage);
  const entries = [...predicted.values()];
  const places = entries.map((entry) => lineOf(text, entry));
  // Lines can be changed one by one only where each prediction has its own.
  if (entries.length === 0 || places.includes(undefined))
    return blockEdits(uri, document, [['predicted', block]]);
  const newline = text.includes('\r\n') ? '\r\n' : '\n';
  const wanted = new Map(pairs);
  const edits: TextEdit[] = [];
  entries.forEach((entry, at) => {
    const value = wanted.get(entry.id);
    const line = places[at]!;
    if (value === undefined) {
      if (isOurs(entry)) edits.push({ uri, span: { start: line.start, end: line.end }, text: '' });
      return;
    }
    const { valueSpan: span } = entry;
    if (text.slice(span.start, span.end).replace(/\s+/g, ' ') !== value)
      edits.push({ uri, span, text: value });
  });
  const missing = pairs.filter(([id]) => !predicted.has(id));
  const last = places.at(-1)!;
  if (missing.length > 0) {
    const lines = missing.map(([id, value]) => `${last.indent}${id}: ${value}`);
    const isOpen = !text.slice(0, last.end).endsWith('\n');
    const put = isOpen ? newline + lines.join(newline) : lines.join(newline) + newline;
    edits.push({ uri, span: { start: last.end, end: last.end }, text: put });
  }
  return edits;
}

function isOurs({ readings }: Entry): boolean {
  return readings.every(({ measure }) => origins.some((origin) => origin === measure.method));
}

interface Line {
  readonly start: number;
  /** Behind its line break. */
  readonly end: number;
  readonly indent: string;
}

/** The line that this entry has for itself; undefined where others stand on it, or where it goes over several. */
function lineOf(text: string, { keySpan, valueSpan }: Entry): Line | undefined {
  const start = text.lastIndexOf('\n', keySpan.start - 1) + 1;
  const indent = text.slice(start, keySpan.start);
  const found = text.indexOf('\n', valueSpan.end);
  const end = found < 0 ? text.length : found + 1;
  const isAlone =
    /^ +$/.test(indent) &&
    valueSpan.end > valueSpan.start &&
    !text.slice(keySpan.start, valueSpan.end).includes('\n') &&
    /^\s*(#.*)?\s*$/.test(text.slice(valueSpan.end, end));
  return isAlone ? { start, end, indent } : undefined;
}
