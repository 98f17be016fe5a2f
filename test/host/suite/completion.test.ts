// What comes up while a coach types a record, taken from the editor's own list. The same holds in the web worker host.
import assert from 'node:assert/strict';
import * as vscode from 'vscode';
import { closeEditor, isListOpen, openMarked, proposals, take, type } from './editor.ts';
import { inTestFolder, until, writeFile } from './files.ts';
import { needsStage } from './stage.ts';

const student = `student: 1
name: Ilse
hand: right
bag:
  driver: { kind: driver, loft: 10 deg }
  hybrid: { kind: hybrid, loft: 22 deg }
`;
const book = `faults: 1
book:
  weight-back: { evidence: checkpoints.impact.lead_pressure < 70 % }
  handle-behind: { evidence: checkpoints.impact.shaft_lean < 0 deg }
`;
const head = 'swing: 1\nstudent: ilse.student.yaml\nclub: hybrid\nfaults_from: house.faults.yaml\n';

/** Longer than the editor waits before it asks for proposals. */
const wellAfter = 1500;

describe('completion in the editor', () => {
  let count = 0;
  const at = (name: string): vscode.Uri => inTestFolder('completion-test', name);
  const open = (text: string): Promise<vscode.TextEditor> =>
    openMarked(at(`${(count += 1)}.swing.yaml`), text);

  before(needsStage);
  before(async () => {
    await writeFile(at('ilse.student.yaml'), student);
    await writeFile(at('house.faults.yaml'), book);
  });
  afterEach(closeEditor);

  it('goes from a key to its number, and from there to unit, direction and method', async function () {
    // Four lists come up one after another, and the first of them starts the server.
    this.timeout(90_000);
    const { document } = await open(`${head}delivery:\n  $0`);
    await type('att');
    await take('attack');
    await until(() => document.getText().endsWith('\n  attack: '));
    await type('4 ');
    await take('deg down');
    await type(' by r');
    await take('radar');
    await until(() => document.getText().endsWith('radar'));
    assert.equal(document.getText(), `${head}delivery:\n  attack: 4 deg down by radar`);
  });

  it('asks again by itself once a key was taken whose values are known', async () => {
    const { document } = await open('swing: 1\nstudent: ilse.student.yaml\n$0');
    await vscode.commands.executeCommand('editor.action.triggerSuggest');
    await take('club');
    const clubs = await proposals('hybrid');
    assert.ok(clubs.includes('driver'), clubs.join());
    await take('hybrid');
    await until(() => document.getText() === 'swing: 1\nstudent: ilse.student.yaml\nclub: hybrid');
  });

  it('asks again by itself once `by` was taken', async () => {
    const { document } = await open(`${head}delivery:\n  path: 3 deg right $0`);
    await type('by');
    await take('by');
    await take('video');
    await until(() => document.getText().endsWith('path: 3 deg right by video'));
  });

  it('stops at each place of a form, and lists the words where there is a choice', async () => {
    const { document } = await open(`${head}delivery:\n  path: $0`);
    await vscode.commands.executeCommand('editor.action.triggerSuggest');
    await take('the long form');
    await until(() => document.getText().includes('{ value: 0 deg '));
    await type('5');
    await vscode.commands.executeCommand('jumpToNextSnippetPlaceholder');
    const directions = await proposals('left');
    assert.deepEqual(directions.toSorted(), ['left', 'right']);
    // Taking a choice goes on to the next place by itself.
    await take('left');
    await take('camera');
    await type('on grass');
    await until(() =>
      document.getText().endsWith('path: { value: 5 deg left, by: camera, note: "on grass" }'),
    );
  });

  it('fills a flow mapping', async () => {
    const { document } = await open(`${head}faults:\n  - { $0 }\n`);
    await vscode.commands.executeCommand('editor.action.triggerSuggest');
    await take('fault');
    await take('weight-back');
    await until(() => document.getText().endsWith('  - { fault: weight-back }\n'));
  });

  it('leaves free text alone', async () => {
    const { document } = await open(`${head}faults:\n  - { fault: weight-back, note: $0 }\n`);
    await type('stays back at impact by 3 deg ');
    await new Promise((resolve) => setTimeout(resolve, wellAfter));
    assert.equal(await isListOpen(), false);
    assert.ok(document.getText().endsWith('note: stays back at impact by 3 deg  }\n'));
  });
});
