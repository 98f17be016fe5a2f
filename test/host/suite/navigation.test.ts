// Finding one's way in a real VS Code: from file to file, by name, in the view of lessons and in the status bar.
import assert from 'node:assert/strict';
import * as vscode from 'vscode';
import { inTestFolder, until, writeFile } from './files.ts';
import { needsStage, stage } from './stage.ts';

const files = {
  'rika.student.yaml':
    'student: 1\nname: Rika\nhand: right\nbag:\n  driver: { kind: driver, loft: 10 deg }\n',
  'own.faults.yaml':
    'faults: 1\nbook:\n  hangs-back: { title: Hangs back, evidence: checkpoints.impact.lead_pressure < 70 % }\n',
  'one.swing.yaml': `swing: 1
student: rika.student.yaml
date: 2026-04-01
club: driver
faults_from: own.faults.yaml
faults: [{ fault: hangs-back }]
plan:
  - { change: checkpoints.address.stance_width, to: 45 cm, because: [hangs-back], proof: checkpoints.impact.lead_pressure > 75 % }
`,
  'two.swing.yaml': `swing: 1
student: rika.student.yaml
date: 2026-04-20
club: driver
faults_from: own.faults.yaml
faults: [{ fault: hangs-back }]
delivery:
  path: 5 deg right ± 1 deg
  face: 1 deg right ± 1 deg
  face_to_path: 8 deg right ± 1 deg
`,
};
type Name = keyof typeof files;

