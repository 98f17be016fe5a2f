// Wires a connection to the language floor: which request is answered by which function; the same in Node and in a web worker.
import {
  DidChangeConfigurationNotification,
  DidChangeWatchedFilesNotification,
  FileChangeType,
  LSPErrorCodes,
  ResponseError,
  TextDocuments,
  TextDocumentSyncKind,
  type CancellationToken,
  type Connection,
  type InitializeResult,
} from 'vscode-languageserver';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { URI } from 'vscode-uri';
import {
  findCompletions,
  findDiagnostics,
  findHints,
  findLinks,
  findSymbols,
  nextSymbols,
} from '../language/index.ts';
import { actionKinds, serveActions } from './actions.ts';
import { createDesk, type Result } from './desk.ts';
import { createFiles } from './files.ts';
import { introduced, type Client } from './client.ts';
import { mutable } from './mutable.ts';
import { answerNewFiles } from './new-files.ts';
import { nextAtRest } from './next.ts';
import { calibrateIn } from './calibrate.ts';
import { surroundingsOf } from './completion.ts';
import { signalOf } from './signal.ts';
import { serveBesidePages } from './beside-pages.ts';
import { serveHandouts, type Print } from './handout.ts';
import { serveExplanations } from './explain.ts';
import { serveHover } from './hover.ts';
import { navigationCapabilities, serveNavigation } from './navigation.ts';
import { refreshLenses, serveOutcome } from './outcome.ts';
import { serveProposals } from './propose.ts';
import { createRoots } from './roots.ts';
import { serveReview } from './review.ts';
import { serveSheet } from './sheet.ts';
import { analysedNotification, type AnalysedParams } from './sheet-protocol.ts';
import {
  calibrateRequest,
  filePatterns,
  gitSetupRequest,
  listRequest,
  noGit,
  readRequest,
  type CalibrateParams,
  type FileState,
  type GitSetupParams,
  type GitSetupResult,
} from './protocol.ts';
import { createSettingCache } from './setting-cache.ts';
import { hintsSection, hoversSection, readHints, readHovers } from './settings.ts';

/** How files are read and found where the client does not answer `swingwright/read` and `swingwright/list`. */
export interface Disk {
  readonly read: (uri: string) => Promise<FileState>;
  readonly list: (folder: string) => Promise<readonly string[]>;
  /** Undefined where there is no git to be set up, as in a browser. */
  readonly setUpGit?: (folder: string) => Promise<GitSetupResult>;
}

/** Milliseconds without a keystroke before findings are shown: shorter than a person notices, longer than a fast typist's gap. */
const pause = 60;

