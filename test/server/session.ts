// A client and the server joined in memory, with files of its own, for tests that speak the real protocol.
import { PassThrough } from 'node:stream';
import {
  createConnection,
  createProtocolConnection,
  StreamMessageReader,
  StreamMessageWriter,
  type ClientCapabilities,
  type ProtocolConnection,
  type PublishDiagnosticsParams,
} from 'vscode-languageserver/node';
import type { FileState } from '../../src/analysis/result.ts';
import { serve } from '../../src/server/connection.ts';
import {
  listRequest,
  readRequest,
  type ListParams,
  type InitializationOptions,
  type ReadParams,
} from '../../src/server/protocol.ts';

export const folder = 'file:///lessons/';

export interface Session {
  readonly connection: ProtocolConnection;
  /** Everything that the server published, in order. */
  readonly published: PublishDiagnosticsParams[];
  /** URIs that the server asked the client for, in order. */
  readonly read: string[];
  /** Settles once the server has asked for fresh hints this often. */
  readonly hintsRefreshed: (times: number) => Promise<void>;
  /** Files that are not open; change it and tell the server with `touch`. */
  readonly files: Map<string, string>;
  /** Holds back every answer to a read until called. */
  readonly slow: (wait: () => Promise<void>) => void;
  readonly configure: (settings: unknown) => Promise<void>;
  readonly open: (name: string, text: string, version?: number) => Promise<string>;
  readonly change: (name: string, text: string, version: number) => Promise<void>;
  readonly close: (name: string) => Promise<void>;
  readonly touch: (name: string) => Promise<void>;
  /** The next diagnostics for the file that satisfy `wanted`, past ones included. */
  readonly diagnostics: (
    name: string,
    wanted?: (params: PublishDiagnosticsParams) => boolean,
  ) => Promise<PublishDiagnosticsParams>;
  readonly end: () => Promise<void>;
}

export async function startSession(
  files: Readonly<Record<string, string>> = {},
  capabilities: ClientCapabilities = everything,
  options: InitializationOptions = {},
): Promise<Session> {
  const toServer = new PassThrough();
  const toClient = new PassThrough();
  // The stream's reader and writer are given, so that the end of a session does not end the process.
  serve(createConnection(new StreamMessageReader(toServer), new StreamMessageWriter(toClient)), {
    read: () => Promise.resolve({ kind: 'missing' }),
    list: () => Promise.resolve([]),
  });
  const connection = createProtocolConnection(
    new StreamMessageReader(toClient),
    new StreamMessageWriter(toServer),
  );

  const store = new Map(Object.entries(files).map(([name, text]) => [folder + name, text]));
  const published: PublishDiagnosticsParams[] = [];
  const waiting = new Set<() => void>();
  const read: string[] = [];
  let refreshes = 0;
  let settings: unknown = {};
  let wait = (): Promise<void> => Promise.resolve();

  connection.onNotification('textDocument/publishDiagnostics', (params: PublishDiagnosticsParams) => {
    published.push(params);
    for (const wake of waiting) wake();
  });
  connection.onRequest(readRequest, async ({ uri }: ReadParams): Promise<FileState> => {
    read.push(uri);
    await wait();
    const text = store.get(uri);
    return text === undefined ? { kind: 'missing' } : { kind: 'text', text };
  });
  connection.onRequest(listRequest, ({ folder: at }: ListParams) =>
    [...store.keys()].filter((uri) => uri.startsWith(`${at}/`)),
  );
  connection.onRequest('workspace/inlayHint/refresh', () => {
    refreshes += 1;
    for (const wake of waiting) wake();
    return null;
  });
  connection.onRequest('workspace/configuration', ({ items }: { items: unknown[] }) =>
    items.map(() => settings),
  );
  connection.onRequest('client/registerCapability', () => null);
  connection.listen();
  await connection.sendRequest('initialize', {
    processId: null,
    rootUri: folder.slice(0, -1),
    capabilities,
    initializationOptions: { reads: true, lists: true, explanations: 'explanation:{code}', ...options },
  });
  await connection.sendNotification('initialized', {});

  const found = (
    uri: string,
    wanted: (params: PublishDiagnosticsParams) => boolean,
  ): PublishDiagnosticsParams | undefined =>
    published.findLast((params) => params.uri === uri && wanted(params));

  return {
    connection,
    published,
    read,
    hintsRefreshed: (times) =>
      new Promise((resolve) => {
        const look = (): void => {
          if (refreshes < times) return;
          waiting.delete(look);
          resolve();
        };
        waiting.add(look);
        look();
      }),
    files: store,
    slow: (next) => {
      wait = next;
    },
    configure: async (next) => {
      settings = next;
      await connection.sendNotification('workspace/didChangeConfiguration', { settings: null });
    },
    open: async (name, text, version = 1) => {
      const uri = folder + name;
      const textDocument = { uri, languageId: 'swing-yaml', version, text };
      await connection.sendNotification('textDocument/didOpen', { textDocument });
      return uri;
    },
    change: (name, text, version) =>
      connection.sendNotification('textDocument/didChange', {
        textDocument: { uri: folder + name, version },
        contentChanges: [{ text }],
      }),
    close: (name) =>
      connection.sendNotification('textDocument/didClose', { textDocument: { uri: folder + name } }),
    touch: (name) =>
      connection.sendNotification('workspace/didChangeWatchedFiles', {
        changes: [{ uri: folder + name, type: 2 }],
      }),
    diagnostics: (name, wanted = () => true) =>
      new Promise((resolve) => {
        const look = (): void => {
          const params = found(folder + name, wanted);
          if (params === undefined) return;
          waiting.delete(look);
          resolve(params);
        };
        waiting.add(look);
        look();
      }),
    end: async () => {
      await connection.sendRequest('shutdown');
      connection.end();
      connection.dispose();
    },
  };
}

const everything: ClientCapabilities = {
  workspace: {
    configuration: true,
    didChangeConfiguration: { dynamicRegistration: true },
    inlayHint: { refreshSupport: true },
    workspaceEdit: { documentChanges: true, snippetEditSupport: true },
  },
  textDocument: { rename: { prepareSupport: true } },
};
