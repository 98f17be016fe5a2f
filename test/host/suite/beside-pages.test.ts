// Two records compared, one compared with a revision, and a student's progress, in a real VS Code: the panel opens and shows the page.
import assert from 'node:assert/strict';
import * as vscode from 'vscode';
import { inTestFolder, until, writeFile } from './files.ts';
import { needsStage, stage } from './stage.ts';

const record = (date: string, path: number): string =>
  `swing: 1\nstudent: ines.student.yaml\ndate: ${date}\nclub: hybrid\ndelivery: { path: ${path} deg right ± 1 deg }\n`;
const at = (name: string): vscode.Uri => inTestFolder('beside-test', name);

describe('pages beside one another', () => {
  before(async () => {
    await writeFile(
      at('ines.student.yaml'),
      'student: 1\nname: Ines\nhand: right\nbag: { hybrid: { kind: hybrid } }\n',
    );
    await writeFile(at('a.swing.yaml'), record('2026-05-14', 5));
    await writeFile(at('b.swing.yaml'), record('2026-06-02', 1));
    const lean = (degrees: number): string =>
      `checkpoints: { impact: { shaft_lean: ${degrees} deg forward } }\n`;
    await writeFile(at('c.swing.yaml'), record('2026-05-20', 5) + lean(2));
    await writeFile(at('d.swing.yaml'), record('2026-06-09', 1) + lean(9));
  });
  afterEach(() => vscode.commands.executeCommand('workbench.action.closeAllEditors'));

  it('open a panel for two selected records, and for a student', async () => {
    await vscode.commands.executeCommand('swingwright.compareRecords', at('a.swing.yaml'), [
      at('a.swing.yaml'),
      at('b.swing.yaml'),
    ]);
    await until(() => pages().length === 1);
    await vscode.commands.executeCommand('swingwright.showProgress', at('ines.student.yaml'));
    await until(() => pages().some(({ label }) => label === 'Progress of Ines'));
  });

  it('open none where the file lies in no repository or git is not there', async () => {
    await vscode.commands.executeCommand('swingwright.compareWithRevision', at('a.swing.yaml'), 'HEAD');
    assert.equal(pages().length, 0);
  });

  it('compare with a revision through the git that VS Code has', async function () {
    // An extension in the browser's worker sees no other host's extensions, and the tests not it; git may be turned off.
    const isHere = vscode.extensions.getExtension('swingwright.swingwright') !== undefined;
    if (!isHere || vscode.extensions.getExtension('vscode.git') === undefined) return this.skip();
    const { execFileSync } = await import('node:child_process');
    const cwd = inTestFolder('beside-git', '').fsPath;
    const git = (...args: readonly string[]): unknown =>
      execFileSync(
        'git',
        [
          '-c',
          'user.name=Nobody',
          '-c',
          'user.email=nobody@example.invalid',
          '-c',
          'commit.gpgsign=false',
          ...args,
        ],
        { cwd },
      );
    const file = await writeFile(inTestFolder('beside-git', 'a.swing.yaml'), record('2026-05-14', 5));
    git('init', '--quiet');
    git('add', '--all');
    git('commit', '--quiet', '--no-verify', '--message', 'Lessons');
    await writeFile(file, record('2026-05-14', 1));
    await vscode.commands.executeCommand('swingwright.compareWithRevision', file, 'HEAD');
    await until(() => pages().some(({ label }) => label.startsWith('HEAD:')));
  });

  describe('on the page', () => {
    before(needsStage);
    before(async function () {
      this.timeout(180_000);
      await vscode.commands.executeCommand('swingwright.showProgress', at('ines.student.yaml'));
      const isThere = async (): Promise<boolean> => /Ines/.test(await stage.webviewText().catch(() => ''));
      // The first panel of a window waits for all that panels rest on.
      await until(isThere).catch(() => until(isThere));
      await vscode.commands.executeCommand('workbench.action.closeAllEditors');
    });

    for (const theme of ['light', 'dark', 'high-contrast-dark', 'high-contrast-light'] as const)
      it(`have nothing that a rule of accessibility is against, in the ${theme} theme`, async () => {
        await stage.theme(theme);
        for (const [words, command, given] of [
          [
            /Impact, face-on/,
            'compareRecords',
            [at('c.swing.yaml'), [at('c.swing.yaml'), at('d.swing.yaml')]],
          ],
          [/Ines/, 'showProgress', [at('ines.student.yaml')]],
          [/a\.swing\.yaml/, 'auditRecord', [at('a.swing.yaml')]],
        ] as const) {
          await vscode.commands.executeCommand(`swingwright.${command}`, ...given);
          await until(async () => words.test(await stage.webviewText().catch(() => '')));
          assert.deepEqual(await stage.webviewCopyFaults(), [], command);
          await stage.screenshot(`page-${command}-${theme}`);
          await vscode.commands.executeCommand('workbench.action.closeAllEditors');
        }
        await stage.theme('light');
      }).timeout(120_000);

    it('list the revisions of the record in front with what each changed, and compare one with the one before', async function () {
      const isHere = vscode.extensions.getExtension('swingwright.swingwright') !== undefined;
      if (!isHere || vscode.extensions.getExtension('vscode.git') === undefined) return this.skip();
      const file = inTestFolder('beside-git', 'a.swing.yaml');
      await vscode.window.showTextDocument(await vscode.workspace.openTextDocument(file));
      await vscode.commands.executeCommand('swingwright.revisions.focus');
      const pane = '.pane:has(.pane-header[aria-label^="Revisions"])';
      const others = '.sidebar .pane-header.expanded:not([aria-label^="Revisions"])';
      while ((await stage.texts(others)).length > 0) await stage.click(others);
      const rows = async (): Promise<string> =>
        (await stage.texts(`${pane} .monaco-list-row`)).join('\n').replace(/\s+/g, ' ');
      await until(async () =>
        /As it stands now.*club path 5\.0 deg right → 1\.0 deg right.*Lessons.*the oldest version here/s.test(
          await rows(),
        ),
      );
      await stage.screenshot('revisions-light', 'light');
      await stage.hover(`${pane} .monaco-list-row`);
      await stage.click(`${pane} .monaco-list-row .action-label`);
      await until(() => pages().length === 1);
    });

    it('offer the last lesson before with the same club first', async () => {
      await vscode.window.showTextDocument(await vscode.workspace.openTextDocument(at('d.swing.yaml')));
      const chosen = vscode.commands.executeCommand('swingwright.compareRecords');
      const rows = '.quick-input-widget .monaco-list-row';
      await until(async () => /b\.swing\.yaml.*2026-06-02, hybrid/s.test((await stage.texts(rows))[0] ?? ''));
      await stage.screenshot('compare-choice', 'light');
      await stage.press('Enter');
      await chosen;
      await until(() => pages().some(({ label }) => /d\.swing\.yaml.*b\.swing\.yaml/.test(label)));
    });

    it('say what differs', async () => {
      await vscode.commands.executeCommand('swingwright.compareRecords', at('a.swing.yaml'), [
        at('a.swing.yaml'),
        at('b.swing.yaml'),
      ]);
      await until(async () =>
        /1 entry changed.*4\.0\sdeg further left/s.test(await stage.webviewText().catch(() => '')),
      );
    });
  });
});

function pages(): readonly vscode.Tab[] {
  return vscode.window.tabGroups.all
    .flatMap(({ tabs }) => tabs)
    .filter(
      ({ input }) => input instanceof vscode.TabInputWebview && input.viewType.endsWith('swingwright.page'),
    );
}
