// The server's entry in a web worker: one connection over the worker's messages; files come from the client alone.
import { BrowserMessageReader, BrowserMessageWriter, createConnection } from 'vscode-languageserver/browser';
import { serve } from './connection.ts';

serve(createConnection(new BrowserMessageReader(globalThis), new BrowserMessageWriter(globalThis)), {
  read: () =>
    Promise.resolve({ kind: 'unreadable', reason: 'the editor does not hand its files to the server' }),
  list: () => Promise.resolve([]),
});
