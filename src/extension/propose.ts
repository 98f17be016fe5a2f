// The command that proposes a plan for the record in front: asks the server, lets the coach pick, writes it as one edit.
import * as vscode from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';
import {
  proposeRequest,
  writePlanRequest,
  type ProposeParams,
  type ProposeResult,
  type WritePlanParams,
  type WritePlanResult,
} from '../server/protocol.ts';

export const proposeCommand = 'swingwright.proposePlan';

/** Called with a record's URI and the ids of changes, or `all`, it asks only before it replaces a plan. */
export function registerProposals(client: BaseLanguageClient): vscode.Disposable {
  return vscode.commands.registerCommand(proposeCommand, async (given: unknown, picks: unknown) => {
    const uri = uriOf(given) ?? vscode.window.activeTextEditor?.document.uri;
    if (uri === undefined || !uri.path.endsWith('.swing.yaml')) {
      void vscode.window.showInformationMessage(
        vscode.l10n.t('Open a record that ends in .swing.yaml first.'),
      );
      return;
    }
    const document = await vscode.workspace.openTextDocument(uri);
    const asked = await propose(client, uri);
    if (asked === 'cancelled') return;
    if (asked === null || asked.changes.length === 0) {
      void vscode.window.showInformationMessage(
        asked?.nothing ?? vscode.l10n.t('The record cannot be read.'),
      );
      return;
    }
    const picked = await pick(asked, picks);
    if (picked === undefined || picked.length === 0) return;
    if (asked.planned === 0 || (await mayReplace(asked.planned))) await write(client, document, picked);
  });
}

function uriOf(given: unknown): vscode.Uri | undefined {
  if (given instanceof vscode.Uri) return given;
  return typeof given === 'string' ? vscode.Uri.parse(given, true) : undefined;
}

async function propose(
  client: BaseLanguageClient,
  uri: vscode.Uri,
): Promise<ProposeResult | null | 'cancelled'> {
  const progress = {
    location: vscode.ProgressLocation.Notification,
    title: vscode.l10n.t('Searching for a plan…'),
    cancellable: true,
  };
  return vscode.window.withProgress(progress, async (_, token) => {
    const params: ProposeParams = { uri: uri.toString() };
    try {
      return await client.sendRequest<ProposeResult | null>(proposeRequest, params, token);
    } catch (error) {
      if (token.isCancellationRequested) return 'cancelled';
      throw error;
    }
  });
}

async function pick(
  { goals, mostChanges, changes }: ProposeResult,
  picks: unknown,
): Promise<readonly string[] | undefined> {
  const ids = changes.map(({ id }) => id);
  if (picks === 'all') return ids;
  if (Array.isArray(picks)) return ids.filter((id) => picks.includes(id));
  const items = changes.map((change) => ({ ...change, picked: true }));
  const found = await vscode.window.showQuickPick(items, {
    canPickMany: true,
    matchOnDescription: true,
    matchOnDetail: true,
    ignoreFocusOut: true,
    title: vscode.l10n.t('Proposed plan: at most {0} changes', mostChanges),
    placeHolder: vscode.l10n.t('With all of them: {0}', goals),
  });
  return found?.map(({ id }) => id);
}

/** A plan that a coach wrote gives way only where they say so. */
async function mayReplace(planned: number): Promise<boolean> {
  const replace = vscode.l10n.t('Replace');
  const question =
    planned === 1
      ? vscode.l10n.t('This record has a plan with 1 change. Put the proposal in its place?')
      : vscode.l10n.t('This record has a plan with {0} changes. Put the proposal in its place?', planned);
  const answer = await vscode.window.showWarningMessage(question, { modal: true }, replace);
  return answer === replace;
}

async function write(
  client: BaseLanguageClient,
  document: vscode.TextDocument,
  picked: readonly string[],
): Promise<void> {
  const params: WritePlanParams = { uri: document.uri.toString(), picked };
  const answer = await client.sendRequest<WritePlanResult | null>(writePlanRequest, params);
  if (answer === null) return;
  if (answer.version !== document.version || answer.edits.length === 0) {
    void vscode.window.showWarningMessage(
      vscode.l10n.t('The record changed meanwhile. Propose the plan again.'),
    );
    return;
  }
  const change = new vscode.WorkspaceEdit();
  for (const { range, newText } of answer.edits) {
    const { start, end } = range;
    const place = new vscode.Range(start.line, start.character, end.line, end.character);
    change.replace(document.uri, place, newText);
  }
  await vscode.workspace.applyEdit(change);
}
