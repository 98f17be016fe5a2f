// What a reviewer sees of threads in the editor and presses there; for tests inside VS Code that look at the page.
import assert from 'node:assert/strict';
import * as vscode from 'vscode';
import { until } from './files.ts';
import { stage } from './stage.ts';

const settings = () => vscode.workspace.getConfiguration('swingwright.review');

/** Whose name stands under what is written from now on; nobody's where none is given. */
export async function writeAs(author: string | undefined): Promise<void> {
  if (settings().get('author') !== author)
    await settings().update('author', author, vscode.ConfigurationTarget.Global);
}

/**
 * Begins a remark as the editor's own command does it at the cursor. The command does nothing before the editor knows which lines can be
 * remarked on, and a form that was opened before then may vanish again: it is asked for until it stays.
 */
export async function beginRemark(document: vscode.TextDocument, key: string): Promise<void> {
  const place = document.positionAt(document.getText().indexOf(`${key}:`));
  const isOpen = async (): Promise<boolean> => (await counted(`${begun} .comment-form .monaco-editor`)) > 0;
  await until(async () => {
    if (!(await isOpen())) {
      const editor = await vscode.window.showTextDocument(document);
      editor.selection = new vscode.Selection(place, place);
      if ((await counted('.comment-diff-added')) === 0) return false;
      await vscode.commands.executeCommand('workbench.action.addComment');
    }
    await stage.settle();
    await new Promise((resolve) => setTimeout(resolve, 500));
    return isOpen();
  });
}

/** A thread that has no comment yet. */
const begun = '.review-widget:not(:has(.review-comment))';

/** Types into the form of a thread, which takes the keys only once it is drawn and in focus. */
export async function say(words: string, within = begun): Promise<void> {
  const form = `${within} .comment-form .monaco-editor`;
  await stage.waitFor(form);
  await stage.settle();
  await stage.click(form);
  await until(() =>
    stage.evaluate<boolean>(`document.activeElement?.closest('.review-widget .comment-form') != null`),
  );
  await stage.type(words);
}

/** Replaces the first such words in the document's own editor: the one in front may be the form of a thread. */
export async function put(document: vscode.TextDocument, from: string, to: string): Promise<void> {
  const editor = await vscode.window.showTextDocument(document);
  const start = document.getText().indexOf(from);
  assert.ok(start >= 0, `${from} stands in ${document.getText()}`);
  const range = new vscode.Range(document.positionAt(start), document.positionAt(start + from.length));
  assert.ok(await editor.edit((edit) => edit.replace(range, to)));
}

/** The labels of the threads that are unfolded, from the top. */
export async function labels(): Promise<readonly string[]> {
  return (await stage.texts('.review-widget .review-title .filename')).filter((text) => text !== '');
}

export function counted(selector: string): Promise<number> {
  return stage.evaluate(`document.querySelectorAll(${JSON.stringify(selector)}).length`);
}

export async function statusSays(words: RegExp): Promise<void> {
  await until(async () => words.test((await stage.texts('.statusbar-item')).join()));
}

/** The selector of the unfolded thread whose label has these words; of any where there are none. */
export function thread(about = ''): string {
  return about === '' ? '.review-widget' : `.review-widget:has(.filename:has-text("${about}"))`;
}

/** A button below the form of a thread. */
export function button(words: string, within = begun): string {
  return `${within} .form-actions .monaco-button:text-is("${words}")`;
}

/** A sign in the head of a thread, or over a comment of it. */
export function sign(words: string, about = ''): string {
  return `${thread(about)} a[aria-label="${words}"]`;
}

/** Answers the question for one's name or a value, once it is asked. */
export async function answer(words: string): Promise<void> {
  await stage.waitFor('.quick-input-widget input.input');
  await stage.press('Control+a');
  await stage.type(words);
}
