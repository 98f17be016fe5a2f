// The extension's entry where a browser runs it: the server is a web worker, and there is no Node.
import * as vscode from 'vscode';
import { LanguageClient } from 'vscode-languageclient/browser';
import { runClient } from './activation.ts';

// The project's types know Node only; all that happens to a worker here is that the language client takes it.
type WorkerHandle = Extract<ConstructorParameters<typeof LanguageClient>[2], { postMessage: unknown }>;
declare const Worker: new (address: string, options: { readonly name: string }) => WorkerHandle;

export async function activate(context: vscode.ExtensionContext): Promise<void> {
  const script = vscode.Uri.joinPath(context.extensionUri, 'dist', 'web', 'server.js');
  await runClient(context, (options) =>
    Promise.resolve(new LanguageClient('swingwright', 'Swingwright', () => startWorker(script), options)),
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
