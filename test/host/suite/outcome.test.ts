// What became of a plan, in a real VS Code: the lens over it, the place that it leads to, and the page on predictions.
import assert from 'node:assert/strict';
import * as vscode from 'vscode';
import { until } from './files.ts';
import { needsStage, stage } from './stage.ts';

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

  // The lenses of an extension in another host come without their commands, so they are looked at on the page.
  describe('on the page', () => {
    before(needsStage);

    it('stands over it as a lens that opens the next lesson', async () => {
      await vscode.window.showTextDocument(inFolder('plan.swing.yaml'));
      await lens('Next lesson 2026-06-02: 1 of 1 proof met, 0 of 1 prediction inside');
      await stage.click('.codelens-decoration a');
      const editor = await until(() => {
        const { activeTextEditor: front } = vscode.window;
        return front?.document.uri.path.endsWith('/next.swing.yaml') ? front : undefined;
      });
      await until(() => editor.selection.start.line === 4);
      await lens('Last plan (2026-05-14): 1 of 1 proof met, 0 of 1 prediction inside');
    });
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

async function lens(words: string): Promise<void> {
  await until(async () => (await stage.texts('.codelens-decoration')).some((text) => text.includes(words)));
}

function inFolder(name: string): vscode.Uri {
  const [folder] = vscode.workspace.workspaceFolders ?? [];
  assert.ok(folder, 'a folder is open');
  return vscode.Uri.joinPath(folder.uri, 'outcome-test', name);
}
