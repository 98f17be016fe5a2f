// What a lesson still has to measure as an editor shows it: a branch of the outline, and the rewrite that adds the keys; computes nothing.
import { narrowingWords, methodWords, type NextEntry } from '../analysis/next-entries.ts';
import { lineTableOf, rangeOf } from '../analysis/positions.ts';
import type { Analysis } from '../analysis/result.ts';
import type { OutlineNode } from '../record/document.ts';
import { keysIntoRecord } from './new-keys.ts';
import { touches } from './places.ts';
import { keysKept, type Rewrite } from './rewrite.ts';
import type { DocumentSymbol, TextRange } from './shapes.ts';

/** The parts of a record on whose keys the rewrite is offered. */
const parts = ['conditions', 'checkpoints', 'delivery', 'ground', 'strike', 'flight'];

/** One branch with a twig for each entry, which leads to where it goes; none where nothing is left to measure. */
export function nextSymbols({ document }: Analysis, entries: readonly NextEntry[]): DocumentSymbol[] {
  if (entries.length === 0) return [];
  const { outline, text } = document;
  const table = lineTableOf(text);
  // Empty places, so that no cursor in the text is taken to be in this branch.
  const at = (offset: number): TextRange => rangeOf(table, { start: offset, end: offset });
  const first = outline.find(({ name }) => name === 'checkpoints') ?? outline.at(-1);
  const top = at(first?.nameSpan.end ?? text.length);
  const children = entries.map((entry): DocumentSymbol => {
    const place = at(entry.place === 'record' ? placeOf(outline, entry.quantity.id) : 0);
    const { id, section } = entry.quantity;
    const path = id.slice(section === 'checkpoints' ? 'checkpoints.'.length : 0);
    return {
      name: path,
      detail: reasonOf(entry),
      kind: 8,
      range: place,
      selectionRange: place,
      children: [],
    };
  });
  return [{ name: 'To measure next', detail: '', kind: 3, range: top, selectionRange: top, children }];
}

/** Offered on the keys of the parts of a record. */
export function addKeysToMeasureNext(
  analysis: Analysis,
  entries: readonly NextEntry[],
  range: TextRange,
): readonly Rewrite[] {
  const { document } = analysis;
  if (document.kind !== 'swing' || !isAtPart(analysis, range)) return [];
  const there = new Set(document.entries.keys());
  const ids = entries
    .filter(({ place, quantity }) => place === 'record' && !there.has(quantity.id))
    .map(({ quantity }) => quantity.id);
  if (ids.length === 0) return [];
  const edits = keysIntoRecord(document, ids);
  if (edits === undefined || !keysKept(analysis, edits)) return [];
  const names = ids.map((id) => `\`${id.replace(/^checkpoints\./, '')}\``).join(', ');
  return [{ title: `Add the keys to measure next: ${names}`, edits }];
}

/** Whether it is worth while to ask what to measure next: costly, so only where the answer is offered. */
export function isAtPart({ document }: Analysis, range: TextRange): boolean {
  if (document.kind !== 'swing') return false;
  const table = lineTableOf(document.text);
  const isEmptyOfParts = !document.outline.some(({ name }) => parts.includes(name));
  return document.outline.some(
    ({ name, nameSpan }) =>
      (parts.includes(name) || (isEmptyOfParts && name === 'date')) &&
      touches(rangeOf(table, nameSpan), range),
  );
}

/** The innermost key on the way to it that is there. */
function placeOf(outline: readonly OutlineNode[], id: string): number {
  let nodes = outline;
  let place = outline.at(-1)?.nameSpan.end ?? 0;
  for (const key of id.split('.')) {
    const node = nodes.find(({ name }) => name === key);
    if (node === undefined) break;
    place = node.nameSpan.end;
    nodes = node.children;
  }
  return place;
}

function reasonOf(entry: NextEntry): string {
  const narrowings = entry.narrowings.map(narrowingWords);
  const why = entry.reason === 'proof' ? ['the plan asks for it', ...narrowings] : narrowings;
  const where = entry.place === 'student' ? " (in the student's file)" : '';
  return `${methodWords(entry)}${where}: ${why.join('; ')}`;
}
