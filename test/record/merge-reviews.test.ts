// Merging two people's edits of one review: remarks align by id, replies and signatures by what they say, and none is lost.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import type { ReviewFile } from '../../src/record/document.ts';
import { merge } from '../../src/record/merge.ts';
import { parseDocument } from '../../src/record/parse.ts';
import { stateOf } from '../../src/record/remark.ts';
import {
  addRemark,
  addReply,
  addSignature,
  applyReviewEdits,
  emptyReview,
} from '../../src/record/review-text.ts';
import '../seed.ts';

const states = ['open', 'answered', 'settled'] as const;

interface Act {
  readonly kind: 'remark' | 'reply' | 'sign';
  readonly at: number;
  readonly state: (typeof states)[number];
  readonly text: string;
  readonly minute: number;
}

const acts = fc.array(
  fc.record({
    kind: fc.constantFrom('remark' as const, 'reply' as const, 'sign' as const),
    at: fc.nat(5),
    state: fc.constantFrom(...states),
    text: fc.oneof(fc.string({ minLength: 1 }), fc.constantFrom('a: b', 'two\nlines', '- x', '# y')),
    minute: fc.nat(59),
  }),
  { maxLength: 6 },
);

function read(text: string): ReviewFile {
  const document = parseDocument('review', text);
  assert.deepEqual(document.problems, [], text);
  return document as ReviewFile;
}

function edited(text: string, author: string, list: readonly Act[]): string {
  return list.reduce((now, { kind, at, state, text: words, minute }) => {
    const time = `2026-06-02T10:${String(minute).padStart(2, '0')}:00Z`;
    const { remarks } = read(now);
    const remark = remarks[at % Math.max(1, remarks.length)];
    const edits =
      kind === 'sign'
        ? addSignature(now, { by: author, time, hash: 'sha256:00' })
        : kind === 'reply' && remark !== undefined
          ? addReply(now, remark, { author, time, state, text: words, suggests: undefined })
          : addRemark(now, { about: 'club', value: 'x', author, time, text: words, suggests: undefined });
    assert.ok(edits);
    return applyReviewEdits(now, edits);
  }, text);
}

/** Everything that is said, each with the remark that it belongs to. */
function saidIn(text: string): readonly string[] {
  const { remarks, signatures } = read(text);
  return [
    ...remarks.map(({ id, author, text: words }) => JSON.stringify([id?.value, author, words])),
    ...remarks.flatMap(({ id, replies }) =>
      replies.map(({ author, time, state, text: words }) =>
        JSON.stringify([id?.value, author, time, state, words]),
      ),
    ),
    ...signatures.map(({ by, time }) => JSON.stringify([by?.value, time])),
  ];
}

function merged(base: string, ours: string, theirs: string): string {
  const result = merge({ base, ours, theirs, names: ['ours', 'theirs'], markLength: 7 });
  assert.ok(result, 'cannot be merged by key');
  assert.equal(result.conflicts, 0, result.text);
  return result.text;
}

describe('two people in one review', () => {
  it('lose nothing, whatever each of them adds', () => {
    fc.assert(
      fc.property(acts, acts, acts, (before, own, other) => {
        const base = edited(emptyReview('a.swing.yaml'), 'Ida', before);
        const [ours, theirs] = [edited(base, 'Ida', own), edited(base, 'Jon', other)];
        const both = new Set(saidIn(merged(base, ours, theirs)));
        for (const said of [...saidIn(ours), ...saidIn(theirs)]) assert.ok(both.has(said), said);
      }),
      { numRuns: 60 },
    );
  });

  it('may both begin it', () => {
    fc.assert(
      fc.property(acts, acts, (own, other) => {
        const [ours, theirs] = [
          edited(emptyReview('a.swing.yaml'), 'Ida', own),
          edited(emptyReview('a.swing.yaml'), 'Jon', other),
        ];
        const both = new Set(saidIn(merged('', ours, theirs)));
        for (const said of [...saidIn(ours), ...saidIn(theirs)]) assert.ok(both.has(said), said);
      }),
      { numRuns: 30 },
    );
  });

  it('leave a remark as far as the later of the two has brought it', () => {
    const base = edited(emptyReview('a.swing.yaml'), 'Ida', [
      { kind: 'remark', at: 0, state: 'open', text: 'Why?', minute: 0 },
    ]);
    const settled = edited(base, 'Ida', [
      { kind: 'reply', at: 0, state: 'settled', text: 'Seen.', minute: 9 },
    ]);
    const answered = edited(base, 'Jon', [
      { kind: 'reply', at: 0, state: 'answered', text: 'So.', minute: 5 },
    ]);
    for (const text of [merged(base, settled, answered), merged(base, answered, settled)])
      assert.equal(stateOf(read(text).remarks[0]!), 'settled');
  });
});
