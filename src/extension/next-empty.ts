// Puts the cursor behind the next key that has no value yet, for who writes without a mouse; where that is, is asked of the text as it stands.
import * as vscode from 'vscode';
import { findNextEmpty } from '../language/next-empty.ts';

export const nextEmptyCommand = 'swingwright.nextEmpty';

export function registerNextEmpty(): vscode.Disposable {
  return vscode.commands.registerTextEditorCommand(nextEmptyCommand, (editor) => void goOn(editor));
}

/** In one step: what is typed right behind the command stands in the new place. */
async function goOn(editor: vscode.TextEditor): Promise<void> {
  const { document, selection } = editor;
  const offset = document.offsetAt(selection.active);
  const found = findNextEmpty(document.uri.toString(), document.getText(), offset);
  if (found === undefined) {
    vscode.window.setStatusBarMessage(vscode.l10n.t('Every key has a value.'), 3000);
    return;
  }
  const at = document.positionAt(found.at);
  if (found.needsSpace) {
    const space = new vscode.SnippetString(' ').appendTabstop(0);
    const undo = { undoStopBefore: false, undoStopAfter: false };
    await editor.insertSnippet(space, document.positionAt(found.at - 1), undo);
  } else editor.selection = new vscode.Selection(at, at);
  const { active } = editor.selection;
  const inView = new vscode.Range(active, active);
  editor.revealRange(inView, vscode.TextEditorRevealType.InCenterIfOutsideViewport);
}
