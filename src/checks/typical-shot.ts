// The edit that writes the typical shot of a record into its flight; touches no byte outside of `flight:`.
import { printMeasure } from '../measure/print.ts';
import type { Measure } from '../measure/measure.ts';
import type { OutlineNode, SwingRecord } from '../record/document.ts';
import { lineEnd, lineStart } from '../record/lines.ts';
import { parseDocument } from '../record/parse.ts';
import type { Fix, TextEdit } from './check.ts';
import type { Subject } from './subject.ts';

/**
 * Changes and adds those keys under `flight` that the shot nearest to the medians says otherwise; undefined where there is
 * nothing to change, or no place where the text would read back as meant.
 */
export function takeTypicalShot(subject: Subject): Fix | undefined {
  const { document, shots, registry, uri } = subject;
  const typical = shots?.summary?.typical;
  const shot = typical === undefined ? undefined : shots?.shots[typical];
  if (document.kind !== 'swing' || shot === undefined) return undefined;
  const wanted = [...shot.measures].filter(([id]) => id.startsWith('flight.'));
  const written = wanted.flatMap(([id, measure]): Written[] => {
    const quantity = registry.find(id);
    return quantity === undefined ? [] : [{ id, measure, text: printMeasure(measure, quantity) }];
  });
  const changes = written.filter(({ id, measure }) => {
    const entry = document.entries.get(id);
    return entry !== undefined && !isSaid(entry.readings, measure);
  });
  const additions = written.filter(({ id }) => !document.entries.has(id));
  if (changes.length + additions.length === 0) return undefined;
  const inserted = additions.length === 0 ? [] : insertion(document, additions);
  const edits = [
    ...changes.map(({ id, text }) => change(document, id, text)),
    ...(inserted === undefined ? [] : inserted),
  ].map((edit): TextEdit => ({ uri, ...edit }));
  if (inserted === undefined || !readsBack(subject, document, edits, written)) return undefined;
  return { title: `Take the typical shot (shot ${shot.row})`, edits, preferred: false };
}

interface Written {
  readonly id: string;
  readonly measure: Measure;
  readonly text: string;
}

type Edit = Omit<TextEdit, 'uri'>;

function isSaid(readings: readonly { readonly measure: Measure }[], measure: Measure): boolean {
  return readings.length === 1 && readings[0]!.measure.value === measure.value;
}

function change({ text, entries }: SwingRecord, id: string, put: string): Edit {
  const { keySpan, valueSpan } = entries.get(id)!;
  const { start, end } = valueSpan;
  if (start === end) return { span: valueSpan, text: text[start - 1] === ':' ? ` ${put}` : put };
  // A block that begins on a line of its own gives way as a whole, but not the white space behind it.
  const lead = /^\s*:[^\S\r\n]*(?=\r?\n\s*$)/.exec(text.slice(keySpan.end, start));
  const from = lead === null ? start : keySpan.end + lead[0].length;
  const to = start + text.slice(start, end).trimEnd().length;
  return {
    span: { start: from, end: to },
    text: lead === null ? put : `${lead[0].endsWith(':') ? ' ' : ''}${put}`,
  };
}

/** New keys: after the last one between braces, before the first one of a block, and a `flight` of its own where there is none. */
function insertion(document: SwingRecord, additions: readonly Written[]): readonly Edit[] | undefined {
  const { text, outline } = document;
  const lines = additions.map(({ id, text: value }) => `${id.slice('flight.'.length)}: ${value}`);
  const feed = text.includes('\r\n') ? '\r\n' : '\n';
  const flight = outline.find(({ name }) => name === 'flight');
  if (flight === undefined) {
    const shots = outline.find(({ name }) => name === 'shots');
    if (shots === undefined) return undefined;
    const block = ['flight:', ...lines.map((line) => `  ${line}`)].join(feed) + feed;
    return [put(lineStart(text, shots.nameSpan.start), block)];
  }
  const last = flight.children.at(-1);
  const first = flight.children[0];
  const brace = text[flight.span.end - 1] === '}' && /^\s*:\s*\{/.test(text.slice(flight.nameSpan.end));
  if (brace) {
    if (last !== undefined) return [put(endOf(last), `, ${lines.join(', ')}`)];
    const inside = text.lastIndexOf('{', flight.span.end) + 1;
    return [put(inside, ` ${lines.join(', ')} `)];
  }
  if (first !== undefined) {
    const indent = first.nameSpan.start - lineStart(text, first.nameSpan.start);
    return [put(first.nameSpan.start, lines.map((line) => `${line}${feed}${' '.repeat(indent)}`).join(''))];
  }
  const own = flight.nameSpan.start - lineStart(text, flight.nameSpan.start);
  const below = lines.map((line) => `${feed}${' '.repeat(own + 2)}${line}`).join('');
  return [put(lineEnd(text, lineStart(text, flight.nameSpan.start)), below)];
}

function endOf({ span, nameSpan }: OutlineNode): number {
  return Math.max(span.end, nameSpan.end);
}

function put(offset: number, text: string): Edit {
  return { span: { start: offset, end: offset }, text };
}

/** Asks the reader itself: the new text must say what was meant, and have no problem that the old one had not. */
function readsBack(
  { registry }: Subject,
  document: SwingRecord,
  edits: readonly TextEdit[],
  written: readonly Written[],
): boolean {
  const text = [...edits]
    .sort((a, b) => b.span.start - a.span.start)
    .reduce(
      (done, edit) => done.slice(0, edit.span.start) + edit.text + done.slice(edit.span.end),
      document.text,
    );
  const edited = parseDocument('swing', text, registry);
  if (edited.kind !== 'swing' || edited.problems.length > document.problems.length) return false;
  if (edited.silences.length !== document.silences.length) return false;
  const kept = [...document.entries.values()].every(
    ({ id, readings }) =>
      written.some((other) => other.id === id) || edited.entries.get(id)?.readings.length === readings.length,
  );
  return kept && written.every(({ id, measure }) => isSaid(edited.entries.get(id)?.readings ?? [], measure));
}
