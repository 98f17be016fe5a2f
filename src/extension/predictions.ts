// Opens the other record of a lens at its place, and shows the page on how good the predictions of a folder have been.
import * as vscode from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';
import { predictionsRequest, type PredictionsParams } from '../server/protocol.ts';

export const openCommand = 'swingwright.openPlace';
const scheme = 'swingwright-predictions';

interface Place {
  readonly line: number;
  readonly character: number;
}

export function registerPredictions(client: BaseLanguageClient): vscode.Disposable {
  const changed = new vscode.EventEmitter<vscode.Uri>();
  const provider: vscode.TextDocumentContentProvider = {
    onDidChange: changed.event,
    provideTextDocumentContent: ({ query }) =>
      client.sendRequest<string>(predictionsRequest, { folder: query } satisfies PredictionsParams),
  };
  return vscode.Disposable.from(
    changed,
    vscode.workspace.registerTextDocumentContentProvider(scheme, provider),
    vscode.commands.registerCommand(openCommand, openPlace),
    vscode.commands.registerCommand('swingwright.showPredictions', async () => {
      const folder = await chooseFolder();
      if (folder === undefined) return;
      const page = vscode.Uri.from({ scheme, path: '/predictions.md', query: folder.toString() });
      changed.fire(page);
      await showPage(page);
    }),
  );
}

async function openPlace(uri: unknown, range: unknown): Promise<void> {
  if (typeof uri !== 'string' || !isRange(range)) return;
  const { start, end } = range;
  const selection = new vscode.Range(start.line, start.character, end.line, end.character);
  await vscode.window.showTextDocument(vscode.Uri.parse(uri, true), { selection });
}

function isRange(range: unknown): range is { readonly start: Place; readonly end: Place } {
  if (typeof range !== 'object' || range === null) return false;
  const { start, end } = range as { start?: unknown; end?: unknown };
  return isPlace(start) && isPlace(end);
}

function isPlace(place: unknown): place is Place {
  if (typeof place !== 'object' || place === null) return false;
  const { line, character } = place as { line?: unknown; character?: unknown };
  return typeof line === 'number' && typeof character === 'number';
}

async function chooseFolder(): Promise<vscode.Uri | undefined> {
  const folders = vscode.workspace.workspaceFolders ?? [];
  if (folders.length > 1) return (await vscode.window.showWorkspaceFolderPick())?.uri;
  if (folders[0] === undefined)
    void vscode.window.showInformationMessage(vscode.l10n.t('Open a folder with records first.'));
  return folders[0]?.uri;
}

async function showPage(uri: vscode.Uri): Promise<void> {
  try {
    await vscode.commands.executeCommand('markdown.showPreview', uri);
  } catch {
    // The preview belongs to an extension that can be turned off; the page reads well without it.
    await vscode.window.showTextDocument(uri, { preview: true });
  }
}
