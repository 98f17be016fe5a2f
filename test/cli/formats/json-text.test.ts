// JSON for a terminal: what is read back is what was written, and nothing in it steers whoever shows it.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { jsonText } from '../../../src/cli/formats/json-text.ts';

const hostile = fc.constantFrom(
  '\u001b[2J',
  '\u009b31m',
  '\u202e',
  '\u2066',
  '\u2028',
  '\u200f',
  '\u007f',
  '"',
  '\\',
);

describe('JSON on the command line', () => {
  it('reads back as it was, with every sign that steers a terminal escaped', () => {
    fc.assert(
      fc.property(fc.array(fc.oneof(fc.string(), hostile)), (words) => {
        const value = { [words.join('')]: words };
        const text = jsonText(value);
        assert.deepEqual(JSON.parse(text), value);
        assert.doesNotMatch(text, /[^\P{Cc}\n]|[\u061c\u200e\u200f\u2028-\u202e\u2066-\u2069]/u);
      }),
    );
  });
});
