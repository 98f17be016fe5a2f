// The command that has git merge and show our files by value: asks which folder, and says what was done.
import * as vscode from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';
import { gitSetupRequest, type GitSetupParams, type GitSetupResult } from '../server/protocol.ts';
import { chooseFolder } from './files.ts';

export function registerGitSetup(client: BaseLanguageClient): vscode.Disposable {
  return vscode.commands.registerCommand('swingwright.gitSetup', async (chosen: unknown) => {
    const none = vscode.l10n.t('Open a folder of a git repository first.');
    const folder = chosen instanceof vscode.Uri ? chosen : await chooseFolder(none);
    if (folder === undefined) return;
    const params: GitSetupParams = { folder: folder.toString() };
    const { kind, words } = await client.sendRequest<GitSetupResult>(gitSetupRequest, params);
    const show = kind === 'done' ? vscode.window.showInformationMessage : vscode.window.showWarningMessage;
    void show(words.join(' '));
  });
}
