// Renaming as an editor asks for it: the exact name first, then the edits of every file; what may be renamed is not decided here.
import type { Card } from '../analysis/cards.ts';
import { homeOf, mentionAt, mentionsIn, type Mention } from '../analysis/mentions.ts';
import { lineTableOf, rangeOf } from '../analysis/positions.ts';
import { rename, whyNotRenamed } from '../analysis/renaming.ts';
import type { Analysis } from '../analysis/result.ts';
import { offsetAt } from './places.ts';
import type { Position, TextRange, WorkspaceEdit } from './shapes.ts';

export type Refusal = { readonly refused: string };

/** The name to be typed over. */
export interface RenamePlace {
  readonly range: TextRange;
  readonly placeholder: string;
}

export function findRenamed(analysis: Analysis, position: Position): Mention | undefined {
  const { uri, document } = analysis;
  return mentionAt(
    mentionsIn(uri, document, homeOf(analysis)),
    offsetAt(lineTableOf(document.text), position),
  );
}

export function prepareRename(
  { document }: Analysis,
  mention: Mention | undefined,
  cards: readonly Card[],
): RenamePlace | Refusal {
  const refused = whyNotRenamed(mention, cards);
  if (mention === undefined || refused !== undefined) return { refused: refused ?? '' };
  const { start, end } = mention.span;
  const written = document.text.slice(start, end);
  // Of an own quantity either its id or its key alone stands here.
  const placeholder = mention.thing.kind === 'quantity' ? written : mention.thing.name;
  return { range: rangeOf(lineTableOf(document.text), mention.span), placeholder };
}

/** `versionOf` gives an open document's version; null of a file that is not open. */
export function findRename(
  mention: Mention | undefined,
  name: string,
  cards: readonly Card[],
  versionOf: (uri: string) => number | null,
): WorkspaceEdit | Refusal {
  const renaming = rename(mention, name, cards);
  if (renaming.kind === 'refused') return { refused: renaming.reason };
  return {
    documentChanges: renaming.files.map(({ uri, text, edits }) => {
      const table = lineTableOf(text);
      return {
        textDocument: { uri, version: versionOf(uri) },
        edits: edits.map(({ span, text: newText }) => ({ range: rangeOf(table, span), newText })),
      };
    }),
  };
}
