// Asks for proposals at an offset of a sample and writes one of them, as an editor would; for tests of completion.
import assert from 'node:assert/strict';
import type { Analysis } from '../../src/analysis/result.ts';
import { analyse } from '../../src/analysis/analyse.ts';
import { lineTableOf, positionAt } from '../../src/analysis/positions.ts';
import { findCompletions } from '../../src/language/index.ts';
import { offsetAt } from '../../src/language/places.ts';
import type { CompletionItem } from '../../src/language/shapes.ts';
import type { SwingRecord } from '../../src/record/document.ts';
import { parseDocument } from '../../src/record/parse.ts';
import { marked } from '../marked.ts';
import { practice, samples, snapshotWith } from '../samples.ts';

export const today = '2026-05-30';

/** Where a record stands that is being written, and how it begins. */
export const record = 'tove/new.swing.yaml';
export const head = `swing: 1
student: tove.student.yaml
club: seven iron
template: ../templates/iron.template.yaml
faults_from: ../house.faults.yaml
`;

/** The lesson before it. */
export const earlier = parseDocument(
  'swing',
  samples.get('file:///practice/tove/2026-04-18-seven-iron.swing.yaml')!,
) as SwingRecord;

export interface Editor {
  readonly snippets?: boolean;
  readonly earlier?: SwingRecord | undefined;
}

export function itemsAt(
  analysis: Analysis,
  offset: number,
  { snippets = true, earlier }: Editor = {},
): CompletionItem[] {
  const position = positionAt(lineTableOf(analysis.document.text), offset);
  return findCompletions(analysis, {
    position,
    files: [...samples.keys()],
    earlier,
    usual: earlier?.entries ?? new Map(),
    today,
    snippets,
    asksAgain: true,
  });
}

/** The proposals at the `$0` of a text that stands at this path among the samples. */
export function proposed(
  path: string,
  source: string,
  editor: Editor = {},
): { text: string; offset: number; items: CompletionItem[] } {
  const { text, offset } = marked(source);
  const uri = practice + path;
  return { text, offset, items: itemsAt(analyse(uri, snapshotWith({ [uri]: text })), offset, editor) };
}

export function labels(path: string, source: string, editor?: Editor): string[] {
  return proposed(path, source, editor).items.map(({ label }) => label);
}

/** The text once the proposal with this label is taken. */
export function taken(path: string, source: string, label: string, editor?: Editor): string {
  const { text, items } = proposed(path, source, editor);
  const item = items.find((one) => one.label === label);
  assert.ok(item, `${label} is not among ${items.map((one) => one.label).join(', ')}`);
  return written(text, item);
}

/** The text once the proposal is taken, its places filled with what they offer first. */
export function written(text: string, { textEdit, insertTextFormat }: CompletionItem): string {
  const table = lineTableOf(text);
  const [start, end] = [offsetAt(table, textEdit.range.start), offsetAt(table, textEdit.range.end)];
  const words = insertTextFormat === 2 ? filled(textEdit.newText) : textEdit.newText;
  return text.slice(0, start) + words + text.slice(end);
}

export function filled(snippet: string): string {
  return snippet
    .replace(/\$\{\d+\|((?:[^|\\]|\\.)*)\|\}/g, (_, words: string) => /^(?:[^,\\]|\\.)*/.exec(words)![0])
    .replace(/\$\{\d+:((?:[^}\\]|\\.)*)\}/g, '$1')
    .replace(/\$\d+/g, '')
    .replace(/\\([\\$},|])/g, '$1');
}
