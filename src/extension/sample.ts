// Opens a record of the samples that come with the extension, for a first look, beside what is read now; changes nothing.
import * as vscode from 'vscode';

const sample = ['samples', 'bram', '2026-05-09-seven-iron.swing.yaml'];

export function registerSample(extension: vscode.Uri): vscode.Disposable {
  return vscode.commands.registerCommand('swingwright.openSample', () =>
    vscode.window.showTextDocument(vscode.Uri.joinPath(extension, ...sample), {
      viewColumn: somethingIsOpen() ? vscode.ViewColumn.Beside : vscode.ViewColumn.Active,
    }),
  );
}

/** Whether the group in front shows anything: the walkthrough, for one, which must stay to be read on. */
function somethingIsOpen(): boolean {
  return vscode.window.tabGroups.activeTabGroup.tabs.length > 0;
}
