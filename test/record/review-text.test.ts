// Tests of what is put into a review: any text reads back the same, everything else stays as it was.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import type { ReviewFile } from '../../src/record/document.ts';
import { parseDocument } from '../../src/record/parse.ts';
import { stateOf } from '../../src/record/remark.ts';
import {
  addRemark,
  addReply,
  addSignature,
  applyReviewEdits,
  emptyReview,
  remarkId,
  type NewRemark,
  type NewReply,
} from '../../src/record/review-text.ts';
import '../seed.ts';

export const remark: NewRemark = {
  about: 'delivery.face',
  value: '1 deg right by radar',
  author: 'Ida',
  time: '2026-06-02T10:00:00Z',
  text: 'The picture shows it open.',
  suggests: undefined,
};
const reply: NewReply = {
  author: 'Jon',
  time: '2026-06-02T11:00:00Z',
  state: 'answered',
  text: 'Which one?',
  suggests: undefined,
};

function read(text: string): ReviewFile {
  const document = parseDocument('review', text);
  assert.equal(document.kind, 'review');
  assert.deepEqual(document.problems, [], text);
  return document;
}

function withRemark(text: string, one: NewRemark): string {
  const edits = addRemark(text, one);
  assert.ok(edits, text);
  return applyReviewEdits(text, edits);
}

function withReply(text: string, at: number, one: NewReply): string {
  const edits = addReply(text, read(text).remarks[at]!, one);
  assert.ok(edits, text);
  return applyReviewEdits(text, edits);
}

describe('the text of a review', () => {
  it('begins with the record that it is of, and has one entry a block', () => {
    const text = withReply(withRemark(emptyReview('a.swing.yaml'), remark), 0, reply);
    assert.equal(
      text,
      `review: 1
of: a.swing.yaml
threads:
  - id: ${remarkId(remark)}
    about: delivery.face
    value: 1 deg right by radar
    author: Ida
    time: 2026-06-02T10:00:00Z
    text: The picture shows it open.
    replies:
      - author: Jon
        time: 2026-06-02T11:00:00Z
        state: answered
        text: Which one?
`,
    );
  });

  it('keeps comments, order and spacing, in whatever form the review is written', () => {
    const forms = [
      'review: 1\n# hers\nthreads: # all of them\n  # the first\n  - id: a   # by hand\n    text: x # why\nnotes: end\n# last',
      'review: 1\nthreads:\n- id: a\n  text: |\n    two\n    lines\n\n\nnotes: end\n',
      'review: 1\nthreads: [{ id: a, text: x }] # short\nnotes: end',
      'review: 1\r\nthreads:\r\n  - { id: a, text: x }\r\n',
      '{ review: 1, threads: [{ id: a, text: x }] }',
    ];
    for (const form of forms) {
      const text = withReply(withRemark(form, remark), 0, reply);
      const { remarks } = read(text);
      assert.deepEqual(
        remarks.map(({ id, replies }) => [id?.value, replies.length]),
        [
          ['a', 1],
          [remarkId(remark), 0],
        ],
      );
      // What stood there stands there still, in its order.
      let at = 0;
      for (const sign of form) {
        at = text.indexOf(sign, at) + 1;
        assert.ok(at > 0, text);
      }
      assert.equal(text.includes('\r'), form.includes('\r'));
    }
  });

  it('begins a list where there is an empty one', () => {
    for (const form of [
      'review: 1\nthreads:\n',
      'review: 1\nthreads: [] # none yet\nnotes: x\n',
      'review: 1\nthreads: # none yet\n',
      'review: 1',
    ])
      assert.equal(read(withRemark(form, remark)).remarks.length, 1);
  });

  it('takes a state along that was written by hand', () => {
    const text = withReply('review: 1\nthreads:\n  - id: a\n    state: settled # done\n', 0, reply);
    assert.match(text, /state: answered # done/);
  });

  it('puts nothing into a review that YAML cannot read, or that git left marks in', () => {
    for (const text of [
      'review: 1\nthreads: [\n',
      'review: 1\n<<<<<<< ours\nof: a\n=======\nof: b\n>>>>>>> theirs\n',
      'review: 1\nthreads: words\n',
      '- a\n',
      '',
    ])
      assert.equal(addRemark(text, remark), undefined);
  });

  it('reads any words back as they were written', () => {
    const words = fc.oneof(
      fc.string({ unit: 'binary' }),
      fc.string(),
      // eslint-disable-next-line no-control-regex
      fc.stringMatching(/^[ \n#:'"\-[\]{},&*!|>%@`a-c\u200f\u202e\u001b]{0,12}$/),
      fc.constantFrom(
        'null',
        '~',
        'true',
        '12',
        '1e5',
        '- a',
        'a: b',
        'a #b',
        '  x',
        'x  ',
        'a\nb',
        'a\n\n b\n',
        '\ud800',
        '\u{e0001}',
        '---',
        '\ufeff',
        '',
      ),
    );
    fc.assert(
      fc.property(words, words, words, (author, text, value) => {
        const said = withReply(
          withRemark(emptyReview('a.swing.yaml'), { ...remark, author, text, value }),
          0,
          { ...reply, author, text },
        );
        const [one] = read(said).remarks;
        assert.deepEqual(
          [one?.author, one?.text, one?.value?.value, one?.replies[0]?.text],
          [author, text, value, text],
        );
        assert.doesNotMatch(
          said,
          // eslint-disable-next-line no-control-regex
          /[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u200b-\u200f\u2028-\u202e\u2066-\u2069\ufeff]/,
        );
      }),
    );
  });
});

describe('the state of a remark', () => {
  const one = read(withRemark(emptyReview('a.swing.yaml'), remark)).remarks[0]!;
  const said = (author: string, time: string, state?: 'open' | 'answered' | 'settled') => ({
    author,
    time,
    state,
    text: undefined,
    suggests: undefined,
    span: one.span,
  });

  it('is open until somebody else speaks, and again when its author does', () => {
    assert.equal(stateOf(one), 'open');
    assert.equal(stateOf({ ...one, replies: [said('Jon', '2026-06-02T11:00:00Z')] }), 'answered');
    assert.equal(
      stateOf({
        ...one,
        replies: [said('Jon', '2026-06-02T11:00:00Z'), said('Ida', '2026-06-02T12:00:00Z')],
      }),
      'open',
    );
  });

  it('is what its last reply in time says, whatever order a merge left', () => {
    const replies = [said('Ida', '2026-06-03T00:00:00Z', 'settled'), said('Jon', '2026-06-02T11:00:00Z')];
    assert.equal(stateOf({ ...one, replies }), 'settled');
    assert.equal(stateOf({ ...one, replies: [...replies, said('Jon', '2026-06-04T00:00:00Z')] }), 'answered');
  });

  it('is the one written at the remark where nobody has replied', () => {
    assert.equal(stateOf({ ...one, stated: { value: 'settled', span: one.span } }), 'settled');
  });
});

describe('a signature', () => {
  it('is one more entry', () => {
    const text = emptyReview('a.swing.yaml');
    const edits = addSignature(text, { by: 'Ida', time: '2026-06-02T10:00:00Z', hash: 'sha256:00' });
    assert.ok(edits);
    const [signature] = read(applyReviewEdits(text, edits)).signatures;
    assert.deepEqual([signature?.by?.value, signature?.hash?.value], ['Ida', 'sha256:00']);
  });
});
