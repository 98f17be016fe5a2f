// Starts the language client and all that hangs on it; the same wherever the extension runs.
import * as vscode from 'vscode';
import type { BaseLanguageClient, LanguageClientOptions } from 'vscode-languageclient';
import {
  listRequest,
  readRequest,
  filePatterns,
  type InitializationOptions,
  type ListParams,
  type ReadParams,
} from '../server/protocol.ts';
import type { HandoutFormat } from '../server/handout-protocol.ts';
import { listenForAnalyses } from './analysed.ts';
import { registerBesidePages } from './beside-pages.ts';
import { registerHandouts } from './handout.ts';
import { registerCalibration } from './calibration.ts';
import { registerGitSetup } from './git-setup.ts';
import { explainCommand, pageAddress, registerExplanations, whyCommand } from './explanations.ts';
import { listFiles, readFile } from './files.ts';
import { registerNextEmpty } from './next-empty.ts';
import { createPages } from './pages.ts';
import { openCommand, registerPredictions } from './predictions.ts';
import { proposeCommand, registerProposals } from './propose.ts';
import { registerLessons } from './lessons.ts';
import { listenForReviewChanges } from './review-changes.ts';
import { registerReviewComments } from './review-comments.ts';
import { registerRevisions } from './revisions.ts';
import { registerSheet } from './sheet.ts';
import { registerSample } from './sample.ts';
import { registerNewFiles } from './new-files.ts';
import { registerStatus } from './status.ts';
import { registerStatusBar } from './status-bar.ts';
import { registerTheme, themeInFront } from './theme.ts';

export const language = 'swing-yaml';

/** Makes a client for this place, starts it, and stops it when the extension is left. */
export async function runClient(
  context: vscode.ExtensionContext,
  createClient: (options: LanguageClientOptions) => Promise<BaseLanguageClient>,
  handoutFormats: readonly HandoutFormat[],
): Promise<void> {
  const output = vscode.window.createOutputChannel('Swingwright', { log: true });
  const watchers = filePatterns.map((pattern) => vscode.workspace.createFileSystemWatcher(pattern));
  const toldOf = new vscode.EventEmitter<vscode.Uri>();
  // Asked for at each start, since the theme may have changed meanwhile.
  const initializationOptions = (): InitializationOptions => ({
    reads: true,
    lists: true,
    watches: true,
    asksAgain: true,
    sheets: true,
    hoverPictures: themeInFront(),
    explanations: `command:${explainCommand}?${encodeURIComponent('["')}{code}${encodeURIComponent('"]')}`,
    quantities: `command:${whyCommand}?{arguments}`,
    pages: pageAddress,
    opener: openCommand,
    proposer: proposeCommand,
  });
  const client = await createClient({
    documentSelector: [{ language }],
    synchronize: { fileEvents: watchers },
    initializationOptions,
    outputChannel: output,
    middleware: {
      workspace: {
        didChangeWatchedFile: async (event, next) => {
          await next(event);
          toldOf.fire(vscode.Uri.parse(event.uri, true));
        },
      },
    },
    // The one command that a hover may run: it only shows a page.
    markdown: { isTrusted: { enabledCommands: [whyCommand] } },
  });
  client.onRequest(listRequest, ({ folder }: ListParams) => listFiles(vscode.Uri.parse(folder, true)));
  client.onRequest(readRequest, ({ uri }: ReadParams) => readFile(vscode.Uri.parse(uri, true)));
  const pages = createPages(client, context.workspaceState);
  const analyses = listenForAnalyses(client);
  const reviewChanges = listenForReviewChanges(analyses, toldOf.event);
  context.subscriptions.push(
    output,
    ...watchers,
    toldOf,
    client,
    analyses,
    reviewChanges,
    registerCalibration(client),
    registerGitSetup(client),
    registerExplanations(client),
    registerPredictions(client),
    pages.restoring,
    registerBesidePages(client, pages),
    registerHandouts(client, pages, handoutFormats),
    registerRevisions(client, pages),
    registerProposals(client),
    registerSheet(client, analyses, context.extensionUri),
    registerReviewComments(client, reviewChanges),
    registerLessons(client, watchers),
    registerSample(context.extensionUri),
    registerNewFiles(client),
    registerNextEmpty(),
    registerStatus(client),
    registerStatusBar(client, reviewChanges),
    registerTheme(client),
    vscode.commands.registerCommand('swingwright.restartServer', () => restart(client)),
    vscode.commands.registerCommand('swingwright.showOutput', () => output.show()),
  );
  // Not awaited, so that the editor need not wait for the server; requests wait until it is up.
  client.start().catch((error: unknown) => output.error(String(error)));
}

async function restart(client: BaseLanguageClient): Promise<void> {
  if (client.needsStop()) await client.stop();
  await client.start();
}
