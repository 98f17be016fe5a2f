// The sheet beside a record: one panel a record, kept up to date, with clicks to the text and the cursor back; draws nothing.
import * as vscode from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';
import type { TextRange } from '../language/shapes.ts';
import type { FromSheet, ToSheet } from '../panel/sheet-messages.ts';
import {
  sheetRequest,
  whatIfRequest,
  writeWhatIfRequest,
  type Move,
  type Sheet,
  type SheetParams,
  type WhatIfAnswer,
  type WhatIfParams,
  type WriteWhatIfParams,
  type WriteWhatIfResult,
} from '../server/sheet-protocol.ts';
import type { Analyses } from './analysed.ts';
import { whyCommand } from './explanations.ts';
import { fillPanel, panelOptions } from './webview.ts';

const viewType = 'swingwright.sheet';

interface OpenSheet {
  readonly panel: vscode.WebviewPanel;
  readonly uri: vscode.Uri;
  /** Asks the server and shows the answer; an answer that another request has overtaken is dropped. */
  readonly refresh: () => void;
  readonly send: (message: ToSheet) => void;
}

export function registerSheet(
  client: BaseLanguageClient,
  { onAnalysed }: Analyses,
  extension: vscode.Uri,
): vscode.Disposable {
  const sheets = new Map<string, OpenSheet>();

  const attach = (panel: vscode.WebviewPanel, uri: vscode.Uri): void => {
    const key = uri.toString();
    const sheet = openSheet(client, extension, panel, uri);
    sheets.set(key, sheet);
    panel.onDidDispose(() => {
      if (sheets.get(key) === sheet) sheets.delete(key);
    });
  };
  const open = async (given: unknown): Promise<void> => {
    const uri = given instanceof vscode.Uri ? given : vscode.window.activeTextEditor?.document.uri;
    if (uri === undefined || !isRecord(uri)) {
      void vscode.window.showInformationMessage(
        vscode.l10n.t('Open a record that ends in .swing.yaml first.'),
      );
      return;
    }
    const before = sheets.get(uri.toString());
    if (before !== undefined) return before.panel.reveal(undefined, true);
    await vscode.workspace.openTextDocument(uri);
    const column = { viewColumn: vscode.ViewColumn.Beside, preserveFocus: true };
    attach(vscode.window.createWebviewPanel(viewType, titleOf(uri), column, panelOptions(extension)), uri);
  };
  const step = (by: 1 | -1): void => inFront(sheets)?.send({ kind: 'step', by });

  return vscode.Disposable.from(
    vscode.window.registerWebviewPanelSerializer(viewType, {
      deserializeWebviewPanel: (panel, state: unknown) => {
        const uri = uriIn(state);
        // Nothing is known of what it showed.
        if (uri === undefined || sheets.has(uri.toString())) panel.dispose();
        else attach(panel, uri);
        return Promise.resolve();
      },
    }),
    onAnalysed((uri) => sheets.get(uri.toString())?.refresh()),
    vscode.window.onDidChangeTextEditorSelection(({ textEditor: { document }, selections }) => {
      const position = selections[0]?.active;
      if (position !== undefined) sheets.get(document.uri.toString())?.send({ kind: 'cursor', position });
    }),
    vscode.commands.registerCommand('swingwright.openSheet', open),
    vscode.commands.registerCommand('swingwright.nextCheckpoint', () => step(1)),
    vscode.commands.registerCommand('swingwright.previousCheckpoint', () => step(-1)),
    {
      dispose: () => {
        for (const { panel } of [...sheets.values()]) panel.dispose();
      },
    },
  );
}

function openSheet(
  client: BaseLanguageClient,
  extension: vscode.Uri,
  panel: vscode.WebviewPanel,
  uri: vscode.Uri,
): OpenSheet {
  let asked: vscode.CancellationTokenSource | undefined;
  let checkpoint: string | null = null;
  let written: number | undefined;
  const send = (message: ToSheet): void => void panel.webview.postMessage(message);
  const refresh = async (): Promise<void> => {
    asked?.cancel();
    const { token } = (asked = new vscode.CancellationTokenSource());
    // A text that was closed meanwhile is opened again, without being shown: the server knows open ones only.
    await vscode.workspace.openTextDocument(uri).then(undefined, () => undefined);
    const params: SheetParams = { uri: uri.toString(), checkpoint };
    const sheet = await client
      .sendRequest<Sheet | null>(sheetRequest, params, token)
      // It changed meanwhile: word of the next analysis is on its way.
      .catch(() => undefined);
    if (!token.isCancellationRequested && sheet !== undefined)
      send({ kind: 'show', uri: uri.toString(), sheet });
  };
  const receive = (message: FromSheet): void => {
    switch (message.kind) {
      case 'ready':
        checkpoint = message.checkpoint;
        void refresh();
        return sendCursor(uri, send);
      case 'checkpoint':
        checkpoint = message.checkpoint;
        return void refresh();
      case 'go':
        return void goTo(uri, message);
      case 'why':
        return void vscode.commands.executeCommand(whyCommand, uri.toString(), message.id);
      case 'whatIf':
        return void askWhatIf(client, uri, message.moves).then((answer) => send({ kind: 'whatIf', answer }));
      case 'write':
        return void writeMoves(client, { uri: uri.toString(), ...message }).then(({ words, version }) => {
          written = version;
          send({ kind: 'written', words, canUndo: version !== undefined });
        });
      case 'undo':
        return void undoWritten(uri, written).then((words) =>
          send({ kind: 'written', words, canUndo: false }),
        );
    }
  };
  panel.onDidDispose(() => asked?.cancel());
  // What the page says is its own script's, since nothing else runs in it.
  fillPanel(panel, extension, 'sheet', (message) => receive(message as FromSheet));
  return { panel, uri, refresh: () => void refresh(), send };
}

