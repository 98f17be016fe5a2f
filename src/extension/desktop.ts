// The extension's entry where Node runs it: the server is a Node process of its own.
import type * as vscode from 'vscode';
import { LanguageClient, TransportKind } from 'vscode-languageclient/node';
import { runClient } from './activation.ts';

export async function activate(context: vscode.ExtensionContext): Promise<void> {
  const module = context.asAbsolutePath('dist/server.cjs');
  await runClient(
    context,
    (options) =>
      Promise.resolve(
        new LanguageClient(
          'swingwright',
          'Swingwright',
          {
            run: { module, transport: TransportKind.ipc },
            debug: {
              module,
              transport: TransportKind.ipc,
              options: { execArgv: ['--nolazy', '--inspect=6019'] },
            },
          },
          options,
        ),
      ),
    ['pdf', 'html'],
  );
}
