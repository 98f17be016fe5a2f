// Answers requests that lead from one file to others: definitions, references, renaming, symbols of the workspace; and what goes with them.
import {
  LSPErrorCodes,
  ResponseError,
  type CancellationToken,
  type ClientCapabilities,
  type Connection,
  type ServerCapabilities,
} from 'vscode-languageserver';
import type { Archive, Card, CardCache } from '../analysis/cards.ts';
import { cardsOf } from '../analysis/cards.ts';
import type { Mention } from '../analysis/mentions.ts';
import { wordOf } from '../analysis/occurrences.ts';
import type { Analysis } from '../analysis/result.ts';
import {
  findDefinitions,
  findFoldingRanges,
  findHighlights,
  findMention,
  findOccurrences,
  findRename,
  findRenamed,
  findSelectionRanges,
  cardName,
  findWorkspaceSymbols,
  prepareRename,
  type PageAddress,
  type Refusal,
} from '../language/index.ts';
import { lessonStates } from '../analysis/lesson-state.ts';
import { kindOf } from '../record/kind.ts';
import type { Desk, Result } from './desk.ts';
import type { Files } from './files.ts';
import { lessonsRequest, studentsRequest, type LessonsParams, type ListedStudent } from './protocol.ts';
import type { Roots } from './roots.ts';

export interface NavigationOptions {
  readonly connection: Connection;
  readonly files: Files;
  readonly desk: Desk;
  readonly roots: Roots;
  /** An open document as the client calls it, with its version. */
  readonly openAt: (uri: string) => { readonly uri: string; readonly version: number } | undefined;
  readonly answer: <T>(
    uri: string,
    token: CancellationToken,
    give: (result: Result) => T,
  ) => Promise<Awaited<T> | null>;
  readonly signalOf: (token: CancellationToken) => AbortSignal;
  /** The one spelling of a URI that the analysis knows. */
  readonly normal: (uri: string) => string;
  readonly pageAddress: PageAddress;
  readonly capabilities: () => ClientCapabilities;
}

export function navigationCapabilities({ textDocument }: ClientCapabilities): ServerCapabilities {
  return {
    definitionProvider: true,
    referencesProvider: true,
    documentHighlightProvider: true,
    foldingRangeProvider: true,
    selectionRangeProvider: true,
    workspaceSymbolProvider: true,
    renameProvider: textDocument?.rename?.prepareSupport === true ? { prepareProvider: true } : true,
    workspace: { workspaceFolders: { supported: true, changeNotifications: true } },
  };
}

/** A file that changes while it is renamed in is read again, so often. */
const mostRounds = 3;

