// Reviews go over the real protocol: threads with places and changes since, and each act as edits of one file.
import assert from 'node:assert/strict';
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
});
