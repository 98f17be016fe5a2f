// The sheet beside a record in a real VS Code: it opens, follows the text, leads into it, lights up what the cursor is on, and comes back.
import assert from 'node:assert/strict';
import * as vscode from 'vscode';
import { inTestFolder, until, writeFile } from './files.ts';
import { needsStage, stage } from './stage.ts';

const text = `swing: 1
date: 2026-03-07
club: seven iron
delivery:
  path: 2 deg right ± 0.5 deg
  face: 1 deg right ± 0.5 deg
`;
const at = (name: string): vscode.Uri => inTestFolder('sheet-test', name);

describe('the sheet', () => {
  let document: vscode.TextDocument;
  beforeEach(async () => {
    document = await vscode.workspace.openTextDocument(await writeFile(at('one.swing.yaml'), text));
    await vscode.window.showTextDocument(document);
  });
  afterEach(async () => {
    await vscode.commands.executeCommand('workbench.action.files.revert');
    await vscode.commands.executeCommand('workbench.action.closeAllEditors');
  });

  it('opens beside the text and leaves the cursor there; asked again, it is the same one', async () => {
    await vscode.commands.executeCommand('swingwright.openSheet');
    await until(() => sheets().length === 1);
    assert.equal(sheets()[0]!.group.viewColumn, vscode.ViewColumn.Two);
    assert.equal(vscode.window.activeTextEditor?.document, document);
    await vscode.commands.executeCommand('swingwright.openSheet', document.uri);
    assert.equal(sheets().length, 1);
  });

  it('never opens by itself', () => {
    assert.equal(sheets().length, 0);
  });

  describe('on the page', () => {
    before(needsStage);
    beforeEach(() => vscode.commands.executeCommand('swingwright.openSheet'));

    it('updates as one types', async () => {
      await shows(/Club path\s*2\.0 deg right/);
      const editor = vscode.window.activeTextEditor!;
      const place = document.positionAt(text.indexOf('2 deg'));
      await editor.edit((edit) => edit.replace(new vscode.Range(place, place.translate(0, 1)), '4'));
      await shows(/Club path\s*4\.0 deg right/);
    });
  });
});

/** The tabs that are sheets. */
function sheets(): readonly vscode.Tab[] {
  return vscode.window.tabGroups.all
    .flatMap(({ tabs }) => tabs)
    .filter(
      ({ input }) => input instanceof vscode.TabInputWebview && input.viewType.endsWith('swingwright.sheet'),
    );
}

async function shows(words: RegExp): Promise<void> {
  await until(async () => words.test(await stage.webviewText().catch(() => '')));
}
