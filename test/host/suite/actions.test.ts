// Rewrites, fixes of a whole file, the outline's branch and the hovers of faults and templates. The same holds in the web worker host.
import assert from 'node:assert/strict';
import * as vscode from 'vscode';
import { closeEditor, openMarked } from './editor.ts';
import { inTestFolder, until, writeFile } from './files.ts';
import { needsStage, stage } from './stage.ts';

const student = `student: 1
name: Ilse
hand: right
bag:
  hybrid: { kind: hybrid, loft: 22 deg, lie: 59 deg, length: 40 in }
`;
const book = `faults: 1
book:
  handle-behind:
    title: Handle behind the head
    explanation: The hands are passed by the club head.
    at: impact
    evidence: checkpoints.impact.shaft_lean < 0 deg
    tends_to:
      - { effect: delivery.delivered_loft, direction: more }
      - { effect: delivery.low_point.depth, direction: above }
`;
const template = `template: 1
title: A hybrid from the turf
clubs: [hybrid]
checkpoints:
  impact: { shaft_lean: 4..8 deg forward, lead_pressure: 75..90 % }
`;
const head =
  'swing: 1\nstudent: ilse.student.yaml\ndate: 2026-05-14\nclub: hybrid\ntemplate: hybrid.template.yaml\nfaults_from: house.faults.yaml\n';

describe('actions, outline and hovers in the editor', () => {
  let count = 0;
  const at = (name: string): vscode.Uri => inTestFolder('actions-test', name);
  const open = (text: string): Promise<vscode.TextEditor> =>
    openMarked(at(`${(count += 1)}.swing.yaml`), text);

  before(async () => {
    await writeFile(at('ilse.student.yaml'), student);
    await writeFile(at('house.faults.yaml'), book);
    await writeFile(at('hybrid.template.yaml'), template);
  });
  afterEach(closeEditor);

  it('convert a unit and change nothing else', async () => {
    const text = `${head}delivery: # by the net\n  club_speed: 41 m/s by radar # third\n`;
    const { document } = await open(text.replace('club_speed', 'club$0_speed'));
    await rewriteFirst(document);
    // 41 m/s are 91.71 mph: 1 mph is 0.44704 m/s (the international mile of 1959).
    await until(() => document.getText() === text.replace('41 m/s', '91.7 mph'));
  });

  it('turn a value into its long form', async () => {
    const { document } = await open(`${head}delivery:\n  pa$0th: 5 deg right by radar\n`);
    await apply(document, 'Write in the long form');
    await until(() => /path: \{ value: 5 deg right, by: radar \}\n$/.test(document.getText()));
    await apply(document, 'Write in the short form');
    await until(() => document.getText() === `${head}delivery:\n  path: 5 deg right by radar\n`);
  });

  it('mend all of a file that can be mended without a question', async () => {
    const { document } = await open(
      `${head}delivery:\n  club_speed: 41\n  path: 5 deg right\nflight:\n  carry: 171$0\n`,
    );
    await until(() => codes(document).filter((code) => code === 'bare-number').length === 2);
    await until(async () => {
      // The editor drops an answer that comes while the text is still being looked at.
      await vscode.commands.executeCommand('editor.action.fixAll');
      return document.getText().includes('  club_speed: 41 m/s\n');
    });
    assert.ok(document.getText().endsWith('flight:\n  carry: 171 m\n'));
    await until(() => !codes(document).includes('bare-number'));
  });

  it('add the keys to measure next, which the outline lists with their reasons', async () => {
    const { document } = await open(`${head}deliv$0ery:\n  path: 5 deg right by radar\n`);
    const branch = await until(async () => {
      const symbols = await vscode.commands.executeCommand<vscode.DocumentSymbol[] | undefined>(
        'vscode.executeDocumentSymbolProvider',
        document.uri,
      );
      return symbols?.find(({ name }) => name === 'To measure next');
    });
    assert.ok(branch.children.length > 0);
    for (const { name, detail } of branch.children) {
      assert.match(name, /^[a-z_]+\.[a-z_.]+$/);
      assert.match(detail, /: ./);
    }
    await apply(document, 'Add the keys to measure next');
    const last = branch.children.at(-1)!.name.split('.').at(-1)!;
    await until(() => new RegExp(`^ +${last}:$`, 'm').test(document.getText()));
  });

  describe('on the page', () => {
    before(needsStage);

    it('are a menu at the value', async () => {
      const text = `${head}delivery:\n  club_speed: 41 m/s by radar\n`;
      await open(text.replace('club_speed', 'club$0_speed'));
      const titles = await until(async () => {
        await vscode.commands.executeCommand('editor.action.quickFix');
        const found = await stage.texts('.action-widget .monaco-list-row.action');
        return found.length > 0 && found;
      });
      assert.ok(titles.includes('Convert to mph: `91.7 mph`'), titles.join('\n'));
      await stage.press('Escape');
    });

    it('show belief, physics and history on a stated fault, all of it at once', async () => {
      await open(
        `${head}checkpoints:\n  impact: { shaft_lean: 2 deg forward }\nfaults:\n  - { fault: handle-behind, at: impact }\n$0`,
      );
      const said = await stage.hoverText('handle-behind');
      assert.match(said, /Handle behind the head at impact/);
      assert.match(said, /When shaft lean at impact changes by 1\.0 deg backward:/);
      assert.match(said, /Tends to change\s+Belief\s+Physics/);
      assert.match(said, /History has no say/);
      const seen = await stage.evaluate<{ all: number; shown: number }>(
        `(() => { const all = document.querySelector('.monaco-hover:not(.hidden) .monaco-hover-content');
          return { all: all.scrollHeight, shown: all.parentElement.clientHeight }; })()`,
      );
      assert.ok(seen.all <= seen.shown + 1, `${seen.all} of ${seen.shown}`);
    });

    it('say on the template where the record stands in its windows', async () => {
      await open(`${head}checkpoints:\n  impact: { shaft_lean: 2 deg forward by video }\n$0`);
      const said = await stage.hoverText('hybrid.template.yaml');
      assert.match(said, /A hybrid from the turf/);
      assert.match(said, /Outside: shaft lean at impact 2 deg forward/);
      assert.match(said, /Not measured, and not computed: pressure in the lead foot at impact\./);
    });
  });
});

async function rewriteFirst(document: vscode.TextDocument): Promise<void> {
  await until(async () => (await rewrites(document)).length > 0);
  await vscode.commands.executeCommand('editor.action.codeAction', {
    kind: 'refactor.rewrite',
    apply: 'first',
  });
}

async function apply(document: vscode.TextDocument, title: string): Promise<void> {
  const found = await until(async () =>
    (await rewrites(document)).find((action) => action.title.startsWith(title)),
  );
  assert.ok(found.edit && (await vscode.workspace.applyEdit(found.edit)), title);
}

async function rewrites({ uri }: vscode.TextDocument): Promise<readonly vscode.CodeAction[]> {
  const { selection } = vscode.window.activeTextEditor!;
  return vscode.commands.executeCommand<vscode.CodeAction[]>(
    'vscode.executeCodeActionProvider',
    uri,
    selection,
    vscode.CodeActionKind.RefactorRewrite.value,
  );
}

function codes({ uri }: vscode.TextDocument): readonly unknown[] {
  return vscode.languages
    .getDiagnostics(uri)
    .map(({ code }) => (typeof code === 'object' ? code.value : code));
}
