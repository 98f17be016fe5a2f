import assert from 'node:assert/strict';
import fc from 'fast-check';
import type { FileKind, SwingwrightDocument } from '../../src/record/document.ts';
import { parseDocument } from '../../src/record/parse.ts';
import { lesson } from './lesson.ts';

const kinds: readonly FileKind[] = ['swing', 'student', 'template', 'faults', 'review', 'workspace'];

/** Every number is finite and every place lies in the text. */
function assertSound(value: unknown, length: number, seen = new Set<unknown>()): void {
  if (typeof value === 'number') assert.ok(Number.isFinite(value), 'a number that is not finite');
  if (typeof value !== 'object' || value === null || seen.has(value)) return;
  seen.add(value);
  if (value instanceof Map) {
    for (const item of value.values()) assertSound(item, length, seen);
    return;
  }
  const { start, end } = value as { start?: unknown; end?: unknown };
  if (typeof start === 'number' && typeof end === 'number')
    assert.ok(0 <= start && start <= end && end <= length, `${start}–${end} of ${length}`);
  for (const [key, item] of Object.entries(value)) if (key !== 'quantity') assertSound(item, length, seen);
}

function assertReads(kind: FileKind, text: string): SwingwrightDocument {
  const document = parseDocument(kind, text);
  assert.equal(document.text, text);
  assert.equal(document.kind, kind);
  assertSound(document, text.length);
  for (const { found, expected } of document.problems) assert.ok(found !== '' && expected !== '');
  return document;
}

describe('any text at all', () => {
  it('is read without an exception, with finite numbers and places inside it', () => {
    fc.assert(
      fc.property(fc.constantFrom(...kinds), fc.string({ unit: 'binary', maxLength: 200 }), (kind, text) => {
        assertReads(kind, text);
      }),
      { numRuns: 500 },
    );
  });

  it('may be made of the characters that mean something to YAML', () => {
    const pieces = [
      ...'{}[],:-?#&*!|>\'"%@` \t\n\r~a1é',
      ': ',
      '- ',
      '\n  ',
      '\n    ',
      '*a',
      '&a ',
      '<<: ',
      'swing: 1\n',
      '---\n',
      '...\n',
      '\ufeff',
      '\0',
      '\u2028',
      'delivery:\n',
      'attack: ',
      '1e400',
      '.nan',
    ];
    fc.assert(
      fc.property(fc.array(fc.constantFrom(...pieces), { maxLength: 60 }), (parts) => {
        assertReads('swing', parts.join(''));
      }),
      { numRuns: 3000 },
    );
  });

  it('may be a lesson with stretches of it replaced, doubled and left out', () => {
    const cut = fc.tuple(
      fc.nat(lesson.length),
      fc.nat(40),
      fc.constantFrom('', '{', '"', ':', '\n', '- ', '\t', 'x: [', '1e999'),
    );
    fc.assert(
      fc.property(fc.array(cut, { minLength: 1, maxLength: 4 }), (cuts) => {
        const text = cuts.reduce(
          (t, [at, length, put]) => t.slice(0, at) + put + t.slice(at + length),
          lesson,
        );
        assertReads('swing', text);
      }),
      { numRuns: 150 },
    );
  });

  it('may be a lone half of a surrogate pair, or a null', () => {
    for (const text of ['\ud83c', 'swing: \udf4f', 'swing: 1\nnotes: "\\ud83c"', '\0\0: \0'])
      assertReads('swing', text);
  });

  it('may use names that every JavaScript object has', () => {
    const document = assertReads(
      'swing',
      'swing: 1\n__proto__: { x: 1 }\nconstructor: 2\ntoString: 3\ndelivery: { hasOwnProperty: 1 }\n',
    );
    const unknown = document.problems.filter(({ code }) => code === 'unknown-key');
    assert.equal(unknown.length, 4);
    assert.equal(({} as Record<string, unknown>).x, undefined);
  });
});
