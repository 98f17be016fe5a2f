import assert from 'node:assert/strict';
import { parseDocument } from '../../src/record/parse.ts';

const silences = (text: string) =>
  parseDocument('swing', text).silences.map(({ code, reason, line, span }) => ({
    code: code.value,
    reason,
    line,
    words: text.slice(span.start, span.end),
    place: text.slice(code.span.start, code.span.end),
  }));

describe('a silencing comment', () => {
  it('behind a value covers its own line', () => {
    assert.deepEqual(silences('swing: 1\nclub: x # accept[unknown-club]: borrowed\n'), [
      {
        code: 'unknown-club',
        reason: 'borrowed',
        line: 1,
        words: '# accept[unknown-club]: borrowed',
        place: 'unknown-club',
      },
    ]);
  });

  it('on a line of its own covers the next line that says something', () => {
    const found = silences('swing: 1\n  # accept[a-b]: so it is\n\n# another\n\nclub: x\n');
    assert.deepEqual(
      found.map(({ code, line }) => [code, line]),
      [['a-b', 5]],
    );
  });

  it('may name several codes', () => {
    const found = silences('swing: 1 # accept[a, b-c]: both\n');
    assert.deepEqual(
      found.map(({ code, reason, place }) => [code, reason, place]),
      [
        ['a', 'both', 'a'],
        ['b-c', 'both', 'b-c'],
      ],
    );
  });

  it('may lack its reason', () => {
    assert.deepEqual(
      silences('swing: 1 # accept[a]\n').map(({ reason }) => reason),
      [''],
    );
    assert.deepEqual(
      silences('swing: 1 # accept[a]:   \n').map(({ reason }) => reason),
      [''],
    );
  });

  it('inside a text is none', () => {
    assert.deepEqual(silences('swing: 1\nnotes: "# accept[a]: no"\n'), []);
    assert.deepEqual(silences('swing: 1\nnotes: |\n  # accept[a]: no\n  # accept[b]: no\n'), []);
    assert.deepEqual(silences("swing: 1\nnotes: 'a\n  # accept[a]: no'\n"), []);
    assert.deepEqual(silences('swing: 1\nnotes: x# accept[a]: no\n'), []);
  });

  it('is found on a line that YAML cannot read, and behind one', () => {
    const found = silences('swing: 1\nnotes: "open\nclub: x # accept[a]: yes\ndate: {b # accept[c]: too\n');
    assert.deepEqual(
      found.map(({ code, line }) => [code, line]),
      [
        ['a', 2],
        ['c', 3],
      ],
    );
  });

  it('is found in the first line, behind a byte order mark, and before CRLF', () => {
    const found = silences('\ufeff# accept[a]: first\r\nswing: 1\r\nclub: x # accept[b]: second\r\n');
    assert.deepEqual(
      found.map(({ code, reason, line }) => [code, reason, line]),
      [
        ['a', 'first', 1],
        ['b', 'second', 2],
      ],
    );
  });

  it('at the end of the text covers the last line', () => {
    assert.deepEqual(
      silences('swing: 1\n# accept[a]: b').map(({ line }) => line),
      [1],
    );
  });
});
