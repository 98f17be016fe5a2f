// A handout in a real VS Code: the panel shows it and keeps nobody out, and a file of it is written where one was asked for.
import assert from 'node:assert/strict';
import * as vscode from 'vscode';
import { inTestFolder, until, writeFile } from './files.ts';
import { needsStage, stage } from './stage.ts';

const at = (name: string): vscode.Uri => inTestFolder('handout-test', name);

describe('a handout', () => {
  before(async () => {
    await writeFile(
      at('ines.student.yaml'),
      'student: 1\nname: Ines\nhand: right\nbag: { hybrid: { kind: hybrid } }\n',
    );
    await writeFile(
      at('a.swing.yaml'),
      `swing: 1
student: ines.student.yaml
date: 2026-05-14
club: hybrid
checkpoints: { address: { stance_width: 47 cm } }
delivery: { path: 5 deg right ± 1 deg, face: 1 deg right ± 1 deg }
flight: { carry: 150 m ± 5 m, finish: 12 m left ± 3 m, start: 1 deg right ± 1 deg }
goals: [{ finish: 5 m left..5 m right }]
plan:
  - { change: checkpoints.address.stance_width, to: 42 cm, feel: light, proof: checkpoints.impact.lead_pressure > 70 % }
  - { change: delivery.path, to: 2 deg right, proof: delivery.path < 3 deg }
`,
    );
  });
  afterEach(() => vscode.commands.executeCommand('workbench.action.closeAllEditors'));

  it('is written as HTML and, where there is Node, as PDF', async () => {
    const write = (format: string, to: vscode.Uri): Thenable<unknown> =>
      vscode.commands.executeCommand('swingwright.writeHandout', at('a.swing.yaml'), {
        audience: 'student',
        format,
        to,
      });
    await write('html', at('a.html'));
    const page = new TextDecoder().decode(await vscode.workspace.fs.readFile(at('a.html')));
    assert.match(page, /^<!doctype html>.*<h1>Ines<\/h1>/s);
    if (typeof process === 'undefined' || process.versions.node === undefined) return;
    if (vscode.extensions.getExtension('swingwright.swingwright') === undefined) return;
    await write('pdf', at('a.pdf'));
    const bytes = await vscode.workspace.fs.readFile(at('a.pdf'));
    assert.equal(new TextDecoder('latin1').decode(bytes.subarray(0, 5)), '%PDF-');
  });

  describe('on the page', () => {
    before(needsStage);

    it('is shown beside the record', async function () {
      this.timeout(120_000);
      await vscode.window.showTextDocument(at('a.swing.yaml'));
      await vscode.commands.executeCommand('swingwright.showHandout', at('a.swing.yaml'), {
        audience: 'file',
      });
      await until(async () =>
        /Two things to change.*What was measured/s.test(await stage.webviewText().catch(() => '')),
      );
      await stage.screenshot('handout-light', 'light');
    });

    for (const audience of ['student', 'file'] as const)
      it(`keeps nobody out, for the ${audience}`, async function () {
        this.timeout(120_000);
        const to = at(`${audience}.html`);
        await vscode.commands.executeCommand('swingwright.writeHandout', at('a.swing.yaml'), {
          audience,
          format: 'html',
          to,
        });
        const page = new TextDecoder().decode(await vscode.workspace.fs.readFile(to));
        for (const scheme of ['light', 'dark'] as const)
          assert.deepEqual(await stage.pageFaults(page, scheme), []);
        assert.equal(await stage.printedSheets(page), audience === 'student' ? 1 : 2);
      });
  });
});
