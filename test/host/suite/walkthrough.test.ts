// The walkthrough opens in the real VS Code, each step with its picture, and the buttons of its steps do what they say.
import assert from 'node:assert/strict';
import * as vscode from 'vscode';
import { inTestFolder, until, writeFile } from './files.ts';
import { projectFile, projectText } from './project.ts';
import { needsStage, stage } from './stage.ts';

const walkthrough = 'swingwright.swingwright#firstMinutes';
const step = (id: string): string => `[data-step-id="${walkthrough}#${id}"]`;
const picked = '.quick-input-list .monaco-list-row';

interface Step {
  readonly id: string;
  readonly title: string;
  readonly description: string;
  readonly when?: string;
  readonly media: { readonly image: Readonly<Record<string, string>>; readonly altText: string };
}

async function steps(): Promise<readonly Step[]> {
  const words = JSON.parse(await projectText('package.nls.json')) as Readonly<Record<string, string>>;
  const manifest = (await projectText('package.json')).replace(/"%([\w.]+)%"/g, (_, key: string) =>
    JSON.stringify(words[key]),
  );
  const { contributes } = JSON.parse(manifest) as {
    contributes: { walkthroughs: readonly { steps: readonly Step[] }[] };
  };
  return contributes.walkthroughs[0]!.steps;
}

async function openStep(id: string): Promise<void> {
  await vscode.commands.executeCommand('workbench.action.closeAllEditors');
  await vscode.commands.executeCommand('workbench.action.openWalkthrough', walkthrough, false);
  await stage.waitFor(step(id));
  await until(async () => {
    if ((await stage.texts(`${step(id)}.expanded`)).length > 0) return true;
    await stage.click(step(id));
    return false;
  });
}

const button = (id: string, nth = 0): string =>
  `${step(id)} .button-container:nth-of-type(1) a >> nth=${nth}`;

describe('the walkthrough', () => {
  before(needsStage);
  before(async () => {
    await writeFile(
      inTestFolder('walkthrough-test', 'ilse.student.yaml'),
      'student: 1\nname: Ilse\nhand: right\n',
    );
  });
  afterEach(() => vscode.commands.executeCommand('workbench.action.closeAllGroups'));

  it('has a picture for each theme in every step, and a button for what it speaks of', async () => {
    const commands = await vscode.commands.getCommands();
    for (const { id, description, media } of await steps()) {
      assert.deepEqual(Object.keys(media.image), ['light', 'dark', 'hc', 'hcLight'], id);
      for (const file of Object.values(media.image))
        assert.ok((await vscode.workspace.fs.stat(projectFile(file))).size > 1000, file);
      const named = [...description.matchAll(/\(command:([\w.]+)\)/g)].map(([, name]) => name!);
      assert.ok(named.length > 0, id);
      for (const name of named) assert.ok(commands.includes(name), name);
    }
  });

  it('shows every step that fits here, and its picture', async () => {
    const fitting = (await steps()).filter(({ when }) => when !== '!swingwright.hasLessons');
    await openStep('record');
    await until(
      async () => (await stage.texts('.getting-started-step .step-title')).length === fitting.length,
    );
    assert.deepEqual(
      await stage.texts('.getting-started-step .step-title'),
      fitting.map(({ title }) => title),
    );
    for (const { id, media } of fitting) {
      await openStep(id);
      const picture = `.getting-started-media img[alt="${media.altText}"]`;
      await until(() =>
        stage.evaluate<boolean>(
          `(document.querySelector(${JSON.stringify(picture.replaceAll('\n', ' '))})?.naturalWidth ?? 0) > 300`,
        ),
      );
    }
  });

  it('opens a sample beside it, with its findings', async () => {
    await openStep('record');
    await stage.click(button('record'));
    const editor = await until(() => {
      const front = vscode.window.activeTextEditor;
      return front?.document.uri.path.endsWith('/samples/bram/2026-05-09-seven-iron.swing.yaml') === true
        ? front
        : undefined;
    });
    const [left, right] = vscode.window.tabGroups.all;
    assert.equal(left?.activeTab?.label, 'Welcome');
    assert.equal(right?.activeTab?.label, '2026-05-09-seven-iron.swing.yaml');
    const codes = await until(() => {
      const found = vscode.languages.getDiagnostics(editor.document.uri);
      return found.length > 0
        ? found.map(({ code }) => (typeof code === 'object' ? code.value : code))
        : undefined;
    });
    assert.ok(codes.includes('path-against-arc'), codes.join());
    assert.ok(!codes.includes('missing-reference'), codes.join());
  });

  it('opens the problems', async () => {
    await openStep('findings');
    await stage.click(button('findings'));
    await stage.waitFor('.markers-panel');
    await vscode.commands.executeCommand('workbench.action.closePanel');
  });

  it('lists what can be explained', async () => {
    await openStep('hover');
    await stage.click(button('hover'));
    await until(async () => (await stage.texts(picked)).length > 3);
    await stage.press('Escape');
  });

  it('begins a record', async () => {
    await openStep('writing');
    await stage.click(button('writing'));
    await until(async () => (await stage.texts(picked)).join().includes('ilse'));
    await stage.press('Escape');
  });

  it('shows the lessons', async () => {
    await openStep('lessons');
    await stage.click(button('lessons'));
    await stage.waitFor('.pane:has(.pane-header[aria-label^="Lessons"]) .monaco-list-row');
  });
});
