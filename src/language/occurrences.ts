// Where the thing under the cursor is mentioned: in this document, or in all files of the workspace; reads no file.
import type { Card } from '../analysis/cards.ts';
import { homeOf, mentionAt, mentionsIn, type Mention } from '../analysis/mentions.ts';
import { occurrencesOf, sameAs } from '../analysis/occurrences.ts';
import { lineTableOf, rangeOf, type LineTable } from '../analysis/positions.ts';
import type { Analysis } from '../analysis/result.ts';
import { holds, offsetAt } from './places.ts';
import type { DocumentHighlight, Location, Position } from './shapes.ts';

/** What the cursor is on. A file as a whole is meant on its first line, which tells its format, and on what it calls itself. */
export function findMention(analysis: Analysis, position: Position): Mention | undefined {
  const { uri, document } = analysis;
  const offset = offsetAt(lineTableOf(document.text), position);
  const mention = mentionAt(mentionsIn(uri, document, homeOf(analysis)), offset);
  if (mention !== undefined || document.kind === 'workspace') return mention;
  const [first] = document.outline;
  const title = document.outline.find(
    ({ name }) => name === (document.kind === 'student' ? 'name' : 'title'),
  );
  const isWhole = first === undefined || offset < first.span.start || (title && holds(title.span, offset));
  return isWhole === true
    ? { thing: { kind: 'file', name: uri }, span: { start: offset, end: offset }, role: 'definition' }
    : undefined;
}

/** Null where nothing here has a meaning of its own: an editor then looks for the same words. */
export function findHighlights(analysis: Analysis, position: Position): DocumentHighlight[] | null {
  const { uri, document } = analysis;
  const table = lineTableOf(document.text);
  const mentions = mentionsIn(uri, document, homeOf(analysis));
  const mention = mentionAt(mentions, offsetAt(table, position));
  if (mention === undefined) return null;
  const isSame = sameAs(mention.thing, []);
  return mentions
    .filter(({ thing }) => isSame(thing))
    .map(({ span, role }) => ({ range: rangeOf(table, span), kind: role === 'use' ? 2 : 3 }));
}

/** `cards` are those of the workspace's files, this one among them. */
export function findOccurrences(
  { thing }: Mention,
  cards: readonly Card[],
  { includeDeclaration }: { readonly includeDeclaration: boolean },
): Location[] {
  const tables = new Map<string, LineTable>();
  const tableOf = (uri: string): LineTable => {
    const table = tables.get(uri) ?? lineTableOf(cards.find((card) => card.uri === uri)?.text ?? '');
    tables.set(uri, table);
    return table;
  };
  return occurrencesOf(thing, cards)
    .filter(({ role }) => includeDeclaration || role !== 'definition')
    .map(({ uri, span }) => ({ uri, range: rangeOf(tableOf(uri), span) }));
}
