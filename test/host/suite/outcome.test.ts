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
    const wanted = 'Next lesson 2026-06-02: 1 of 1 proof met, 0 of 1 prediction inside';
    const { command, arguments: given = [] } = await commandOf(document.uri, wanted);
    await vscode.commands.executeCommand(command, ...(given as unknown[]));
    const editor = vscode.window.activeTextEditor;
    assert.ok(editor !== undefined);
    assert.ok(editor.document.uri.path.endsWith('/next.swing.yaml'), editor.document.uri.path);
    assert.equal(editor.selection.start.line, 4);
    await commandOf(
      editor.document.uri,
      'Last plan (2026-05-14): 1 of 1 proof met, 0 of 1 prediction inside',
    );
  });

  it('is summed up on a page', async () => {
    await vscode.commands.executeCommand('swingwright.showPredictions');
    await until(() =>
      vscode.workspace.textDocuments.some(
        (document) =>
          document.uri.scheme === 'swingwright-predictions' &&
          document.getText().startsWith('# How good predictions have been'),
      ),
    );
  });
});

/** That of the lens with these words, once the editor has seen the files that were just written. */
async function commandOf(uri: vscode.Uri, title: string): Promise<vscode.Command> {
  for (;;) {
    const lenses = await vscode.commands.executeCommand<vscode.CodeLens[]>(
      'vscode.executeCodeLensProvider',
      uri,
    );
    const found = lenses.find(({ command }) => command?.title === title)?.command;
    if (found !== undefined) return found;
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
