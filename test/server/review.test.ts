// Reviews go over the real protocol: threads with places and changes since, and each act as edits of one file.
import assert from 'node:assert/strict';
import type { CodeAction, TextEdit } from 'vscode-languageserver';
import { TextDocument } from 'vscode-languageserver-textdocument';
import {
  actOnReviewRequest,
  reviewRequest,
  type ActOnReviewResult,
  type ReviewResult,
} from '../../src/server/review-protocol.ts';
import type { ReviewAct } from '../../src/language/review.ts';
import { folder, startSession, type Session } from './session.ts';

const lesson = 'swing: 1\n# above\ndelivery:\n  face: 1 deg right   # held\n';
const review = `review: 1
of: a.swing.yaml
threads:
  - id: r1
    about: delivery.face
    value: 2 deg right
    author: Ida
    time: 2026-06-02T10:00:00Z
    text: Sure?
    suggests: 3 deg right by radar
`;

describe('the server asked for reviews', () => {
  let session: Session;
  const start = async (files: Record<string, string>): Promise<string> => {
    session = await startSession(files);
    return session.open('a.swing.yaml', lesson);
  };
  const ask = (uri: string): Promise<ReviewResult | null> =>
    session.connection.sendRequest(reviewRequest, { uri });
  const act = (uri: string, one: ReviewAct): Promise<ActOnReviewResult> =>
    session.connection.sendRequest(actOnReviewRequest, {
      uri,
      act: one,
      author: 'Jon',
      time: '2026-06-03T10:00:00Z',
    });
  afterEach(() => session.end());

  it('answers threads at their places now, with what has changed since', async () => {
    const uri = await start({ 'a.swing.yaml': lesson, 'by-ida.review.yaml': review });
    const found = (await ask(uri))!;
    const [thread] = found.threads;
    assert.deepEqual(
      [thread?.range?.start, thread?.then, thread?.now, thread?.isChanged, thread?.suggestion, thread?.state],
      [{ line: 3, character: 2 }, '2 deg right', '1 deg right', true, '3 deg right by radar', 'open'],
    );
    assert.equal(thread?.file, `${folder}by-ida.review.yaml`);
    assert.deepEqual([found.version, found.lines], [1, [0, 2, 3]]);
  });

  it('takes the text of a review that is open before what was saved', async () => {
    const uri = await start({ 'a.swing.yaml': lesson, 'a.review.yaml': review });
    await session.open('a.review.yaml', review.replace('Sure?', 'Really?'));
    assert.equal((await ask(uri))?.threads[0]?.comments[0]?.text, 'Really?');
  });

  it('gives edits for each act', async () => {
    const uri = await start({ 'a.swing.yaml': lesson, 'a.review.yaml': review });
    const taken = await act(uri, { kind: 'apply', id: 'r1' });
    assert.ok(taken.kind === 'edits');
    assert.deepEqual(
      [taken.uri, taken.isNew, taken.edits],
      [
        uri,
        false,
        [
          {
            range: { start: { line: 3, character: 8 }, end: { line: 3, character: 19 } },
            newText: '3 deg right by radar',
          },
        ],
      ],
    );
    for (const one of [
      { kind: 'remark', at: { line: 3, character: 0 }, text: 'x' },
      { kind: 'reply', id: 'r1', text: 'x' },
      { kind: 'settle', id: 'r1' },
      { kind: 'signOff' },
    ] as const) {
      const acted = await act(uri, one);
      assert.ok(acted.kind === 'edits', one.kind);
      assert.deepEqual([acted.uri, acted.isNew, acted.edits.length], [`${folder}a.review.yaml`, false, 1]);
      assert.match(acted.edits[0]!.newText, /Jon/);
    }
    assert.equal((await act(uri, { kind: 'reopen', id: 'r1' })).kind, 'refused');
    assert.equal((await act(uri, { kind: 'settle', id: 'r9' })).kind, 'refused');
  });

  it('begins a review where there is none', async () => {
    const uri = await start({ 'a.swing.yaml': lesson });
    const acted = await act(uri, { kind: 'remark', at: { line: 2, character: 0 }, text: 'x' });
    assert.ok(acted.kind === 'edits');
    assert.deepEqual([acted.uri, acted.isNew], [`${folder}a.review.yaml`, true]);
    assert.match(
      acted.edits[0]!.newText,
      /^review: 1\nof: a\.swing\.yaml\nthreads:\n {2}- id: r\w+\n {4}about: delivery\n/,
    );
  });

  it('tells what is found in any review that is open, whatever its name and whether its record is open', async () => {
    const signed = `${review}signed_off:\n  - { by: Ida, time: 2026-06-02T10:00:00Z, hash: "sha256:00" }\n`;
    session = await startSession({ 'a.swing.yaml': lesson });
    await session.open('by-ida.review.yaml', signed);
    const codes = async (wanted: string): Promise<readonly unknown[]> =>
      (
        await session.diagnostics('by-ida.review.yaml', ({ diagnostics }) =>
          diagnostics.some(({ code }) => code === wanted),
        )
      ).diagnostics.map(({ code }) => code);
    assert.deepEqual(await codes('remark-out-of-step'), [
      'open-remark',
      'remark-out-of-step',
      'sign-off-void',
    ]);
    // The text of a record in the editor counts before the saved one, as it is typed.
    await session.open('a.swing.yaml', lesson);
    await session.change('a.swing.yaml', lesson.replace('face: 1 deg right', 'path: 1 deg right'), 2);
    assert.deepEqual(await codes('remark-about-nothing'), [
      'open-remark',
      'remark-about-nothing',
      'sign-off-void',
    ]);
    // What is typed into the review itself is told at once too.
    await session.change('by-ida.review.yaml', review.replace('author', 'autor'), 2);
    assert.ok((await codes('unknown-key')).length > 0);
  });

  it('offers to name a renamed record anew, in quotes too', async () => {
    session = await startSession({
      'renamed: 1.swing.yaml': lesson.replace('1 deg', '2 deg'),
      'other.swing.yaml': 'swing: 1\n',
    });
    for (const [name, of] of [
      ['a.review.yaml', 'a.swing.yaml'],
      ['b.review.yaml', '"a.swing.yaml"'],
    ] as const) {
      const text = review.replace('a.swing.yaml', of);
      const uri = await session.open(name, text);
      const actions = await session.connection.sendRequest<readonly CodeAction[]>('textDocument/codeAction', {
        textDocument: { uri },
        range: { start: { line: 1, character: 6 }, end: { line: 1, character: 6 } },
        context: { diagnostics: [] },
      });
      const mend = actions.find(({ title }) => title.startsWith('Write'));
      // Without `./` what stands before the colon would be read as a scheme.
      assert.equal(mend?.title, 'Write `./renamed: 1.swing.yaml`');
      const [change] = mend.edit?.documentChanges ?? [];
      assert.ok(change !== undefined && 'edits' in change);
      const [edit] = change.edits as readonly TextEdit[];
      assert.ok(edit !== undefined);
      const document = TextDocument.create(uri, 'yaml', 1, text);
      const after = TextDocument.applyEdits(document, [edit]);
      assert.equal(after, review.replace('a.swing.yaml', '"./renamed: 1.swing.yaml"'));
    }
  });

  it('offers no record where none fits, or two do as well', async () => {
    const fitting = lesson.replace('1 deg', '2 deg');
    for (const files of [{ 'b.swing.yaml': lesson }, { 'b.swing.yaml': fitting, 'c.swing.yaml': fitting }]) {
      session = await startSession(files);
      const uri = await session.open('a.review.yaml', review);
      const actions = await session.connection.sendRequest<readonly CodeAction[]>('textDocument/codeAction', {
        textDocument: { uri },
        range: { start: { line: 1, character: 6 }, end: { line: 1, character: 6 } },
        context: { diagnostics: [] },
      });
      assert.deepEqual(
        actions.filter(({ title }) => title.startsWith('Write')),
        [],
      );
      await session.end();
    }
    session = await startSession();
  });
});
