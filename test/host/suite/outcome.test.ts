// What became of a plan, in a real VS Code: the lens over it, the place that it leads to, and the page on predictions.
import assert from 'node:assert/strict';
import * as vscode from 'vscode';

const head = (date: string): string => `swing: 1\nstudent: ines.student.yaml\ndate: ${date}\nclub: hybrid\n`;
const files = {
  'swingwright.yaml': 'swingwright: 1\n',
  'ines.student.yaml': 'student: 1\nname: Ines\nhand: right\nbag: { hybrid: { kind: hybrid } }\n',
  'plan.swing.yaml': `${head('2026-05-14')}plan:\n  - proof: delivery.path < 2 deg\npredicted:\n  flight.carry: 178 m ± 4 m by model\n`,
  'next.swing.yaml': `${head('2026-06-02')}delivery: { path: 1 deg left ± 1 deg }\nflight: { carry: 160 m ± 2 m }\n`,
};

describe('what became of a plan', () => {
  before(async () => {
    for (const [name, text] of Object.entries(files))
      await vscode.workspace.fs.writeFile(inFolder(name), new TextEncoder().encode(text));
  });
  after(() => vscode.commands.executeCommand('workbench.action.closeAllEditors'));

  it('stands over it as a lens that opens the next lesson', async () => {
    const document = await vscode.workspace.openTextDocument(inFolder('plan.swing.yaml'));
    await vscode.window.showTextDocument(document);
    const [lens] = await lensesOf(document.uri);
    assert.equal(lens?.command?.title, 'Next lesson 2026-06-02: 1 of 1 proof met, 0 of 1 prediction inside');
    const { command, arguments: given = [] } = lens.command;
    await vscode.commands.executeCommand(command, ...(given as unknown[]));
    const editor = vscode.window.activeTextEditor;
    assert.ok(editor !== undefined);
    assert.ok(editor.document.uri.path.endsWith('/next.swing.yaml'), editor.document.uri.path);
    assert.equal(editor.selection.start.line, 4);
    const [back] = await lensesOf(editor.document.uri);
    assert.match(back?.command?.title ?? '', /^Last plan \(2026-05-14\): /);
  });

  it('is summed up on a page', async () => {
    await vscode.commands.executeCommand('swingwright.showPredictions');
    await until(() =>
      vscode.workspace.textDocuments.some(
        ({ uri, getText }) => uri.scheme === 'swingwright-predictions' && /\d of \d+ inside/.test(getText()),
      ),
    );
  });
});

async function lensesOf(uri: vscode.Uri): Promise<vscode.CodeLens[]> {
  for (;;) {
    const lenses = await vscode.commands.executeCommand<vscode.CodeLens[]>(
      'vscode.executeCodeLensProvider',
      uri,
    );
    if (lenses.length > 0) return lenses;
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
}

async function until(look: () => boolean): Promise<void> {
  while (!look()) await new Promise((resolve) => setTimeout(resolve, 50));
}

function inFolder(name: string): vscode.Uri {
  const [folder] = vscode.workspace.workspaceFolders ?? [];
  assert.ok(folder, 'a folder is open');
  return vscode.Uri.joinPath(folder.uri, 'outcome-test', name);
}
