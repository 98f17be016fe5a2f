// User text stays text in Markdown.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { code, escapeMarkdown } from '../../src/language/markdown.ts';

describe('markdown', () => {
  it('leaves no sign of user text that means something', () => {
    assert.equal(escapeMarkdown('[a](b) <c> & `d`'), '\\[a\\]\\(b\\) &lt;c\\> &amp; \\`d\\`');
  });

  it('keeps user text on one line', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (text) => !/[\n\r]/.test(escapeMarkdown(text) + code(text))),
    );
  });

  it('fences a text that holds backticks with more of them', () => {
    assert.equal(code('a'), '`a`');
    assert.equal(code('a`b``c'), '``` a`b``c ```');
  });
});
