// The extension's entry where a browser runs it: the server is a web worker, and there is no Node.
import * as vscode from 'vscode';
import {
  BrowserMessageReader,
  BrowserMessageWriter,
  LanguageClient,
  type MessageTransports,
} from 'vscode-languageclient/browser';
import { runClient } from './activation.ts';

// The project's types know Node only; this is all of a worker that is needed here.
interface WorkerHandle {
  readonly postMessage: (message: unknown) => void;
  readonly terminate: () => void;
}
declare const Worker: new (address: string, options: { readonly name: string }) => WorkerHandle;

export async function activate(context: vscode.ExtensionContext): Promise<void> {
  const script = vscode.Uri.joinPath(context.extensionUri, 'dist', 'web', 'server.js');
  let worker: WorkerHandle | undefined;
  // A worker does not end by itself when the server in it has stopped.
  const end = (): void => worker?.terminate();
  context.subscriptions.push({ dispose: end });
  // The editor puts a `Worker` of its own in the place of the browser's, which the client would not know again: it is
  // given the messages only.
  const start = async (): Promise<MessageTransports> => {
    end();
    worker = await startWorker(script);
    return { reader: new BrowserMessageReader(worker), writer: new BrowserMessageWriter(worker) };
  };
  await runClient(
    context,
    (options) => Promise.resolve(new LanguageClient('swingwright', 'Swingwright', start, options)),
    ['html'],
  );
}

/**
 * A worker can be started from the web, but not from the other places where an extension may lie (another machine, a
 * virtual file system): there the script is read through the editor and handed over as it is.
 */
async function startWorker(script: vscode.Uri): Promise<WorkerHandle> {
  const options = { name: 'Swingwright language server' };
  if (script.scheme === 'http' || script.scheme === 'https')
    return new Worker(script.toString(true), options);
  const bytes = await vscode.workspace.fs.readFile(script);
  const address = URL.createObjectURL(new Blob([Uint8Array.from(bytes)], { type: 'text/javascript' }));
  return new Worker(address, options);
}
