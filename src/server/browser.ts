// The server's entry in a web worker: one connection over the worker's messages; files come from the client alone.
import { BrowserMessageReader, BrowserMessageWriter, createConnection } from 'vscode-languageserver/browser';
import { serve } from './connection.ts';

// The worker's own scope is the only thing that is taken from the browser, so its types are named here and not for the whole project.
type WorkerScope = ConstructorParameters<typeof BrowserMessageReader>[0];
const scope = globalThis as unknown as WorkerScope;

serve(createConnection(new BrowserMessageReader(scope), new BrowserMessageWriter(scope)), () =>
  Promise.resolve({ kind: 'unreadable', reason: 'the editor does not hand its files to the server' }),
);
