// The commands that make a practice, a student and a record, with the answers given beforehand. The same holds in the web worker host.
import assert from 'node:assert/strict';
import * as vscode from 'vscode';
import { closeEditor, type } from './editor.ts';
import { inTestFolder, until } from './files.ts';

describe('the commands for new files', () => {
  const folder = (): vscode.Uri => inTestFolder('new-files-test', '');
  const read = async (name: string): Promise<string> =>
    new TextDecoder().decode(await vscode.workspace.fs.readFile(inTestFolder('new-files-test', name)));

  it('are among the new files of the menu', () => {
    const found = vscode.extensions.getExtension('swingwright.swingwright');
    if (found === undefined) return;
    const { menus } = (found.packageJSON as { contributes: { menus: Record<string, { command: string }[]> } })
      .contributes;
    assert.deepEqual(
      menus['file/newFile']?.map(({ command }) => command),
      ['swingwright.newRecord', 'swingwright.newStudent', 'swingwright.newPractice'],
    );
  });

  it('make a practice, a student in it and the first record, each open at its first value', async () => {
    await vscode.commands.executeCommand('swingwright.newPractice', {
      folder: folder(),
      name: 'Hollow Lane',
    });
    assert.match(await read('swingwright.yaml'), /Hollow Lane/);
    await until(() => front()?.document.uri.path.startsWith(folder().path));
    await closeEditor();

    await vscode.commands.executeCommand('swingwright.newStudent', {
      folder: folder(),
      name: 'Ansa',
      hand: 'left',
      clubs: ['seven iron', 'hybrid'],
    });
    const student = await until(() => frontAt('.student.yaml'));
    const text = student.document.getText();
    assert.match(text, /^name: Ansa$/m);
    assert.match(text, /^hand: left$/m);
    assert.match(text, /^ {2}seven iron: \{ kind: iron/m);
    assert.match(beforeCursor(student), /^stature: $/);
    await type('171 cm by tape');
    await until(() => /^stature: 171 cm by tape$/m.test(student.document.getText()));
    await student.document.save();

    await vscode.commands.executeCommand('swingwright.newRecord', {
      student: student.document.uri,
      date: '2026-05-14',
      club: 'seven iron',
    });
    const record = await until(() => frontAt('2026-05-14-seven-iron.swing.yaml'));
    assert.equal(record.document.languageId, 'swing-yaml');
    assert.match(
      record.document.getText(),
      /^student: ansa\.student\.yaml\ndate: 2026-05-14\nclub: seven iron$/m,
    );
    assert.match(beforeCursor(record), /^ *[a-z_]+: $/);
    const line = record.selection.active.line;
    await type('~3');
    assert.match(record.document.lineAt(line).text, /: ~3$/);
    await vscode.commands.executeCommand('workbench.action.revertAndCloseActiveEditor');
    await closeEditor();
  });

  it('make no file twice', async () => {
    const before = await read('swingwright.yaml');
    await vscode.commands.executeCommand('swingwright.newPractice', { folder: folder(), name: 'Another' });
    assert.equal(await read('swingwright.yaml'), before);
  });
});

function front(): vscode.TextEditor | undefined {
  return vscode.window.activeTextEditor;
}

function frontAt(suffix: string): vscode.TextEditor | undefined {
  const editor = front();
  return editor?.document.uri.path.endsWith(suffix) === true ? editor : undefined;
}

function beforeCursor({ document, selection: { active } }: vscode.TextEditor): string {
  return document.lineAt(active.line).text.slice(0, active.character);
}
