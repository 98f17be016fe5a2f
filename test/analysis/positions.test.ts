// Tests that offsets become lines and characters as LSP counts them, for any line break.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { lineTableOf, positionAt, rangeOf } from '../../src/analysis/positions.ts';

const text = fc
  .array(fc.constantFrom('a', 'ß', '°', '😀', ' ', '\n', '\r\n', '\r', '\r\r\n', '\u2028'), { maxLength: 40 })
  .map((parts) => parts.join(''));

describe('positions', () => {
  it('agrees with the text document of the language server for any text and offset', () => {
    fc.assert(
      fc.property(text, fc.nat(80), (content, offset) => {
        const document = TextDocument.create('file:///a.yaml', 'yaml', 1, content);
        assert.deepEqual(positionAt(lineTableOf(content), offset), document.positionAt(offset));
      }),
    );
  });

  it('counts UTF-16 units: a character outside the basic plane is two', () => {
    assert.deepEqual(positionAt(lineTableOf('😀x'), 2), { line: 0, character: 2 });
  });

  it('never ends a range before it starts', () => {
    const { start, end } = rangeOf(lineTableOf('ab\ncd'), { start: 4, end: 1 });
    assert.deepEqual(start, end);
  });
});
