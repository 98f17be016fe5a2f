// Coach and analyst review one record of a git repository through VS Code: remarks, answers and edits on two branches, merged by git, signed off, and voided by a later value.
import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import { chmodSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { delimiter, join } from 'node:path';
import * as vscode from 'vscode';
import { inTestFolder, until, writeFile } from './files.ts';
import { needsStage, stage } from './stage.ts';
import {
  answer,
  beginRemark,
  button,
  labels,
  put,
  say,
  sign,
  statusSays,
  thread,
  writeAs,
} from './threads.ts';

const record = `swing: 1
date: 2026-05-14
club: hybrid
delivery:
  attack: 3.5 deg down by radar
  path: 2 deg right by radar   # five shots
  face: 1 deg right by camera
`;
/** A folder for each try, since a repository cannot be begun twice. */
let uri: vscode.Uri;
let tries = 0;
/** What git finds where its user's own files and programs would be. */
let home = '';

describe('the review of a record on two branches', function () {
  this.timeout(300_000);
  before(needsStage);
  before(function () {
    // Git changes files under the editor here, and only beside an extension host in Node is there a git to do so.
    if (process.env['SWINGWRIGHT_TEST_WHERE'] === 'worker') this.skip();
    home = mkdtempSync(join(tmpdir(), 'swingwright-story-'));
    writeFileSync(
      join(home, 'swingwright'),
      `#!/bin/sh\nELECTRON_RUN_AS_NODE=1 exec "${process.execPath}" "${commandLine()}" "$@"\n`,
    );
    chmodSync(join(home, 'swingwright'), 0o755);
  });
  after(async () => {
    if (home === '') return;
    rmSync(home, { recursive: true, force: true });
    await writeAs(undefined);
    await vscode.commands.executeCommand('workbench.action.files.revert');
    await vscode.commands.executeCommand('workbench.action.closeAllEditors');
  });

  it('loses nothing in the merge, and ends in a signature that a later value voids', async () => {
    uri = await writeFile(inTestFolder(`review-story-${(tries += 1)}`, 'a.swing.yaml'), record);
    git('init', '-q', '-b', 'main');
    program('git-setup');
    await commit('Write the lesson');
    const document = await vscode.workspace.openTextDocument(uri);
    await vscode.window.showTextDocument(document);

    git('switch', '-q', '-c', 'analyst');
    await writeAs('Jon');
    await beginRemark(document, 'face');
    await say('Square?');
    await stage.click(button('Suggest a Value…'));
    await answer('2 deg right by camera');
    await stage.press('Enter');
    await until(async () => (await labels()).includes('delivery.face · open'));
    await beginRemark(document, 'path');
    await say('Which five?');
    await stage.click(button('Add Remark'));
    await until(async () => (await labels()).includes('delivery.path · open'));
    await commit('Remark');

    // The coach has the remarks so far, and answers while the analyst goes on.
    git('switch', '-q', 'main');
    git('merge', '-q', '--ff-only', 'analyst');
    await sitDown('Lea', document);
    await until(async () => (await labels()).length === 2);
    await stage.click(`${thread('delivery.face')} .review-thread-reply-button`);
    await say('It was a degree off.', thread('delivery.face'));
    await stage.click(button('Reply', thread('delivery.face')));
    await until(async () => (await labels()).includes('delivery.face · answered'));
    await change(document, '3.5 deg down', '4 deg down');
    await commit('Answer');

    git('switch', '-q', 'analyst');
    await until(() => document.getText() === record);
    await sitDown('Jon', document);
    await until(async () => (await labels()).includes('delivery.face · open'));
    await stage.click(sign('Settle', 'delivery.path'));
    await until(async () => (await labels()).join() === 'delivery.face · open');
    await change(document, '2 deg right by radar', '2.5 deg right by radar');
    await commit('Settle');

    git('switch', '-q', 'main');
    git('merge', '-q', '-m', 'Both', 'analyst');
    assert.equal(git('status', '--porcelain', '-uno'), '');
    const both = record.replace('3.5 deg', '4 deg').replace('path: 2 deg', 'path: 2.5 deg');
    await until(() => document.getText() === both);
    await until(async () => (await labels()).join() === 'delivery.face · answered');
    const merged = review();
    assert.deepEqual(merged.match(/(?<=text: ).*/g), ['Square?', 'It was a degree off.', 'Which five?']);
    assert.deepEqual(merged.match(/(?<=state: ).*/g), ['answered', 'settled']);

    await sitDown('Lea', document);
    await until(async () => (await labels()).join() === 'delivery.face · answered');
    await stage.hover('.review-comment');
    await stage.click(sign('Take the Suggested Value', 'delivery.face'));
    await until(() => document.getText().includes('face: 2 deg right by camera'));
    assert.ok(await document.save());
    await stage.click(sign('Settle', 'delivery.face'));
    await until(async () => (await labels()).length === 0);

    await writeAs('Jon');
    await stage.palette('Swingwright: Sign Off This Record');
    await until(async () =>
      (await stage.texts('.quick-input-title')).includes('Sign off this record as Jon?'),
    );
    await stage.press('Enter');
    await statusSays(/signed off by Jon/);
    await commit('Sign off');
    await change(document, '2 deg right by camera', '2.2 deg right by camera');
    await statusSays(/sign-off void/);
    await until(() =>
      vscode.languages
        .getDiagnostics(uri)
        .some(({ code }) => typeof code === 'object' && code.value === 'sign-off-void'),
    );
  });
});

/** git in the folder of the record, with nobody's own settings, and `swingwright` on the path as its merge driver calls it. */
function git(...args: readonly string[]): string {
  return execFileSync('git', args, { cwd: folder(), env: environment(), encoding: 'utf8' });
}

function program(...args: readonly string[]): void {
  execFileSync(process.execPath, [commandLine(), ...args], {
    cwd: folder(),
    env: { ...environment(), ELECTRON_RUN_AS_NODE: '1' },
  });
}

function folder(): string {
  return vscode.Uri.joinPath(uri, '..').fsPath;
}

function commandLine(): string {
  return join(process.env['SWINGWRIGHT_TEST_ROOT'] ?? '', 'dist/cli.js');
}

function environment(): NodeJS.ProcessEnv {
  return {
    ...process.env,
    PATH: `${home}${delimiter}${process.env['PATH'] ?? ''}`,
    HOME: home,
    GIT_CONFIG_NOSYSTEM: '1',
    GIT_AUTHOR_NAME: 'A Coach',
    GIT_AUTHOR_EMAIL: 'coach@lessons.example',
    GIT_COMMITTER_NAME: 'A Coach',
    GIT_COMMITTER_EMAIL: 'coach@lessons.example',
  };
}

/** What the editor shows may not lie on the disk yet. */
async function commit(message: string): Promise<void> {
  await until(() => vscode.workspace.textDocuments.every(({ isDirty }) => !isDirty));
  git('add', '--all');
  git('commit', '-q', '-m', message);
}

/** Somebody else opens the record, at its top: what was typed into threads and scrolled to is not theirs. */
async function sitDown(author: string, document: vscode.TextDocument): Promise<void> {
  await writeAs(author);
  await vscode.commands.executeCommand('workbench.action.closeAllEditors');
  const editor = await vscode.window.showTextDocument(document);
  editor.revealRange(new vscode.Range(0, 0, 0, 0), vscode.TextEditorRevealType.AtTop);
}

async function change(document: vscode.TextDocument, from: string, to: string): Promise<void> {
  await put(document, from, to);
  // The command that saves would take the form of a thread in front of the record.
  assert.ok(await document.save());
  assert.equal(readFileSync(uri.fsPath, 'utf8'), document.getText());
  assert.ok(document.getText().includes(to));
}

/** As it lies on disk. */
function review(): string {
  return readFileSync(join(folder(), 'a.review.yaml'), 'utf8');
}
