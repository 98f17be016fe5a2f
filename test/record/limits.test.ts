import assert from 'node:assert/strict';
import type { Problem } from '../../src/measure/measure.ts';
import { parseDocument } from '../../src/record/parse.ts';
import { deepestNesting, longestText } from '../../src/record/yaml.ts';

const codes = (text: string): readonly string[] =>
  parseDocument('swing', text).problems.map(({ code }) => code);
const only = (text: string, code: string): Problem => {
  const found = parseDocument('swing', text).problems.filter((problem) => problem.code === code);
  assert.equal(found.length, 1, codes(text).join(' '));
  return found[0]!;
};
const head = 'swing: 1\nstudent: a\ndate: 2026-05-14\nclub: b\n';

describe('nesting', () => {
  it('of sixty thousand brackets is one problem at the bracket that is too deep', () => {
    for (const bracket of ['[', '{', '{a: ', '[{']) {
      const text = `${head}notes: ${bracket.repeat(60_000)}`;
      const { span } = only(text, 'too-deep');
      assert.ok(span.start < head.length + 10 + 8 * deepestNesting, `${span.start}`);
    }
  });

  it('of a hundred thousand dashes, keys or question marks is one problem', () => {
    only(head + '- '.repeat(100_000), 'too-deep');
    only(head + 'notes: ' + '? '.repeat(100_000), 'too-deep');
    only(head + Array.from({ length: 650 }, (_, i) => `${' '.repeat(i)}a:\n`).join(''), 'too-deep');
  });

  it('that is too deep leaves the lines around it as they are', () => {
    const document = parseDocument('swing', `${head}notes: ${'['.repeat(500)}\nflight:\n  carry: 171 m\n`);
    assert.ok(document.kind === 'swing' && document.entries.has('flight.carry'));
    assert.deepEqual(
      document.problems.map(({ code }) => code),
      ['too-deep'],
    );
  });

  it('of a few levels is none', () => {
    assert.deepEqual(codes(`${head}flight: { carry: [{ value: 171 m }] }\n`), []);
  });
});

describe('aliases', () => {
  it('bring the same value to two places', () => {
    const text = `${head}delivery:\n  path: &p 2 deg right\n  face: *p\n`;
    const document = parseDocument('swing', text);
    assert.deepEqual(document.problems, []);
    const face = document.kind === 'swing' && document.entries.get('delivery.face');
    assert.ok(face && face.readings[0]);
    assert.equal(text.slice(face.valueSpan.start, face.valueSpan.end), '*p');
    assert.deepEqual(face.readings[0].measure.spans.number, face.valueSpan);
  });

  it('that multiply without end are one problem', () => {
    const names = 'abcdefghij';
    const bomb = [...names].map((name, i) =>
      i === 0 ? 'a: &a [1, 1, 1, 1, 1, 1, 1, 1, 1]' : `${name}: &${name} [${`*${names[i - 1]}, `.repeat(9)}]`,
    );
    only(head + bomb.join('\n') + '\n', 'too-many-aliases');
  });

  it('to nothing, or to what holds them, are a problem at the alias', () => {
    for (const text of [`${head}flight:\n  carry: *gone\n`, `${head}flight: &gone\n  carry: *gone\n`]) {
      const { span } = only(text, 'yaml-syntax');
      assert.equal(text.slice(span.start, span.end), '*gone');
    }
  });
});

describe('a text of more than 250 thousand characters', () => {
  it('is not read, and its first line says so', () => {
    const text = `swing: 1\n${'# comment\n'.repeat(1_000_000)}`;
    const document = parseDocument('swing', text);
    assert.deepEqual(
      document.problems.map(({ code, span }) => [code, span]),
      [['file-too-large', { start: 0, end: 8 }]],
    );
    assert.deepEqual(document.silences, []);
    assert.deepEqual(document.outline, []);
  });

  it('may be a single line', () => {
    const { span } = only('x'.repeat(10_000_000), 'file-too-large');
    assert.ok(span.start === 0 && span.end < 100);
  });

  it('is read when it is just as long as it may be', () => {
    assert.deepEqual(codes(head + '#'.repeat(longestText - head.length)), []);
  });
});

describe('a text with very many problems', () => {
  it('names a thousand of them, and one more, of each code', () => {
    const empty = `${head}goals:\n${' -\n'.repeat(80_000)}`;
    assert.equal(codes(empty).length, 1001);
  });

  it('names what is wrong in another way below them', () => {
    const bare = `${head}goals:\n${'  - { carry: 178 }\n'.repeat(3000)}flight: { shape: drww }\n`;
    only(bare, 'unknown-word');
  });
});
