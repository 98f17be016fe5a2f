// The VS Code that runs the tests is the one that is meant, and can be looked at; it knows nothing of the extension.
import assert from 'node:assert/strict';
import * as fs from 'node:fs';
import * as vscode from 'vscode';
import { hasStage, needsStage, stage } from './stage.ts';

const PNG_SIGNATURE = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);

describe('the VS Code under the tests', () => {
  it('is 1.139 or newer when it comes from npm, and what the extension promises elsewhere', () => {
    const [major = 0, minor = 0] = vscode.version.split('.').map(Number);
    assert.ok(major > 1 || minor >= (hasStage ? 139 : 100), `it is ${vscode.version}`);
  });

  it('has one folder open, a copy that tests may change', () => {
    const folders = vscode.workspace.workspaceFolders ?? [];
    assert.equal(folders.length, 1);
    fs.accessSync(folders[0]?.uri.fsPath ?? '', fs.constants.W_OK);
  });
});

describe('the stage', () => {
  before(needsStage);

  it('takes a screenshot of the page', async () => {
    const file = await stage.screenshot('host');
    const picture = fs.readFileSync(file);
    assert.deepEqual(picture.subarray(0, 8), PNG_SIGNATURE);
    assert.equal(picture.readUInt32BE(16), 1400);
    assert.equal(picture.readUInt32BE(20), 900);
  });

  it('sees what a test does through the API', async () => {
    const document = await vscode.workspace.openTextDocument({
      content: 'one two three',
      language: 'plaintext',
    });
    await vscode.window.showTextDocument(document);
    await stage.clickText('three');
    await stage.press('End');
    await stage.type(' four');
    // The page tells the extension host of a change a moment after it shows it.
    for (let looks = 0; looks < 20 && !document.getText().endsWith('four'); looks++) await stage.settle();
    assert.equal(document.getText(), 'one two three four');
    await vscode.commands.executeCommand('workbench.action.revertAndCloseActiveEditor');
  });

  it('puts on every theme', async () => {
    for (const [theme, kind] of [
      ['dark', vscode.ColorThemeKind.Dark],
      ['high-contrast-dark', vscode.ColorThemeKind.HighContrast],
      ['high-contrast-light', vscode.ColorThemeKind.HighContrastLight],
      ['light', vscode.ColorThemeKind.Light],
    ] as const) {
      await stage.theme(theme);
      assert.equal(vscode.window.activeColorTheme.kind, kind);
    }
  });

  it('refuses an act that it does not have, and a screenshot outside its folder', async () => {
    await assert.rejects(stage.screenshot('../outside'), /plain name/);
    const address = process.env['SWINGWRIGHT_STAGE'] ?? '';
    const response = await fetch(`${address}/constructor`, { method: 'POST', body: '[]' });
    assert.equal(response.status, 500);
    const stranger = new URL('/guessed/press', address);
    assert.equal((await fetch(stranger, { method: 'POST', body: '["Enter"]' })).status, 404);
  });
});