export function serveNavigation(options: NavigationOptions): void {
  const { connection, files, desk, roots, openAt, answer, signalOf, normal, pageAddress, capabilities } =
    options;
  const cards: CardCache = new Map();
  const spelled = (uri: string): string => openAt(uri)?.uri ?? uri;

  const archiveFor = (token: CancellationToken): Archive => ({
    files,
    load: files.load,
    signal: signalOf(token),
    rest,
    cards,
  });

  /** The cards of all files of the workspace, those that cannot hold the word aside, and of those that this file leads to. */
  const look = async (
    of: Analysis | undefined,
    token: CancellationToken,
    word?: string,
  ): Promise<readonly Card[]> => {
    const folders = roots.around(of);
    const listed = await Promise.all(folders.map((folder) => files.list(folder)));
    const uris = new Set([...(of?.used ?? []), ...listed.flat()]);
    try {
      return await cardsOf([...uris], archiveFor(token), word);
    } catch (error) {
      if (token.isCancellationRequested)
        throw new ResponseError(LSPErrorCodes.RequestCancelled, 'Cancelled.');
      throw error;
    }
  };
  const near = ({ used }: Analysis, token: CancellationToken): Promise<readonly Card[]> =>
    cardsOf(used, archiveFor(token));

  connection.onDefinition(({ textDocument, position }, token) =>
    answer(textDocument.uri, token, ({ analysis }) => {
      const links = findDefinitions(analysis, position, pageAddress).map((link) => ({
        ...link,
        targetUri: spelled(link.targetUri),
      }));
      return capabilities().textDocument?.definition?.linkSupport === true
        ? links
        : links.map(({ targetUri, targetSelectionRange }) => ({
            uri: targetUri,
            range: targetSelectionRange,
          }));
    }),
  );
  connection.onReferences(({ textDocument, position, context }, token) =>
    answer(textDocument.uri, token, async ({ analysis }) => {
      const mention = findMention(analysis, position);
      if (mention === undefined) return [];
      const found = findOccurrences(mention, await look(analysis, token, wordOf(mention.thing)), context);
      return found.map(({ uri, range }) => ({ uri: spelled(uri), range }));
    }),
  );
  connection.onDocumentHighlight(({ textDocument, position }, token) =>
    answer(textDocument.uri, token, ({ analysis }) => findHighlights(analysis, position)),
  );
  connection.onFoldingRanges(({ textDocument }, token) =>
    answer(textDocument.uri, token, ({ analysis }) => findFoldingRanges(analysis)),
  );
  connection.onSelectionRanges(({ textDocument, positions }, token) =>
    answer(textDocument.uri, token, ({ analysis }) => findSelectionRanges(analysis, positions)),
  );
  connection.onPrepareRename(({ textDocument, position }, token) =>
    answer(textDocument.uri, token, async ({ analysis }) =>
      orRefuse(prepareRename(analysis, findRenamed(analysis, position), await near(analysis, token))),
    ),
  );
  connection.onRenameRequest(({ textDocument, position, newName }, token) =>
    answer(textDocument.uri, token, async ({ analysis }) => {
      const mention = findRenamed(analysis, position);
      return orRefuse(await renameEverywhere(mention, newName, analysis, token));
    }),
  );
  connection.onWorkspaceSymbol(async ({ query }, token) =>
    findWorkspaceSymbols(await look(undefined, token), query).map((symbol) => ({
      ...symbol,
      location: { ...symbol.location, uri: spelled(symbol.location.uri) },
    })),
  );

  connection.onRequest(
    studentsRequest,
    async (_: object, token: CancellationToken): Promise<ListedStudent[]> => {
      const listed = await Promise.all(roots.around(undefined).map((folder) => files.list(folder)));
      const students = [...new Set(listed.flat())].filter((uri) => kindOf(uri) === 'student');
      const found = await cardsOf(students, archiveFor(token));
      return found
        .filter(({ kind }) => kind === 'student')
        .map((card) => ({ uri: spelled(card.uri), name: cardName(card) }))
        .sort((a, b) => a.name.localeCompare(b.name, 'en') || (a.uri < b.uri ? -1 : 1));
    },
  );
  connection.onRequest(lessonsRequest, async ({ uri }: LessonsParams, token: CancellationToken) => {
    const lessons = await desk.lessons(normal(uri), signalOf(token));
    return lessons === undefined
      ? null
      : lessonStates(lessons).map((state) => ({ ...state, uri: spelled(state.uri) }));
  });

  /** Edits of closed files carry no version that an editor could check: such files are read anew before edits are given out. */
  async function renameEverywhere(
    mention: Mention | undefined,
    name: string,
    analysis: Analysis,
    token: CancellationToken,
  ) {
    const word = mention === undefined ? '' : wordOf(mention.thing);
    for (let round = 0; round < mostRounds; round += 1) {
      const seen = await look(analysis, token, word);
      const edit = findRename(mention, name, seen, (uri) => openAt(uri)?.version ?? null);
      if ('refused' in edit) return edit;
      const uris = edit.documentChanges.map(({ textDocument: { uri } }) => uri);
      const states = await Promise.all(uris.map(fresh));
      const isSame = states.every((state, place) => {
        const card = seen.find(({ uri }) => uri === uris[place]);
        return state.kind === 'text' && state.text === card?.text;
      });
      if (!isSame) continue;
      return {
        documentChanges: edit.documentChanges.map(({ textDocument, edits }) => ({
          textDocument: { ...textDocument, uri: spelled(textDocument.uri) },
          edits: [...edits],
        })),
      };
    }
    throw new ResponseError(LSPErrorCodes.ContentModified, 'Files changed before the answer was ready.');
  }

  function fresh(uri: string) {
    if (openAt(uri) === undefined) files.forget(uri);
    return files.load(uri);
  }
}

function orRefuse<T extends object>(answer: T | Refusal): T {
  if ('refused' in answer) throw new ResponseError(LSPErrorCodes.RequestFailed, answer.refused);
  return answer;
}

/** So long that whatever came in meanwhile, a cancellation for one, has its turn. */
function rest(): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, 0));
}