/** Serves one editor until the connection ends. */
export function serve(connection: Connection, disk: Disk, print?: Print): void {
  let client: Client = introduced({ capabilities: {} });
  const documents = new TextDocuments(TextDocument);
  /** Open documents by the one spelling of their URI that the analysis knows; clients may use others. */
  const open = new Map<string, TextDocument>();
  const isAnswered = (): boolean => client.configuration;
  const settings = {
    hints: createSettingCache(connection, isAnswered, hintsSection, readHints),
    hovers: createSettingCache(connection, isAnswered, hoversSection, readHovers),
  };

  const files = createFiles({
    openText: (uri) => open.get(uri)?.getText(),
    openUris: () => open.keys(),
    read: (uri) => (client.reads ? connection.sendRequest<FileState>(readRequest, { uri }) : disk.read(uri)),
    list: (folder) =>
      client.lists ? connection.sendRequest<readonly string[]>(listRequest, { folder }) : disk.list(folder),
  });
  const roots = createRoots(connection, normal);
  const explanation = (code: string): string | undefined =>
    client.explanations?.replace('{code}', encodeURIComponent(code));
  const desk = createDesk({
    files,
    versionOf: (uri) => open.get(uri)?.version,
    publish: ({ uri, version, analysis }, cause) => {
      const diagnostics = findDiagnostics(analysis, explanation);
      void connection.sendDiagnostics({
        uri: open.get(uri)?.uri ?? uri,
        version,
        diagnostics: mutable(diagnostics),
      });
      if (client.sheets) {
        const params: AnalysedParams = { uri: open.get(uri)?.uri ?? uri };
        connection.sendNotification(analysedNotification, params).catch(report);
      }
      if (cause !== uri && client.refreshesHints) connection.languages.inlayHint.refresh().catch(report);
      if (open.size > 1) refreshLenses(connection, client).catch(report);
    },
    report,
    pause,
  });

  connection.onInitialize((params) => {
    client = introduced(params);
    roots.start(params);
    return {
      ...served,
      capabilities: { ...served.capabilities, ...navigationCapabilities(params.capabilities) },
    };
  });
  connection.onInitialized(() => {
    roots.listen();
    if (client.registersConfiguration)
      connection.client
        .register(DidChangeConfigurationNotification.type, { section: [hintsSection, hoversSection] })
        .catch(report);
    if (client.registersWatchers)
      connection.client
        .register(DidChangeWatchedFilesNotification.type, {
          watchers: filePatterns.map((globPattern) => ({ globPattern })),
        })
        .catch(report);
  });
  connection.onShutdown(() => desk.dispose());

  documents.onDidChangeContent(({ document }) => {
    open.set(normal(document.uri), document);
    desk.changed(normal(document.uri));
  });
  documents.onDidClose(({ document }) => {
    const uri = normal(document.uri);
    open.delete(uri);
    for (const cache of Object.values(settings)) cache.forget(uri);
    files.forget(uri);
    desk.closed(uri);
    void connection.sendDiagnostics({ uri: document.uri, diagnostics: [] });
    desk.changed(uri);
  });
  connection.onDidChangeWatchedFiles(({ changes }) => {
    if (changes.some(({ type }) => type !== FileChangeType.Changed)) files.forgetLists();
    for (const { uri } of changes) {
      files.forget(normal(uri));
      desk.changed(normal(uri));
    }
    refreshLenses(connection, client).catch(report);
  });
  connection.onDidChangeConfiguration(() => {
    for (const cache of Object.values(settings)) cache.forgetAll();
    if (client.refreshesHints) connection.languages.inlayHint.refresh().catch(report);
  });

  connection.onCompletion(async ({ textDocument, position }, token) => {
    const result = await answer(textDocument.uri, token, (found) => found);
    if (result === null) return null;
    const around = await surroundingsOf(result.analysis, files, [roots.holding(result.analysis)], new Date());
    const { proposesSnippets: snippets, asksAgain } = client;
    return mutable(findCompletions(result.analysis, { ...around, position, snippets, asksAgain }));
  });
  connection.onDocumentSymbol(async ({ textDocument }, token) => {
    const next = await nextAtRest(desk, normal(textDocument.uri), signalOf(token));
    return answer(textDocument.uri, token, ({ analysis }) =>
      mutable([...findSymbols(analysis), ...nextSymbols(analysis, next)]),
    );
  });
  connection.onDocumentLinks(({ textDocument }, token) =>
    answer(textDocument.uri, token, ({ analysis }) => findLinks(analysis)),
  );
  connection.languages.inlayHint.on(async ({ textDocument, range }, token) => {
    const switches = await settings.hints.of(normal(textDocument.uri));
    return answer(textDocument.uri, token, ({ analysis }) => mutable(findHints(analysis, range, switches)));
  });
  serveExplanations({ connection, openUris: () => open.keys(), answer });
  answerNewFiles(connection, files);
  connection.onRequest(calibrateRequest, (params: CalibrateParams, token: CancellationToken) =>
    calibrateIn(params, files, signalOf(token)),
  );

  const serving = { connection, files, desk, client: () => client, answer, signalOf };
  serveHover({ ...serving, settings: settings.hovers, normal });
  serveActions({ ...serving, normal, explanation });
  serveOutcome(serving);
  serveBesidePages({ ...serving, normal });
  serveHandouts({ ...serving, normal, print });
  connection.onRequest(gitSetupRequest, async ({ folder }: GitSetupParams): Promise<GitSetupResult> => {
    if (disk.setUpGit !== undefined) return disk.setUpGit(folder);
    return { kind: 'refused', words: [noGit] };
  });
  serveProposals(serving);
  serveSheet(serving);
  serveReview(serving);
  serveNavigation({
    connection,
    files,
    desk,
    roots,
    openAt: (uri) => open.get(uri),
    answer,
    signalOf,
    normal,
    pageAddress: (name, record) =>
      client.pages
        ?.replace('{name}', encodeURIComponent(name))
        .concat(record === undefined ? '' : `?${encodeURIComponent(record)}`),
    capabilities: () => client.capabilities,
  });

  documents.listen(connection);
  connection.listen();

  /** Answers from the analysis of the version that the client sees now, or says that there is none such any more. */
  async function answer<T>(
    uri: string,
    token: CancellationToken,
    give: (result: Result) => T,
  ): Promise<Awaited<T> | null> {
    if (!open.has(normal(uri))) return null;
    let result: Result | undefined;
    try {
      result = await desk.current(normal(uri), signalOf(token));
    } catch (error) {
      if (token.isCancellationRequested)
        throw new ResponseError(LSPErrorCodes.RequestCancelled, 'Cancelled.');
      throw error;
    }
    if (result === undefined)
      throw new ResponseError(
        LSPErrorCodes.ContentModified,
        'The document changed before the answer was ready.',
      );
    try {
      return await give(result);
    } catch (error) {
      if (!token.isCancellationRequested) throw error;
      throw new ResponseError(LSPErrorCodes.RequestCancelled, 'Cancelled.');
    }
  }

  function report(error: unknown): void {
    connection.console.error(error instanceof Error ? (error.stack ?? error.message) : String(error));
  }
}

const served: InitializeResult = {
  serverInfo: { name: 'swingwright' },
  capabilities: {
    textDocumentSync: { openClose: true, change: TextDocumentSyncKind.Incremental },
    hoverProvider: true,
    completionProvider: { triggerCharacters: [' ', '[', '{', '.', '/'] },
    documentSymbolProvider: true,
    documentLinkProvider: {},
    codeActionProvider: { codeActionKinds: [...actionKinds] },
    inlayHintProvider: true,
    codeLensProvider: {},
  },
};

function normal(uri: string): string {
  return URI.parse(uri).toString();
}
