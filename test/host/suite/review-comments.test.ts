// Reviews in a real VS Code: threads beside their lines, and each act of a reviewer through the buttons that a reviewer presses.
import assert from 'node:assert/strict';
import * as vscode from 'vscode';
import { inTestFolder, until, writeFile } from './files.ts';
import { needsStage, stage } from './stage.ts';
import {
  answer,
  beginRemark,
  button,
  counted,
  labels,
  put,
  say,
  sign,
  statusSays,
  thread,
  writeAs,
} from './threads.ts';

const record = `swing: 1
date: 2026-03-07
club: hybrid
delivery:
  club_speed: 41 m/s
  path: 2 deg right
  face: 1 deg right   # held
`;
const hostile = {
  author: '<img src=x onerror=alert(1)> [a](command:x) $(bug)',
  text: '**bold** <b>b</b> [link](https://elsewhere.invalid) $(bug)',
};
const review = `review: 1
of: one.swing.yaml
threads:
  - id: r1
    about: delivery.face
    value: 3 deg right
    author: "${hostile.author}\\u202e\\n# b"
    time: 2026-06-02T10:00:00Z
    text: "${hostile.text}\\nsecond"
  - id: r2
    about: delivery.path
    value: 2 deg right
    author: Jon
    time: 2026-06-02T10:00:00Z
    text: Sure?
    replies:
      - { author: Jon, time: 2026-06-02T11:00:00Z, state: settled }
`;
const at = (name: string): vscode.Uri => inTestFolder('review-test', name);

describe('the review of a record', function () {
  // Each of many acts goes through the page.
  this.timeout(120_000);
  before(needsStage);
  after(() => writeAs(undefined));
  afterEach(async () => {
    await vscode.commands.executeCommand('workbench.action.files.revert');
    await vscode.commands.executeCommand('workbench.action.closeAllEditors');
  });

  it('stands beside its lines, and whatever it says is text', async () => {
    await open('one', review);
    await until(async () => (await labels()).length === 1);
    assert.deepEqual(await labels(), ['delivery.face · open · was 3 deg right, now 1 deg right']);
    const [said] = await stage.evaluate<string[]>(
      '[...document.querySelectorAll(".review-widget .comments-container")].map((one) => one.ariaLabel)',
    );
    assert.match(said ?? '', /on lines 7 through 7/);
    const [author] = await stage.texts('.review-widget .author');
    assert.ok(author?.startsWith(hostile.author), author);
    assert.doesNotMatch(author ?? '', /[\u202e\n]/);
    const [body] = await stage.texts('.review-widget .comment-body');
    assert.ok(body?.includes(hostile.text) && body.includes('second'), body);
    assert.deepEqual(await stage.texts('.review-comment :is(img, a[href], b, .codicon-bug)'), []);
    // One that is settled is folded.
    await until(async () => (await counted('.comment-range-glyph.comment-thread-unresolved')) === 1);
    assert.equal(await counted('.comment-range-glyph.comment-thread'), 1);
  });

  it('begins with a remark, whose author is asked once where nobody knows the name', async () => {
    await writeAs(undefined);
    const document = await open('begun');
    await beginRemark(document, 'path');
    await say('Sure?');
    await stage.click(button('Add Remark'));
    await answer('Ida');
    await stage.press('Enter');
    await until(async () => (await labels()).includes('delivery.path · open'));
    const text = await saved('begun');
    assert.match(
      text,
      /^review: 1\nof: begun\.swing\.yaml\nthreads:\n {2}- id: r\w+\n {4}about: delivery\.path\n/,
    );
    assert.match(
      text,
      /value: 2 deg right\n {4}author: Ida\n {4}time: \d{4}-\d\d-\d\dT\d\d:\d\d:\d\dZ\n {4}text: Sure\?\n/,
    );
    assert.equal(vscode.workspace.getConfiguration('swingwright.review').get('author'), 'Ida');
    assert.equal(document.isDirty, false);
  });

  it('goes on with replies, and is settled and opened again', async () => {
    await writeAs('Ida');
    await open('talk', review.replace('one.swing', 'talk.swing'));
    await until(async () => (await labels()).length === 1);
    await stage.click('.review-thread-reply-button');
    await say('Yes, by eye.', thread());
    await stage.click(button('Reply', thread()));
    await until(async () => /^delivery\.face · answered/.test((await labels())[0] ?? ''));
    assert.match(await saved('talk'), /author: Ida\n.*\n {8}state: answered\n {8}text: Yes, by eye\.\n/);
    await stage.click(sign('Settle'));
    await until(async () => (await labels()).length === 0);
    assert.match(await saved('talk'), /state: settled\n {2}- id: r2/);
    // The settled threads are folded: the mark beside the lower of the two lines opens this one.
    await stage.click(':nth-match(.comment-range-glyph.comment-thread, 2)');
    await until(async () => /^delivery\.face · settled/.test((await labels())[0] ?? ''));
    await stage.click(sign('Reopen'));
    await until(async () => /^delivery\.face · open/.test((await labels())[0] ?? ''));
    assert.match(
      await saved('talk'),
      /state: settled\n {6}- author: Ida\n {8}time: .*\n {8}state: open\n {2}- id: r2/,
    );
  });

  it('suggests a value, which is taken into the record and nothing else with it', async () => {
    await writeAs('Ida');
    const document = await open('offer');
    await beginRemark(document, 'face');
    await say('Measured anew.');
    await stage.click(button('Suggest a Value…'));
    await answer('2 kg');
    await until(async () => /kg/.test((await stage.texts('.quick-input-message')).join()));
    await answer('3 deg right by radar');
    await until(async () => !/kg/.test((await stage.texts('.quick-input-message')).join()));
    await stage.press('Enter');
    await until(async () =>
      (await stage.texts('.review-comment')).join().includes('Suggests: 3 deg right by radar'),
    );
    await stage.hover('.review-comment');
    await stage.click(sign('Take the Suggested Value'));
    await until(() => document.getText() === record.replace('1 deg right', '3 deg right by radar'));
    await until(async () =>
      (await labels()).includes('delivery.face · open · the record says what was suggested'),
    );
  });

  it('is signed off once that is confirmed, until a value changes', async () => {
    await writeAs('Ida');
    const document = await open('signed');
    await stage.palette('Swingwright: Sign Off This Record');
    await until(async () =>
      (await stage.texts('.quick-input-title')).includes('Sign off this record as Ida?'),
    );
    await stage.press('Enter');
    await statusSays(/signed off by Ida/);
    assert.match(await saved('signed'), /signed_off:\n {2}- by: Ida\n {4}time: .*\n {4}hash: sha256:/);
    await put(document, 'date:', '# a comment\ndate:');
    await vscode.commands.executeCommand('workbench.action.files.save');
    await statusSays(/signed off by Ida/);
    await put(document, '41 m/s', '42 m/s');
    await statusSays(/sign-off void/);
  });
});

/** With this review beside it, and with none where no text is given: a test that is tried again begins anew. */
async function open(name: string, text?: string): Promise<vscode.TextDocument> {
  const beside = at(`${name}.review.yaml`);
  if (text !== undefined) await writeFile(beside, text);
  else await vscode.workspace.fs.delete(beside).then(undefined, () => undefined);
  const uri = await writeFile(at(`${name}.swing.yaml`), record);
  const document = await vscode.workspace.openTextDocument(uri);
  await vscode.window.showTextDocument(document);
  return document;
}

/** The review of this record as it lies on disk. */
async function saved(name: string): Promise<string> {
  return new TextDecoder().decode(await vscode.workspace.fs.readFile(at(`${name}.review.yaml`)));
}
