// The sheet beside a record in a real VS Code: it opens, follows the text, leads into it, lights up what the cursor is on, and comes back.
import assert from 'node:assert/strict';
import * as vscode from 'vscode';
import { inTestFolder, until, writeFile } from './files.ts';
import { needsStage, stage } from './stage.ts';

const text = `swing: 1
date: 2026-03-07
club: seven iron
checkpoints:
  address: { ball_position: 9 cm behind }
  impact: { shaft_lean: 7 deg forward ± 2 deg }
delivery:
  club_speed: 32 m/s ± 0.5 m/s
  attack: 4 deg down ± 0.5 deg
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
      const place = document.positionAt(text.indexOf('2 deg right'));
      await editor.edit((edit) => edit.replace(new vscode.Range(place, place.translate(0, 1)), '4'));
      await shows(/Club path\s*4\.0 deg right/);
    });

    it('puts the cursor on the entry of what is clicked, in a picture or below it', async () => {
      await shows(/Club path/);
      await stage.webviewClick('[data-name=strike-from-above] .things button:has-text("Face direction")');
      await cursorIn('face: 1 deg right ± 0.5 deg');
      await stage.webviewClick('[data-name=strike-from-above] g[data-id="delivery.path"] text');
      await cursorIn('path: 2 deg right ± 0.5 deg');
      assert.equal(editorOf()?.viewColumn, vscode.ViewColumn.One);
      // The keys of the sheet go on working after a click, and write nothing into the record.
      const before = document.getText();
      const first = await checkpoint();
      // At the last one it stays.
      const [there, back] = first === 'impact' ? ['[', ']'] : [']', '['];
      await stage.press(there);
      await until(async () => (await checkpoint()) !== first);
      await stage.press(back);
      await until(async () => (await checkpoint()) === first);
      assert.equal(document.getText(), before);
    });

    it('lights up what the cursor stands on, and goes to its checkpoint', async () => {
      await shows(/Club path/);
      moveCursor('shaft_lean');
      await until(async () => (await lit()).includes('checkpoints.impact.shaft_lean'));
      assert.equal(await checkpoint(), 'impact');
      moveCursor('path: 2');
      await until(async () => (await lit()).includes('delivery.path'));
      assert.ok(!(await lit()).includes('checkpoints.impact.shaft_lean'));
    });

    it('steps through the checkpoints by keys and by commands, and stops at the ends', async () => {
      await shows(/Checkpoints/);
      assert.equal(await checkpoint(), 'address');
      await stage.webviewFocus('.steps input:checked');
      await stage.press('ArrowRight');
      await until(async () => (await checkpoint()) === 'impact');
      await stage.press(']');
      assert.equal(await checkpoint(), 'impact');
      await stage.press('[');
      await until(async () => (await checkpoint()) === 'address');
      await vscode.commands.executeCommand('swingwright.nextCheckpoint');
      await until(async () => (await checkpoint()) === 'impact');
      await vscode.commands.executeCommand('swingwright.previousCheckpoint');
      await until(async () => (await checkpoint()) === 'address');
    });

    it('moves a quantity by key, shows what follows beside the present, and writes it as a plan', async () => {
      await shows(/What if/);
      await stage.webviewFocus('[role=tab][aria-selected=true]');
      await stage.press('ArrowRight');
      await shows(/What would change/);
      await stage.webviewEvaluate(`(() => {
        const select = document.querySelector('.slider select');
        select.value = 'delivery.path';
        select.dispatchEvent(new Event('change', { bubbles: true }));
      })()`);
      await shows(/Club path\s*now 2\.0 deg right/);
      await stage.webviewFocus('.slider input');
      await stage.press('ArrowLeft');
      await stage.press('ArrowLeft');
      await shows(/Club path\s*1\.0 deg right \(now/);
      await shows(/Club path\s*2\.0 deg right ± 0\.5 deg\s*1\.00? deg right/);
      assert.equal(
        await stage.webviewEvaluate('document.querySelector(".slider input").ariaValueText'),
        '1.0 deg right, inside what is seen in practice',
      );
      await shows(/Face direction[^]*moves 1\.00? deg left/);
      await stage.webviewClick('button.main');
      await until(() =>
        document.getText().includes('plan:\n  - change: delivery.path\n    to: 1.0 deg right\n'),
      );
      assert.ok(document.getText().startsWith(text));
      await shows(/Written into the plan\. Undo/);
      await stage.webviewClick('button.main');
      await shows(/The plan says so already/);
      const planned = document.getText();
      await stage.webviewFocus('.slider input');
      await stage.press('ArrowLeft');
      await stage.webviewClick('button.main');
      await until(() => document.getText() !== planned);
      await shows(/Written into the plan\. Undo/);
      await stage.screenshot('what-if-written');
      await stage.press('Control+z');
      await shows(/Undone: the plan is as it was/);
      assert.equal(document.getText(), planned);
      assert.equal(vscode.window.activeTextEditor?.document, document);
    });

    it('comes back as it was after another page stood in its place', async () => {
      await shows(/Checkpoints/);
      await vscode.commands.executeCommand('swingwright.nextCheckpoint');
      await until(async () => (await checkpoint()) === 'impact');
      await stage.webviewEvaluate('scrollTo(0, 150)');
      await until(async () => (await stage.webviewEvaluate('scrollY')) === 150);
      const other = { viewColumn: vscode.ViewColumn.Two };
      await vscode.window.showTextDocument(await vscode.workspace.openTextDocument({ content: '' }), other);
      await vscode.commands.executeCommand('workbench.action.closeActiveEditor');
      await shows(/Checkpoints/);
      assert.equal(await checkpoint(), 'impact');
      await until(async () => (await stage.webviewEvaluate('scrollY')) === 150);
    });

    for (const theme of ['light', 'dark', 'high-contrast-dark', 'high-contrast-light'] as const)
      it(`has nothing that axe finds wrong in the ${theme} theme`, async () => {
        await stage.theme(theme);
        await shows(/Checkpoints/);
        await stage.webviewEvaluate(
          'document.querySelectorAll("details").forEach((one) => (one.open = true))',
        );
        assert.deepEqual(await stage.webviewFaults(), []);
        await stage.webviewClick('#tab-what-if');
        await shows(/What is now, as all entries together say, and what would be then/);
        await stage.webviewFocus('.slider input');
        await stage.press('ArrowRight');
        await shows(/\(now /);
        assert.deepEqual(await stage.webviewFaults(), []);
      });

    it('sets off what is chosen where the system sets all colours', async () => {
      await shows(/Checkpoints/);
      await stage.forcedColours(true);
      try {
        const grounds = await stage.webviewEvaluate<string[]>(`[
          '.tabs [aria-selected=true]', '.tabs [aria-selected=false]',
          '.steps input:checked + span', '.steps input:not(:checked) + span',
        ].map((one) => getComputedStyle(document.querySelector(one)).backgroundColor)`);
        const [tab, otherTab, checkpoint, otherCheckpoint] = grounds;
        assert.notEqual(tab, otherTab);
        assert.notEqual(checkpoint, otherCheckpoint);
        assert.equal(tab, checkpoint);
        assert.deepEqual(await stage.webviewFaults(), []);
        await stage.webviewClick('#tab-what-if');
        await shows(/What is now, as all entries together say, and what would be then/);
        assert.deepEqual(await stage.webviewFaults(), []);
      } finally {
        await stage.forcedColours(false);
      }
    });

    it('loads nothing from elsewhere, runs no script but its own, and sends nothing', async () => {
      await shows(/Checkpoints/);
      const refused = await stage.webviewEvaluate<string[]>(`(async () => {
        const refused = [];
        addEventListener('securitypolicyviolation', ({ effectiveDirective }) => refused.push(effectiveDirective));
        document.body.append(Object.assign(new Image(), { src: 'https://elsewhere.invalid/a.png' }));
        document.body.append(Object.assign(document.createElement('script'), { textContent: 'window.ran = true' }));
        document.body.append(Object.assign(document.createElement('style'), { textContent: 'body { top: 1px }' }));
        await fetch('https://elsewhere.invalid/').catch(() => undefined);
        await new Promise((done) => setTimeout(done, 200));
        return [...refused.sort(), String(window.ran)];
      })()`);
      assert.deepEqual(refused, ['connect-src', 'img-src', 'script-src-elem', 'style-src-elem', 'undefined']);
    });
  });

  function editorOf(): vscode.TextEditor | undefined {
    return vscode.window.visibleTextEditors.find((editor) => editor.document === document);
  }

  function moveCursor(to: string): void {
    const at = document.positionAt(document.getText().indexOf(to));
    editorOf()!.selection = new vscode.Selection(at, at);
  }

  async function cursorIn(words: string): Promise<void> {
    await until(() => {
      const at = document.offsetAt(editorOf()?.selection.active ?? new vscode.Position(0, 0));
      return document.getText().startsWith(words, at);
    });
  }
});

/** Ids of what is lit, in pictures and below them. */
function lit(): Promise<string[]> {
  return stage.webviewEvaluate(
    `[...document.querySelectorAll('.drawn .lit, .things [aria-current]')].map((one) => one.dataset.id)`,
  );
}

function checkpoint(): Promise<string> {
  return stage.webviewEvaluate('document.querySelector(".steps input:checked").value');
}

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
