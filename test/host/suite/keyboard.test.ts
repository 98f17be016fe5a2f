// Plays the README's numbered list of keys in the real VS Code: a whole lesson of twenty values, without a mouse.
import assert from 'node:assert/strict';
import * as vscode from 'vscode';
import { lesson } from '../../../build/bench/lesson.ts';
import { closeEditor } from './editor.ts';
import { inTestFolder, until, writeFile } from './files.ts';
import { projectText } from './project.ts';
import { needsStage, stage } from './stage.ts';

const student = `student: 1
name: Ilse
hand: right
bag:
  seven iron: { kind: iron, loft: 31 deg }
  hybrid: { kind: hybrid, loft: 22 deg }
`;
/** The last lesson, with the same entries. */
const last = lesson
  .replace('tove.student', 'ilse.student')
  .replace('2026-05-30', '2026-05-01')
  .replace(/^(?:template|faults_from| {2}shape): .*\n/gm, '');

describe('a lesson without a mouse', () => {
  before(needsStage);
  after(closeEditor);

  it('takes the keys of the README, and no others', async function () {
    this.timeout(180_000);
    const at = (name: string): vscode.Uri => inTestFolder('keyboard-test', name);
    await writeFile(at('swingwright.yaml'), 'swingwright: 1\n');
    await writeFile(at('last.swing.yaml'), last);
    const uri = await writeFile(at('ilse.student.yaml'), student);
    await vscode.window.showTextDocument(await vscode.workspace.openTextDocument(uri));

    const [begin, club, value, next, save] = await listed();
    assert.deepEqual(begin, ['F1', 'new lesson', 'Enter']);
    assert.deepEqual(club?.[0], 'Enter');
    assert.deepEqual(value?.slice(0, 2), ['Space', 'Enter']);
    assert.deepEqual(next, ['Alt+Enter']);
    assert.deepEqual(save?.[0], 'Ctrl+S');

    let keys = 0;
    const press = async (key: string): Promise<void> => {
      keys += 1;
      await stage.press(key.replace('Ctrl', 'Control'));
    };
    const write = async (text: string): Promise<void> => {
      keys += text.length;
      await stage.type(text);
    };

    await press(begin[0]!);
    await stage.waitFor('.quick-input-widget input.input');
    await write(begin[1]!);
    await chosen('.quick-input-list', 'New Lesson Record');
    await press(begin[2]!);
    await chosen('.quick-input-list', 'seven iron');
    await press(club[0]);
    const { document } = await until(() => {
      const front = vscode.window.activeTextEditor;
      return front?.document.uri.path.endsWith('-seven-iron.swing.yaml') === true ? front : undefined;
    });

    const wanted = [...last.matchAll(/^ +(\w+): (\d+(?:\.\d+)?)( .*)$/gm)];
    assert.equal(wanted.length, 20);
    for (const [index, [, key, number, rest]] of wanted.entries()) {
      if (index > 0) await press(next[0]!);
      await reached(`${key}: `);
      await write(number!);
      await press(value[0]!);
      await chosen('.suggest-widget.visible', rest!.trim());
      await press(value[1]!);
      await reached(`${key}: ${number}${rest}`);
    }
    await press(save[0]);
    await until(() => !document.isDirty);

    const written = document.getText().replace(/^date: .*$/m, 'date: 2026-05-01');
    assert.equal(written.replace(/\n+/g, '\n').trim(), last.trim());
    const said = Number(/Twenty values take (\d+) keys/.exec(await projectText('README.md'))?.[1]);
    assert.equal(keys, said);
  });
});

/** Waits until the list has this item chosen, so that the next key can take it. */
async function chosen(list: string, words: string): Promise<void> {
  let seen = '';
  const limit = Date.now() + 15_000;
  while (!seen.includes(words)) {
    if (Date.now() > limit)
      throw new Error(`Found "${seen}" chosen behind "${lineBefore()}"; expected "${words}".`);
    seen = (await stage.texts(`${list} .monaco-list-row.focused`)).join().replaceAll('\n', ' ');
  }
}

/** Waits until the cursor stands behind these words, on the page too, which hears of it later than this side. */
async function reached(words: string): Promise<void> {
  const limit = Date.now() + 15_000;
  while (lineBefore() !== words || !(await isOnPage())) {
    if (Date.now() > limit)
      throw new Error(`Found the cursor behind "${lineBefore()}"; expected "${words}".`);
    await new Promise((resolve) => setTimeout(resolve, 20));
  }
}

async function isOnPage(): Promise<boolean> {
  const { line, character } = vscode.window.activeTextEditor!.selection.active;
  const shown = await stage.texts('[id="status.editor.selection"]');
  return shown.join().includes(`Ln ${line + 1}, Col ${character + 1}`);
}

/** What stands before the cursor on its line. */
function lineBefore(): string {
  const editor = vscode.window.activeTextEditor;
  if (editor === undefined) return '';
  const { line, character } = editor.selection.active;
  return editor.document.lineAt(line).text.slice(0, character).trimStart();
}

/** The keys of each numbered line under "Without a mouse". */
async function listed(): Promise<string[][]> {
  const section = (await projectText('README.md')).split('\n## Without a mouse\n')[1]!.split('\n## ')[0]!;
  return [...section.matchAll(/^\d\. (.*)$/gm)].map(([, line]) =>
    [...line!.matchAll(/`([^`]+)`/g)].map(([, key]) => key!),
  );
}