/** Undefined where the record changed meanwhile: the page asks again when it has been shown. */
async function askWhatIf(
  client: BaseLanguageClient,
  uri: vscode.Uri,
  moves: readonly Move[],
): Promise<WhatIfAnswer | null | undefined> {
  const params: WhatIfParams = { uri: uri.toString(), moves };
  return client.sendRequest<WhatIfAnswer | null>(whatIfRequest, params).catch(() => undefined);
}

/** Says what came of it, and which version the record has once it is written. */
async function writeMoves(
  client: BaseLanguageClient,
  params: WriteWhatIfParams,
): Promise<{ readonly words: string; readonly version?: number }> {
  const document = await vscode.workspace.openTextDocument(vscode.Uri.parse(params.uri));
  const { uri, moves, because } = params;
  const answer = await client
    .sendRequest<WriteWhatIfResult | null>(writeWhatIfRequest, { uri, moves, because })
    .catch(() => null);
  if (answer === null || answer.version !== document.version)
    return { words: vscode.l10n.t('The record changed meanwhile. Try again.') };
  if (answer.edits === null)
    return {
      words: vscode.l10n.t('The plan is written in a way that nothing can be added to. Write it by hand.'),
    };
  if (answer.edits.length === 0) return { words: vscode.l10n.t('The plan says so already.') };
  const change = new vscode.WorkspaceEdit();
  for (const { range, newText } of answer.edits) change.replace(document.uri, rangeOf(range), newText);
  return (await vscode.workspace.applyEdit(change))
    ? { words: vscode.l10n.t('Written into the plan.'), version: document.version }
    : { words: vscode.l10n.t('The editor did not take the edit.') };
}

/** By the undo of the text editor, which has the focus then; only while nothing else was changed since. */
async function undoWritten(uri: vscode.Uri, version: number | undefined): Promise<string> {
  const document = await vscode.workspace.openTextDocument(uri);
  if (document.version !== version)
    return vscode.l10n.t('The record was changed since. Undo in the text editor.');
  await showRecord(uri, {});
  await vscode.commands.executeCommand('undo');
  return document.version === version
    ? vscode.l10n.t('Undo in the text editor.')
    : vscode.l10n.t('Undone: the plan is as it was.');
}

function rangeOf({ start, end }: TextRange): vscode.Range {
  return new vscode.Range(start.line, start.character, end.line, end.character);
}

function sendCursor(uri: vscode.Uri, send: (message: ToSheet) => void): void {
  const editor = vscode.window.visibleTextEditors.find(
    ({ document }) => document.uri.toString() === uri.toString(),
  );
  if (editor !== undefined) send({ kind: 'cursor', position: editor.selection.active });
}

async function goTo(
  uri: vscode.Uri,
  { range: { start }, focus }: FromSheet & { readonly kind: 'go' },
): Promise<void> {
  await showRecord(uri, { selection: rangeOf({ start, end: start }), preserveFocus: !focus });
}

/** Where the record is shown already, if it is. */
async function showRecord(uri: vscode.Uri, how: vscode.TextDocumentShowOptions): Promise<void> {
  const shown = vscode.window.visibleTextEditors.find(
    ({ document }) => document.uri.toString() === uri.toString(),
  );
  await vscode.window.showTextDocument(uri, {
    ...how,
    viewColumn: shown?.viewColumn ?? vscode.ViewColumn.One,
  });
}

/** The sheet that has the focus, else that of the record that has it, else one that is seen. */
function inFront(sheets: ReadonlyMap<string, OpenSheet>): OpenSheet | undefined {
  const all = [...sheets.values()];
  const front = vscode.window.activeTextEditor?.document.uri.toString() ?? '';
  return all.find(({ panel }) => panel.active) ?? sheets.get(front) ?? all.find(({ panel }) => panel.visible);
}

function titleOf(uri: vscode.Uri): string {
  const name = uri.path.slice(uri.path.lastIndexOf('/') + 1).replace(/\.swing\.yaml$/, '');
  return vscode.l10n.t('Sheet: {0}', name);
}

function isRecord(uri: vscode.Uri): boolean {
  return uri.path.endsWith('.swing.yaml');
}

function uriIn(state: unknown): vscode.Uri | undefined {
  const uri = typeof state === 'object' && state !== null ? (state as { uri?: unknown }).uri : undefined;
  if (typeof uri !== 'string' || uri === '') return undefined;
  const parsed = vscode.Uri.parse(uri);
  return isRecord(parsed) ? parsed : undefined;
}
