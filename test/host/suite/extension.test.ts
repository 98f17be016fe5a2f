// The extension in a real VS Code: what a coach sees on opening a record. The same holds in the web worker host.
import assert from 'node:assert/strict';
import * as vscode from 'vscode';
import { inTestFolder, until, writeFile } from './files.ts';
import { needsStage, stage } from './stage.ts';

const student = `student: 1
name: Mira
hand: left
stature: 171 cm
mass: 66 kg
bag:
  hybrid: { kind: hybrid, loft: 22 deg, lie: 59 deg, length: 40 in, head_mass: 230 g }
`;
const record = `swing: 1
student: mira.student.yaml
date: 2026-05-14
club: hybrid
delivery:
  club_speed: 41 m/s by radar
  attack: 3.5 deg down
  path: 5 deg right ± 1 deg
  face: 1 deg right ± 1 deg
flight:
  carry: 171
`;

describe('the extension', () => {
  let document: vscode.TextDocument;

  before(async () => {
    await write('mira.student.yaml', student);
    await write('lesson.swing.yaml', record);
    document = await vscode.workspace.openTextDocument(inFolder('lesson.swing.yaml'));
    await vscode.window.showTextDocument(document);
    await until(() => vscode.languages.getDiagnostics(document.uri).length > 0);
  });
  after(() => vscode.commands.executeCommand('workbench.action.revertAndCloseActiveEditor'));

  it('runs where it is meant to', () => {
    // Tests run in Node's extension host, which does not see the extensions of the web worker's.
    const isHere = vscode.extensions.getExtension('swingwright.swingwright') !== undefined;
    assert.equal(isHere ? 'node' : 'worker', process.env['SWINGWRIGHT_TEST_WHERE'] ?? 'node');
  });

  it('knows its files by their suffix', async () => {
    assert.equal(document.languageId, 'swing-yaml');
    for (const name of [
      'mira.student.yaml',
      'a.template.yaml',
      'a.faults.yaml',
      'a.review.yaml',
      'swingwright.yaml',
    ]) {
      if (name !== 'mira.student.yaml') await write(name, '');
      const other = await vscode.workspace.openTextDocument(inFolder(name));
      assert.equal(other.languageId, 'swing-yaml', name);
    }
    await write('plain.yaml', '');
    const plain = await vscode.workspace.openTextDocument(inFolder('plain.yaml'));
    assert.equal(plain.languageId, 'yaml');
  });

  it('indents by two spaces and shows inlay hints', () => {
    const editor = vscode.workspace.getConfiguration('editor', document);
    assert.equal(editor.get('tabSize'), 2);
    assert.equal(editor.get('insertSpaces'), true);
    assert.equal(editor.get('inlayHints.enabled'), 'on');
  });

  it('reports a bare number at the number', () => {
    const found = findings('bare-number');
    assert.deepEqual(
      found.map(({ range }) => document.getText(range)),
      ['171'],
    );
    assert.equal(found[0]?.source, 'swingwright');
  });

  it('links a finding to the other places that it is about', async () => {
    const twice = await vscode.workspace.openTextDocument(
      await write('twice.swing.yaml', 'swing: 1\ndate: 2026-05-14\ndate: 2026-05-15\n'),
    );
    const [found] = await until(() =>
      some(vscode.languages.getDiagnostics(twice.uri).filter((each) => codeOf(each) === 'duplicate-key')),
    );
    assert.deepEqual(
      found?.relatedInformation?.map(({ location }) => location.range.start.line),
      [1],
    );
  });

  it('shows hints for what cannot be seen on the line', async () => {
    const hints = await vscode.commands.executeCommand<vscode.InlayHint[]>(
      'vscode.executeInlayHintProvider',
      document.uri,
      new vscode.Range(0, 0, document.lineCount, 0),
    );
    const labels = hints.map(({ label }) =>
      typeof label === 'string' ? label : label.map(({ value }) => value).join(''),
    );
    assert.ok(labels.includes('m'), labels.join());
    assert.ok(labels.includes('face-to-path 4.0 deg left ± 1.4 deg (open)'), labels.join());
  });

  it('takes a family of hints away with its switch', async () => {
    const hints = vscode.workspace.getConfiguration('swingwright.hints');
    await hints.update('units', false, vscode.ConfigurationTarget.Workspace);
    await until(async () => {
      const shown = await vscode.commands.executeCommand<vscode.InlayHint[]>(
        'vscode.executeInlayHintProvider',
        document.uri,
        new vscode.Range(0, 0, document.lineCount, 0),
      );
      return shown.length > 0 && shown.every(({ label }) => label !== 'm');
    });
    await hints.update('units', undefined, vscode.ConfigurationTarget.Workspace);
  });

  it('says on hovering what a key means', async () => {
    assert.match(await hoverOn('face:'), /1\.0 deg right/);
  });

  it('gives the outline', async () => {
    const symbols = await vscode.commands.executeCommand<vscode.DocumentSymbol[]>(
      'vscode.executeDocumentSymbolProvider',
      document.uri,
    );
    const delivery = symbols.find(({ name }) => name === 'delivery');
    assert.deepEqual(
      delivery?.children.map(({ name }) => name),
      ['club_speed', 'attack', 'path', 'face'],
    );
  });

  it('links a reference to its file', async () => {
    const links = await vscode.commands.executeCommand<vscode.DocumentLink[]>(
      'vscode.executeLinkProvider',
      document.uri,
    );
    const own = links.find(({ range }) => document.getText(range) === 'mira.student.yaml');
    assert.equal(own?.target?.path, inFolder('mira.student.yaml').path);
  });

  it('looks again when a file beside the record changes', async () => {
    await write('mira.student.yaml', student.replace('hybrid:', 'wood:'));
    await until(() => findings('unknown-club').length > 0);
    await write('mira.student.yaml', student);
    await until(() => findings('unknown-club').length === 0);
  });

  it('writes the unit out by quick fix and changes nothing else', async () => {
    const before = document.getText();
    const position = positionOf('171');
    const actions = await vscode.commands.executeCommand<vscode.CodeAction[]>(
      'vscode.executeCodeActionProvider',
      document.uri,
      new vscode.Range(position, position),
      vscode.CodeActionKind.QuickFix.value,
    );
    const fix = actions.find(({ isPreferred }) => isPreferred);
    assert.ok(fix?.edit, actions.map(({ title }) => title).join());
    assert.ok(await vscode.workspace.applyEdit(fix.edit));
    assert.equal(document.getText(), before.replace('carry: 171', 'carry: 171 m'));
    await until(() => findings('bare-number').length === 0);
    await vscode.commands.executeCommand('undo');
    await until(() => findings('bare-number').length > 0);
  });

  it('explains a finding in a document that cannot be changed', async () => {
    const page = await vscode.workspace.openTextDocument(vscode.Uri.parse('swingwright-doc:/bare-number.md'));
    assert.match(page.getText(), /^# /);
    await vscode.commands.executeCommand('swingwright.explainFinding', 'bare-number');
    await until(() => activeTab().includes('bare-number'));
    await vscode.commands.executeCommand('workbench.action.closeActiveEditor');
  });

  it('says why a quantity is what it is, in a document that cannot be changed and goes with its record', async () => {
    // Taken from the link in the hover: the worker may know the record by another URI than the tests do.
    const link = /command:swingwright\.explainQuantity\?([^)\s"]+)/.exec(await hoverOn('face:'));
    assert.ok(link?.[1]);
    const [known, id] = JSON.parse(decodeURIComponent(link[1])) as [string, string];
    assert.equal(id, 'delivery.face');
    const uri = vscode.Uri.from({
      scheme: 'swingwright-doc',
      path: '/delivery.face_to_path.md',
      query: known,
    });
    const page = await vscode.workspace.openTextDocument(uri);
    assert.match(page.getText(), /^# Face to path: 4\.0 deg left/);
    await vscode.commands.executeCommand('swingwright.explainQuantity', known, 'delivery.face_to_path');
    await until(() => activeTab().includes('delivery.face_to_path'));
    await vscode.commands.executeCommand('workbench.action.closeActiveEditor');
  });

  it('finds everything again after the server was restarted', async () => {
    await vscode.commands.executeCommand('swingwright.restartServer');
    await until(() => findings('bare-number').length > 0);
    await write('mira.student.yaml', student.replace('hybrid:', 'wood:'));
    await until(() => findings('unknown-club').length > 0);
    await write('mira.student.yaml', student);
    await until(() => findings('unknown-club').length === 0);
  });

  describe('on the page', () => {
    before(needsStage);

    it('lists a finding among the problems, and opens its explanation from there', async () => {
      const rows = await stage.problems();
      assert.ok(
        rows.some((row) => row.includes('duplicate-key')),
        rows.join('\n'),
      );
      await stage.click('.markers-panel a:has-text("duplicate-key")');
      await until(() => activeTab().includes('duplicate-key'));
      await vscode.commands.executeCommand('workbench.action.closeActiveEditor');
      await vscode.commands.executeCommand('workbench.action.closePanel');
    });
  });

  function findings(code: string): vscode.Diagnostic[] {
    return vscode.languages.getDiagnostics(document.uri).filter((each) => codeOf(each) === code);
  }

  async function hoverOn(text: string): Promise<string> {
    const hovers = await vscode.commands.executeCommand<vscode.Hover[]>(
      'vscode.executeHoverProvider',
      document.uri,
      positionOf(text),
    );
    return hovers
      .flatMap(({ contents }) => contents.map((part) => (typeof part === 'string' ? part : part.value)))
      .join('\n');
  }

  function positionOf(text: string): vscode.Position {
    return document.positionAt(document.getText().indexOf(text) + 1);
  }
});

function activeTab(): string {
  return vscode.window.tabGroups.activeTabGroup.activeTab?.label ?? '';
}

function codeOf({ code }: vscode.Diagnostic): unknown {
  return typeof code === 'object' ? code.value : code;
}

const inFolder = (name: string): vscode.Uri => inTestFolder('extension-test', name);
const write = (name: string, text: string): Promise<vscode.Uri> => writeFile(inFolder(name), text);

function some<T>(list: T[]): T[] | undefined {
  return list.length > 0 ? list : undefined;
}
