// The hover in a review says what the record says now where a remark is fastened, and how far the remark has come.
import assert from 'node:assert/strict';
import { findHover } from '../../src/language/index.ts';
import { marked } from '../marked.ts';
import { analysed } from './analysed.ts';

const record = 'swing: 1\nclub: hybrid\ndelivery:\n  face: 1 deg right\n  path: 2 deg right\n';

function hover(text: string, files: Readonly<Record<string, string>> = { 'a.swing.yaml': record }): string {
  const at = marked(text);
  return findHover(analysed(at.text, { name: 'a.review.yaml', files }), at.position)?.contents.value ?? '';
}

const review = `review: 1
of: a.swing.yaml
threads:
  - id: r1
    about: delivery.face
    value: 3 deg right
    author: Ida
    text: Sure?
    suggests: 2 deg right
    replies:
      - { author: Lea, time: 2026-06-02T10:00:00Z, text: Yes. }
`;

describe('the hover on a remark', () => {
  it('says what stands there now, what stood there, what is suggested and how far it has come', () => {
    const lines = [
      '**Face direction**',
      'The record says `1 deg right`; it said `3 deg right` when the remark was made.',
      'Suggested is `2 deg right`.',
      '_answered_, 1 reply, last word by Lea',
    ];
    assert.deepEqual(hover(review.replace('delivery.face', 'delivery.fa$0ce')).split(/ *\n/), lines);
    assert.deepEqual(hover(review.replace('3 deg right', '3 de$0g right')).split(/ *\n/), lines);
  });

  it('says that nothing has changed, and what was taken', () => {
    assert.match(hover(review.replace('3 deg right', '1° ri$0ght')), /says `1 deg right`, as it did when/);
    const taken = record.replace('1 deg right', '2 deg right');
    assert.match(
      hover(review.replace('delivery.face', 'delivery$0.face'), { 'a.swing.yaml': taken }),
      /That is what was suggested\./,
    );
  });

  it('says what is not there', () => {
    assert.match(
      hover(review.replace('delivery.face', 'delivery.ar$0c')),
      /`delivery\.arc`.*\n.*Found no such entry in the record; expected/,
    );
    assert.match(
      hover(review.replace('delivery.face', 'delivery.fa$0ce'), {}),
      /Found no record where `of` points; expected/,
    );
    assert.match(
      hover(review.replace('delivery.face', 'delivery.fa$0ce'), {
        'a.swing.yaml': record.replace('1 deg right', ''),
      }),
      /No value stands there now; it said/,
    );
  });

  it('lets nothing in a name or a value become markup', () => {
    const hostile = review
      .replace('author: Lea', 'author: "[a](command:x)\\n# b\\u202e<img src=x>"')
      .replace('delivery.face', '"`x` [b](command:y)\\n$0# c"');
    const words = hover(hostile);
    assert.doesNotMatch(words, /\u202e|<img|^# /m);
    assert.doesNotMatch(words.replace(/(`+) .*? \1/g, ''), /(?<!\\)\[|(?<!\\)`/);
  });
});
