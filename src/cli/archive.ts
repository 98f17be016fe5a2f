// The cards of all files at or below a path, for commands that look through many; knows nothing of what is looked for.
import { cardsOf, type Card } from '../analysis/cards.ts';
import type { FileState } from '../analysis/result.ts';
import { findFiles, loadFile } from '../disk/files.ts';
import { printable } from './formats/text.ts';

/** Undefined, with the reason on standard error, where the path cannot be looked through. */
export async function cardsBelow(
  path: string,
  word: string | undefined,
  signal: AbortSignal,
): Promise<readonly Card[] | undefined> {
  const { uris, unusable } = await findFiles([path]);
  const unread = unusable.map((one) => [one.path, one.reason] as const);
  const load = async (uri: string): Promise<FileState> => {
    const state = await loadFile(uri);
    if (state.kind === 'unreadable' && uris.includes(uri)) unread.push([uri, state.reason]);
    return state;
  };
  const rest = (): Promise<void> => new Promise((resolve) => setImmediate(resolve));
  const cards = await cardsOf(uris, { files: new Map(), load, signal, rest, cards: new Map() }, word);
  for (const [at, reason] of unread)
    process.stderr.write(`swingwright: cannot look through \`${printable(at)}\`: ${printable(reason)}.\n`);
  return unread.length > 0 ? undefined : cards;
}
