// The command that calibrates the flight from a folder's shots: asks which folder, tells of the fit, asks before it writes.
import * as vscode from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';
import { calibrateRequest, type CalibrateParams, type CalibrateResult } from '../server/protocol.ts';
import { chooseFolder } from './files.ts';

export function registerCalibration(client: BaseLanguageClient): vscode.Disposable {
  return vscode.commands.registerCommand('swingwright.calibrate', async (chosen: unknown) => {
    const none = vscode.l10n.t('Open a folder with records and shots first.');
    const folder = chosen instanceof vscode.Uri ? chosen : await chooseFolder(none);
    if (folder === undefined) return;
    const records = await vscode.workspace.findFiles(
      new vscode.RelativePattern(folder, '**/*.swing.yaml'),
      '**/{node_modules,.git}/**',
    );
    const params: CalibrateParams = {
      folder: folder.toString(),
      records: records.map((uri) => uri.toString()),
    };
    const progress = {
      location: vscode.ProgressLocation.Notification,
      title: vscode.l10n.t('Calibrating the flight…'),
      cancellable: true,
    };
    const result = await vscode.window.withProgress(progress, (_, token) =>
      client.sendRequest<CalibrateResult>(calibrateRequest, params, token),
    );
    await offer(result);
  });
}

async function offer({ lines, workspace, isThere, edit }: CalibrateResult): Promise<void> {
  const [first = '', ...others] = lines;
  if (edit === null) {
    void vscode.window.showInformationMessage(lines.join(' '));
    return;
  }
  const write = vscode.l10n.t('Write to swingwright.yaml');
  const options: vscode.MessageOptions = { modal: true, detail: others.join('\n') };
  if ((await vscode.window.showInformationMessage(first, options, write)) !== write) return;
  const uri = vscode.Uri.parse(workspace, true);
  const change = new vscode.WorkspaceEdit();
  if (!isThere) change.createFile(uri, { ignoreIfExists: true });
  const { start, end } = edit.range;
  change.replace(uri, new vscode.Range(start.line, start.character, end.line, end.character), edit.newText);
  if (await vscode.workspace.applyEdit(change)) await vscode.window.showTextDocument(uri);
}
