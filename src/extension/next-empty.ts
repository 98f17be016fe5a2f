// Puts the cursor behind the next key that has no value yet, for who writes without a mouse; reads lines only, since half-written text is what it meets.
import * as vscode from 'vscode';

export const nextEmptyCommand = 'swingwright.nextEmpty';

export function registerNextEmpty(): vscode.Disposable {
  return vscode.commands.registerTextEditorCommand(nextEmptyCommand, (editor) => void goOn(editor));
}

async function goOn(editor: vscode.TextEditor): Promise<void> {
  const { document } = editor;
  const lines = Array.from({ length: document.lineCount }, (_, line) => document.lineAt(line).text);
  const found = findNextEmpty(lines, editor.selection.active.line);
  if (found === undefined) {
    vscode.window.setStatusBarMessage(vscode.l10n.t('Every key has a value.'), 3000);
    return;
  }
  const colon = new vscode.Position(found.line, found.column);
  // A value needs its space behind the colon.
  if (!lines[found.line]!.startsWith(' ', found.column))
    await editor.edit((edit) => edit.insert(colon, ' '), { undoStopBefore: false, undoStopAfter: false });
  const at = colon.translate(0, 1);
  editor.selection = new vscode.Selection(at, at);
  editor.revealRange(new vscode.Range(at, at), vscode.TextEditorRevealType.InCenterIfOutsideViewport);
}

interface Place {
  readonly line: number;
  /** Right behind the colon. */
  readonly column: number;
}

const bareKey = /^(\s*(?:- +)*)(?:"[^"]*"|'[^']*'|[^\s#"'{}[\],:-][^#"'{}[\]:]*):(?=\s*(?:#.*)?$)/;

/** After `from`, then from the top; undefined where every key has a value. */
function findNextEmpty(lines: readonly string[], from: number): Place | undefined {
  for (let step = 1; step <= lines.length; step++) {
    const line = (from + step) % lines.length;
    const key = bareKey.exec(lines[line]!);
    if (key !== null && !hasBelow(lines, line, key[1]!.length)) return { line, column: key[0].length };
  }
  return undefined;
}

/** Whether the lines below are the value: further in, or items on the same column. */
function hasBelow(lines: readonly string[], line: number, column: number): boolean {
  const next = lines.slice(line + 1).find((text) => !/^\s*(?:#.*)?$/.test(text));
  if (next === undefined) return false;
  const indent = /^\s*/.exec(next)![0].length;
  return indent > column || (indent === column && /^\s*-(?:\s|$)/.test(next));
}