describe('finding the way', () => {
  const at = (name: Name): vscode.Uri => inTestFolder('navigation-test', name);
  let document: vscode.TextDocument;

  before(async () => {
    for (const [name, text] of Object.entries(files)) await writeFile(at(name as Name), text);
    document = await vscode.workspace.openTextDocument(at('two.swing.yaml'));
    await vscode.window.showTextDocument(document);
    await until(() => vscode.languages.getDiagnostics(document.uri).length > 0);
  });
  after(async () => {
    await vscode.commands.executeCommand('workbench.action.revertAndCloseActiveEditor');
    await vscode.workspace.fs.delete(inTestFolder('navigation-test', ''), { recursive: true });
  });

  const positionOf = (text: string, after = ''): vscode.Position =>
    document.positionAt(document.getText().indexOf(text, document.getText().indexOf(after)) + 1);
  const run = <T>(command: string, ...values: unknown[]): Thenable<T> =>
    vscode.commands.executeCommand<T>(`vscode.${command}`, document.uri, ...values);
  const place = (uri: vscode.Uri, { start }: vscode.Range): string =>
    `${uri.path.slice(uri.path.lastIndexOf('/') + 1)}:${start.line + 1}`;

  it('leads from a stated fault to the book and from a club to the bag', async () => {
    for (const [word, target] of [
      ['hangs-back', 'own.faults.yaml:3'],
      ['driver', 'rika.student.yaml:5'],
    ] as const) {
      const links = await run<(vscode.LocationLink | vscode.Location)[]>(
        'executeDefinitionProvider',
        positionOf(word),
      );
      const found = links.map((link) =>
        'targetUri' in link
          ? place(link.targetUri, link.targetSelectionRange ?? link.targetRange)
          : place(link.uri, link.range),
      );
      assert.deepEqual(found, [target]);
    }
  });

  it('leads from the quantity of a planned change to its page where it has no entry', async () => {
    const one = await vscode.workspace.openTextDocument(at('one.swing.yaml'));
    const position = one.positionAt(one.getText().indexOf('stance_width'));
    const links = await vscode.commands.executeCommand<vscode.LocationLink[]>(
      'vscode.executeDefinitionProvider',
      one.uri,
      position,
    );
    const target = links[0]?.targetUri ?? (links[0] as unknown as vscode.Location).uri;
    assert.equal(target.scheme, 'swingwright-doc');
    const page = await vscode.workspace.openTextDocument(target);
    assert.match(page.getText(), /^# Stance width/);
  });

  it('lists every mention of a fault in all files', async () => {
    const found = await run<vscode.Location[]>('executeReferenceProvider', positionOf('hangs-back'));
    assert.deepEqual(found.map(({ uri, range }) => place(uri, range)).sort(), [
      'one.swing.yaml:6',
      'one.swing.yaml:8',
      'own.faults.yaml:3',
      'two.swing.yaml:6',
    ]);
  });

  it('renames a club over two files and more, and nothing else in them', async () => {
    const edit = await run<vscode.WorkspaceEdit>(
      'executeDocumentRenameProvider',
      positionOf('driver'),
      'big stick',
    );
    assert.ok(await vscode.workspace.applyEdit(edit));
    for (const name of ['rika.student.yaml', 'one.swing.yaml', 'two.swing.yaml'] as const) {
      const changed = await vscode.workspace.openTextDocument(at(name));
      const expected = name.includes('student')
        ? files[name].replace('driver:', 'big stick:')
        : files[name].replace('driver', 'big stick');
      assert.equal(changed.getText(), expected, name);
    }
    const back = await run<vscode.WorkspaceEdit>(
      'executeDocumentRenameProvider',
      positionOf('big stick'),
      'driver',
    );
    assert.ok(await vscode.workspace.applyEdit(back));
    assert.ok(await vscode.workspace.saveAll());
    assert.equal(document.getText(), files['two.swing.yaml']);
  });

  it('says why something cannot be renamed', async () => {
    await assert.rejects(
      async () => run('executeDocumentRenameProvider', positionOf('face_to_path'), 'x'),
      /is a quantity of the format/,
    );
  });

  it('finds lessons, students and faults by name', async () => {
    const find = (query: string) =>
      vscode.commands.executeCommand<vscode.SymbolInformation[]>(
        'vscode.executeWorkspaceSymbolProvider',
        query,
      );
    const lessons = await find('2026-04-20');
    assert.ok(
      lessons.some(({ name, containerName }) => name === '2026-04-20 driver' && containerName === 'Rika'),
    );
    assert.ok(
      (await find('hangs-back')).some(({ location }) => location.uri.path.endsWith('own.faults.yaml')),
    );
    assert.ok((await find('Rika')).some(({ name }) => name === 'Rika'));
  });

  it('folds sections and grows a selection', async () => {
    const folds = await run<vscode.FoldingRange[]>('executeFoldingRangeProvider');
    assert.deepEqual(
      folds.map(({ start, end }) => [start, end]),
      [[6, 9]],
    );
    const [range] = await run<vscode.SelectionRange[]>('executeSelectionRangeProvider', [
      positionOf('deg', 'face:'),
    ]);
    assert.equal(document.getText(range?.parent?.range), '1 deg right');
  });

  describe('on the page', () => {
    before(needsStage);
    const texts = async (): Promise<string> =>
      (await stage.texts('.pane:has(.pane-header[aria-label^="Lessons"]) .monaco-list-row'))
        .join('\n')
        .replace(/\s+/g, ' ');

    it('shows in the status bar what conflicts and what is due, and opens the problems', async () => {
      const item = async (): Promise<string> =>
        (await stage.texts('[id="swingwright.swingwright.swingwright.record"]')).join();
      await until(async () => /1 conflict, 1 due/.test(await item()));
      await stage.click('[id="swingwright.swingwright.swingwright.record"] a');
      await stage.waitFor('.markers-panel');
      await vscode.commands.executeCommand('workbench.action.closePanel');
    });

    it('shows students, their lessons and how each stands, and follows a change', async () => {
      await vscode.commands.executeCommand('swingwright.lessons.focus');
      // A list has only those rows that are seen, and other tests have left students here: the view gets all of the height, and is
      // gone through down to the one that is looked for.
      const others = '.sidebar .pane-header.expanded:not([aria-label^="Lessons"])';
      while ((await stage.texts(others)).length > 0) await stage.click(others);
      await stage.click('.pane:has(.pane-header[aria-label^="Lessons"]) .monaco-list-row');
      await until(async () => {
        const isSeen = (await texts()).includes('Rika');
        if (!isSeen) await stage.press('PageDown');
        return isSeen;
      });
      await stage.click('.pane:has(.pane-header[aria-label^="Lessons"]) .monaco-list-row:has-text("Rika")');
      await until(async () => (await texts()).includes('2026-04-20 driver'));
      const seen = await texts();
      assert.match(seen, /2026-04-20 driver ?1 conflict, 1 due/);
      assert.match(seen, /2026-04-01 driver ?plan open, 1 due/);
      await writeFile(at('one.swing.yaml'), files['one.swing.yaml'].replace('2026-04-01', '2026-04-02'));
      await until(async () => (await texts()).includes('2026-04-02 driver'));
      await writeFile(at('one.swing.yaml'), files['one.swing.yaml']);
    });
  });
});
