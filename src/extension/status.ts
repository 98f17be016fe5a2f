// The state of the file in front, in the editor's language status: how many findings, and whether the server is up.
import * as vscode from 'vscode';
import { State, type BaseLanguageClient } from 'vscode-languageclient';

export function registerStatus(client: BaseLanguageClient): vscode.Disposable {
  const item = vscode.languages.createLanguageStatusItem('swingwright.findings', { language: 'swing-yaml' });
  item.name = vscode.l10n.t('Swingwright findings');
  item.detail = vscode.l10n.t('Swingwright');
  const show = (): void => {
    const uri = vscode.window.activeTextEditor?.document.uri;
    const found =
      uri === undefined
        ? []
        : vscode.languages.getDiagnostics(uri).filter(({ source }) => source === 'swingwright');
    item.busy = client.state === State.Starting;
    item.severity =
      client.state === State.Stopped
        ? vscode.LanguageStatusSeverity.Error
        : vscode.LanguageStatusSeverity.Information;
    item.text = client.state === State.Running ? countWords(found) : stateWords(client.state);
    item.command =
      client.state === State.Stopped
        ? { command: 'swingwright.restartServer', title: vscode.l10n.t('Restart') }
        : { command: 'workbench.actions.view.problems', title: vscode.l10n.t('Show') };
  };
  show();
  return vscode.Disposable.from(
    item,
    client.onDidChangeState(show),
    vscode.languages.onDidChangeDiagnostics(show),
    vscode.window.onDidChangeActiveTextEditor(show),
  );
}

function stateWords(state: State): string {
  return state === State.Stopped
    ? vscode.l10n.t('The language server has stopped')
    : vscode.l10n.t('Starting the language server');
}

function countWords(found: readonly vscode.Diagnostic[]): string {
  if (found.length === 0) return vscode.l10n.t('No findings');
  return found.length === 1 ? vscode.l10n.t('1 finding') : vscode.l10n.t('{0} findings', found.length);
}
