// Opens a text in the editor, types into it and takes proposals from its list, for tests inside VS Code.
import * as vscode from 'vscode';
import { until, writeFile } from './files.ts';
import { stage } from './stage.ts';

const rows = '.suggest-widget.visible .monaco-list-row';

/** Opens a new file with this text, the cursor at its `$0`. */
export async function openMarked(uri: vscode.Uri, text: string): Promise<vscode.TextEditor> {
  await writeFile(uri, text.replace('$0', ''));
  const document = await vscode.workspace.openTextDocument(uri);
  const at = document.positionAt(text.indexOf('$0'));
  return vscode.window.showTextDocument(document, { selection: new vscode.Range(at, at) });
}

export async function closeEditor(): Promise<void> {
  await vscode.commands.executeCommand('workbench.action.revertAndCloseActiveEditor');
}

/** As from the keyboard, so that the list of proposals comes as it comes to a coach. */
export async function type(text: string): Promise<void> {
  for (const letter of text) await vscode.commands.executeCommand('type', { text: letter });
}

/** The labels in the list of proposals, once this one is among them. */
export async function proposals(label: string): Promise<readonly string[]> {
  return until(async () => {
    const labels = await stage.texts(`${rows} .label-name`);
    return labels.includes(label) ? labels : undefined;
  });
}

export function isListOpen(): Promise<boolean> {
  return stage.texts(rows).then(({ length }) => length > 0);
}

/** Takes the proposal with this label, once the list has it. */
export async function take(label: string): Promise<void> {
  await proposals(label);
  await until(async () => {
    const [chosen] = await stage.texts(`${rows}.focused .label-name`);
    if (chosen === label) return true;
    await vscode.commands.executeCommand('selectNextSuggestion');
    return false;
  });
  await vscode.commands.executeCommand('acceptSelectedSuggestion');
}
