// A plan is proposed and written in a real VS Code, without the prompt and with it.
import assert from 'node:assert/strict';
import * as vscode from 'vscode';
import { planFiles, planRecord } from '../../language/plan-record.ts';
import { inTestFolder, until, writeFile } from './files.ts';
import { hasStage, stage } from './stage.ts';

const goals = 'goals: [{ start: 1 deg left..1 deg right, curve: 4 m left..4 m right }]';
const text = planRecord('', goals);
const at = (name: string): vscode.Uri => inTestFolder('propose-test', name);

describe('proposing a plan', () => {
  before(async () => {
    for (const [name, words] of Object.entries(planFiles)) await writeFile(at(name), words);
  });
  after(async () => {
    await vscode.commands.executeCommand('workbench.action.files.revert');
    await vscode.commands.executeCommand('workbench.action.closeAllEditors');
  });

  it('writes all changes without asking where it is told so, as one edit that can be undone', async () => {
    const document = await vscode.workspace.openTextDocument(await writeFile(at('all.swing.yaml'), text));
    await vscode.window.showTextDocument(document);
    await vscode.commands.executeCommand('swingwright.proposePlan', document.uri, 'all');
    const written = document.getText();
    assert.ok(written.startsWith(text));
    assert.match(
      written,
      /\nplan:\n( {2}- change: .*\n {4}to: .*\n {4}because: \[.*\]\n {4}proof: .*\n)+predicted:\n/,
    );
    await vscode.commands.executeCommand('undo');
    assert.equal(document.getText(), text);
  });

  it('replaces a plan that is there only where the coach says so', async function () {
    // What is put in the place of a question here is not seen by an extension in the browser's worker.
    if (process.env['SWINGWRIGHT_TEST_WHERE'] === 'worker') this.skip();
    const planned = `${text}plan: [{ change: delivery.attack, to: 4 deg down, because: start }]\n`;
    const document = await vscode.workspace.openTextDocument(
      await writeFile(at('planned.swing.yaml'), planned),
    );
    await vscode.window.showTextDocument(document);
    const asked: string[] = [];
    const before = vscode.window.showWarningMessage;
    const answer = (words: string | undefined): void => {
      Object.assign(vscode.window, {
        showWarningMessage: (question: string) => {
          asked.push(question);
          return Promise.resolve(words);
        },
      });
    };
    try {
      answer(undefined);
      await vscode.commands.executeCommand('swingwright.proposePlan', document.uri, 'all');
      assert.equal(document.getText(), planned);
      answer('Replace');
      await vscode.commands.executeCommand('swingwright.proposePlan', document.uri, 'all');
      assert.ok(!document.getText().includes('4 deg down'));
      assert.match(document.getText(), /\nplan:\n {2}- change: /);
    } finally {
      Object.assign(vscode.window, { showWarningMessage: before });
    }
    assert.deepEqual(
      asked.map((question) => /plan with 1 change/.test(question)),
      [true, true],
    );
  });

  it('lets the coach pick, everything being picked beforehand', async function () {
    if (!hasStage) this.skip();
    const document = await vscode.workspace.openTextDocument(await writeFile(at('pick.swing.yaml'), text));
    await vscode.window.showTextDocument(document);
    const done = vscode.commands.executeCommand('swingwright.proposePlan');
    await stage.waitFor('.quick-input-list .monaco-list-row');
    await stage.screenshot('propose-plan-light', 'light');
    await stage.screenshot('propose-plan-dark', 'dark');
    await stage.press('Enter');
    await done;
    await until(() => document.getText().includes('\npredicted:\n'));
  });
});
