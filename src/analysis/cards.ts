// What is kept of each file of a workspace to find things across them: who it is, and what it mentions; reads no file itself.
import type { FileKind, Located, SwingwrightDocument } from '../record/document.ts';
import { kindOf } from '../record/kind.ts';
import { parseDocument } from '../record/parse.ts';
import { resolveReference } from '../record/reference.ts';
import { builtIn } from '../registry/registry.ts';
import { lookoutOver } from './lookout.ts';
import { mentionsIn, type Mention } from './mentions.ts';
import type { Home } from './quantity-mentions.ts';
import type { FileState } from './result.ts';
import type { Cancellation, FileStore } from './settle.ts';
import { findWorkspace, workspaceCandidates } from './workspace.ts';

export interface Card {
  readonly uri: string;
  readonly kind: FileKind;
  readonly text: string;
  /** What could be measured where it lies. */
  readonly home: Home;
  readonly mentions: readonly Mention[];
  /** Of a fault book, the one that it extends. */
  readonly extends: string | undefined;
  /** Of a record, the student's file. */
  readonly student: string | undefined;
  /** Of a record, its day and its club; of the others, what they call themselves. */
  readonly date: string | undefined;
  readonly club: string | undefined;
  readonly title: Located<string> | undefined;
  /** Of a fault book, what each fault is called, by its id. */
  readonly faults: ReadonlyMap<string, { readonly id: Located<string>; readonly title: string | undefined }>;
}

/** By URI; a card is good for as long as the text is the same. */
export type CardCache = Map<string, Card>;

/** How the files of a workspace are come by. */
export interface Archive {
  readonly files: Pick<FileStore, 'get'>;
  readonly load: (uri: string) => Promise<FileState>;
  readonly signal: Cancellation;
  /** Lets others have a turn, so that a long look through many files can be cancelled. */
  readonly rest: () => Promise<void>;
  readonly cards: CardCache;
}

/** So many are read from the disk at a time. */
const readTogether = 32;
/** After so many characters others have a turn: some ten milliseconds. */
const restAfter = 20_000;

/**
 * The cards of those of these files that can be read, and of the files that they refer to, wherever these lie. With a word, files
 * that cannot hold it are left out, unless they are fault books, which lead to one another. Rejects with the signal's reason when
 * it is aborted, and otherwise never.
 */
export async function cardsOf(
  uris: readonly string[],
  archive: Archive,
  word?: string,
): Promise<readonly Card[]> {
  const cards: Card[] = [];
  const homes = homesIn(archive);
  const seen = new Set<string>();
  for (let next = uris; next.length > 0;) {
    const ours = next.filter((uri) => kindOf(uri) !== undefined && !seen.has(uri));
    for (const uri of ours) seen.add(uri);
    const found = await cardsAt(ours, archive, homes, word);
    cards.push(...found);
    next = [...new Set(found.flatMap(referredTo))];
  }
  return cards;
}

async function cardsAt(
  uris: readonly string[],
  archive: Archive,
  homes: Homes,
  word: string | undefined,
): Promise<Card[]> {
  const cards: Card[] = [];
  let read = 0;
  for (let from = 0; from < uris.length; from += readTogether) {
    archive.signal.throwIfAborted();
    const some = uris.slice(from, from + readTogether);
    const states = await Promise.all(some.map((uri) => stateOf(uri, archive)));
    for (const [place, uri] of some.entries()) {
      const state = states[place];
      if (state?.kind !== 'text') continue;
      const kept = archive.cards.get(uri);
      const home = await homes(uri);
      const isSame = kept?.text === state.text && isSameHome(kept.home, home);
      const known = isSame ? kept : undefined;
      if (known === undefined && !mayHold(uri, state.text, word)) continue;
      if (known === undefined) read += state.text.length;
      cards.push(known ?? keptCard(uri, state.text, home, archive.cards));
      if (read < restAfter) continue;
      read = 0;
      await archive.rest();
      archive.signal.throwIfAborted();
    }
  }
  return cards;
}

function referredTo({ mentions }: Card): readonly string[] {
  return mentions.flatMap(({ thing }) => (thing.kind === 'file' ? [thing.name] : []));
}

/** Of a text that is at hand; of a URI that is none of ours a card with nothing on it. */
export function cardOf(uri: string, document: SwingwrightDocument, home: Home): Card {
  const { kind, text } = document;
  const follow = (path: Located<string> | undefined): string | undefined =>
    path && resolveReference(uri, path.value);
  return {
    uri,
    kind,
    text,
    home,
    mentions: mentionsIn(uri, document, home),
    extends: kind === 'faults' ? follow(document.extends) : undefined,
    student: kind === 'swing' ? follow(document.student) : undefined,
    date: kind === 'swing' ? document.date?.value : undefined,
    club: kind === 'swing' ? document.club?.value : undefined,
    title: titleOf(document),
    faults: new Map(
      kind === 'faults'
        ? [...document.faults].map(([id, fault]) => [id, { id: fault.id, title: fault.title }])
        : [],
    ),
  };
}

function titleOf(document: SwingwrightDocument): Located<string> | undefined {
  if (document.kind === 'student') return document.name;
  if (document.kind !== 'template' || document.title === undefined) return undefined;
  const node = document.outline.find(({ name }) => name === 'title');
  return node && { value: document.title, span: node.span };
}

function isSameHome(a: Home, b: Home): boolean {
  return a.registry === b.registry && a.workspace === b.workspace;
}

function keptCard(uri: string, text: string, home: Home, cards: CardCache): Card {
  const card = cardOf(uri, parseDocument(kindOf(uri) ?? 'review', text, home.registry), home);
  cards.set(uri, card);
  return card;
}

type Homes = (uri: string) => Promise<Home>;

/** What can be measured in each folder, by the workspace files in it and above, each read once. */
function homesIn(archive: Archive): Homes {
  const states = new Map<string, Promise<FileState | undefined>>();
  const folders = new Map<string, Promise<Home>>();
  const find = async (uri: string): Promise<Home> => {
    const known = new Map<string, FileState | undefined>();
    for (const candidate of workspaceCandidates(uri)) {
      const state = states.get(candidate) ?? stateOf(candidate, archive);
      states.set(candidate, state);
      known.set(candidate, (await state) ?? { kind: 'missing' });
      if (known.get(candidate)?.kind !== 'missing') break;
    }
    const { own, workspace } = findWorkspace(uri, lookoutOver({ file: (at) => known.get(at) }), undefined);
    return { registry: own.registry, workspace: workspace?.uri };
  };
  return (uri) => {
    // The workspace file itself is what a registry comes from.
    if (kindOf(uri) === 'workspace') return Promise.resolve({ registry: builtIn, workspace: uri });
    const folder = uri.slice(0, uri.lastIndexOf('/'));
    const home = folders.get(folder) ?? find(uri);
    folders.set(folder, home);
    return home;
  };
}

async function stateOf(uri: string, { files, load }: Archive): Promise<FileState | undefined> {
  return files.get(uri) ?? (await load(uri).catch(() => undefined));
}

/** YAML may break a text between words, and in double quotes write any letter as a number. */
function mayHold(uri: string, text: string, word: string | undefined): boolean {
  if (word === undefined || kindOf(uri) === 'faults' || text.includes('\\')) return true;
  const longest = word.split(/\s+/).reduce((one, other) => (other.length > one.length ? other : one), '');
  return text.includes(longest);
}
