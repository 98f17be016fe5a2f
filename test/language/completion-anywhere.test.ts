// Asks for proposals at every offset of every sample and of beginnings of samples, and takes them: nothing throws, nothing else changes, nothing breaks.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { analyse } from '../../src/analysis/analyse.ts';
import { createCache } from '../../src/analysis/cache.ts';
import { lineTableOf } from '../../src/analysis/positions.ts';
import type { Analysis } from '../../src/analysis/result.ts';
import { offsetAt } from '../../src/language/places.ts';
import type { CompletionItem } from '../../src/language/shapes.ts';
import { readTree } from '../../src/record/read-tree.ts';
import { practice, snapshotWith, yamlSamples } from '../samples.ts';
import { itemsAt, written } from './proposals.ts';

const more: readonly (readonly [string, string])[] = [
  ...yamlSamples,
  [
    'tove/a.review.yaml',
    'review: 1\nof: 2026-04-18-seven-iron.swing.yaml\nthreads:\n  - id: a\n    about: delivery.attack\n    state: open\n    replies:\n      - { author: x, text: "y" }\n',
  ],
  [
    'own/swingwright.yaml',
    'swingwright: 1\nmethods: { wand: { meaning: x, uncertainty: { angle: 1 deg } } }\nquantities:\n    delivery.wand: { like: delivery.face, uncertainty: { wand: 1 deg } }\n    delivery.rock:\n        unit: cm\n        directions: { open: positive, shut: negative }\n        bounds: 1 cm shut..5 cm open\n        uncertainty: 1 \n    del\nderived: { delivery.far: { is: 2 * delivery.rock, unit: } }\nchecks:\n    far:\n        when: delivery.rock > 3 cm\n        message: Found {delivery.rock} and {del\nseverities: { own }\nshow: { flight.carry: yd, speed: }\nshots: { columns: { Flown: { quantity: flight.carry, unit: } } }\n',
  ],
  [
    'tove/quoted.swing.yaml',
    'swing: 1\n"student": tove.student.yaml\nshots: []\n"delivery":\n  "path": 3 deg\n  \'face\': 2 deg\nflight: { "carry":120, "sta": 1 deg right }\nfaults: [ ]\nplan: [{ "change": delivery.path }, ]\n',
  ],
  [
    'tove/half.swing.yaml',
    'swing: 1\nstu\ncheckpoints:\n  address:\n    stance_width: 41 \n    le\n  impact:\n\n    lead_pressure: [70 %, { value: 80 \n  top\ndelivery: { attack: "3 , path\n\nfaults:\n  -\n  - fault\nplan:\n- change: ch\n  proof: "checkpoints.impact. > \n',
  ],
];

function syntaxProblems(text: string): number {
  return readTree(text, []).problems.filter(({ code }) => code === 'yaml-syntax').length;
}

/** One of each form: proposals of one kind whose texts differ in nothing but letters and digits read alike. */
function formsOf(items: readonly CompletionItem[]): ReadonlyMap<string, CompletionItem> {
  return new Map(
    items.map((item) => {
      const { kind, insertTextFormat, textEdit } = item;
      const outline = textEdit.newText.replace(/\p{L}+/gu, 'a').replace(/\d+/g, '0');
      return [JSON.stringify([kind, insertTextFormat, outline]), item];
    }),
  );
}

function assertSafe(text: string, offset: number, items: readonly CompletionItem[]): void {
  const table = lineTableOf(text);
  for (const { textEdit, label } of items) {
    const { start, end } = textEdit.range;
    assert.equal(start.line, end.line, label);
    const [from, to] = [offsetAt(table, start), offsetAt(table, end)];
    assert.ok(from <= offset && offset <= to, `${label} does not hold the cursor`);
    assert.doesNotMatch(textEdit.newText, /undefined|NaN|\[object/);
  }
}

function assertRead(text: string, before: number, item: CompletionItem): void {
  assert.ok(
    syntaxProblems(written(text, item)) <= before,
    `${JSON.stringify(item.textEdit)} in ${JSON.stringify(text)}`,
  );
}

/**
 * The part of a text that a place hangs in: the key at the margin above it, the key one step in, and what stands below that.
 * Keys at the margin, and those one step in, are over where the next begins, so that the part reads well if the whole does.
 */
function partAround(lines: readonly string[], at: number): { text: string; line: number } {
  const isKey = (line: string): boolean => /^(?: {2})?[a-z]/.test(line);
  const isOutermost = (line: string): boolean => /^[a-z]/.test(line);
  const last = (test: (line: string) => boolean): number =>
    Math.max(
      0,
      lines.findLastIndex((line, index) => index <= at && test(line)),
    );
  const next = (test: (line: string) => boolean): number => {
    const found = lines.findIndex((line, index) => index > at && test(line));
    return found < 0 ? lines.length : found;
  };
  const [outer, inner] = [last(isOutermost), last(isKey)];
  const kept = [
    ...(inner > outer ? [lines[outer]!] : []),
    ...lines.slice(inner, inner > outer ? next(isKey) : next(isOutermost)),
  ];
  return { text: `${kept.join('\n')}\n`, line: at - inner + (inner > outer ? 1 : 0) };
}

function moved(item: CompletionItem, line: number): CompletionItem {
  const { range, newText } = item.textEdit;
  const { start, end } = range;
  return { ...item, textEdit: { newText, range: { start: { ...start, line }, end: { ...end, line } } } };
}

/**
 * Looks at every proposal at every offset, and takes one of each form once wherever it would be written: at the other offsets of a
 * word the same is written in the same place. What is written is read within its part, and in the whole text each twelfth time.
 */
function tryEverywhere(analysis: Analysis, step: number): number {
  const { text } = analysis.document;
  const lines = text.split('\n');
  const before = syntaxProblems(text);
  const taken = new Set<string>();
  for (let offset = 0; offset <= text.length; offset += step) {
    // No editor puts its cursor between the two characters of one line end.
    if (text.slice(offset - 1, offset + 1) === '\r\n') continue;
    const items = itemsAt(analysis, offset);
    assertSafe(text, offset, items);
    for (const [form, item] of formsOf(items)) {
      const { range } = item.textEdit;
      const key = JSON.stringify([form, range]);
      if (taken.has(key)) continue;
      taken.add(key);
      if (before > 0 || taken.size % 12 === 0) assertRead(text, before, item);
      else {
        const part = partAround(lines, range.start.line);
        assertRead(part.text, 0, moved(item, part.line));
      }
    }
  }
  return taken.size;
}

describe('proposals anywhere', function () {
  this.timeout(240_000);
  for (const [path, text] of more) {
    const uri = practice + path;
    it(`are safe at every offset of ${path}`, () => {
      assert.ok(tryEverywhere(analyse(uri, snapshotWith({ [uri]: text })), 1) > 20);
    });

    it(`are safe in ${path} with carriage returns`, () => {
      const source = text.replace(/\n/g, '\r\n');
      assert.ok(tryEverywhere(analyse(uri, snapshotWith({ [uri]: source })), 7) > 5);
    });
  }

  const cache = createCache();

  /** Asks and takes at one place of a text that need not be whole. */
  function tryAt(path: string, source: string, offset: number): void {
    const uri = practice + path;
    const items = itemsAt(analyse(uri, snapshotWith({ [uri]: source }), cache), offset);
    assertSafe(source, offset, items);
    const before = syntaxProblems(source);
    for (const item of formsOf(items).values()) assertRead(source, before, item);
  }

  it('are safe at the end of any beginning of a sample', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...more),
        fc.double({ min: 0, max: 1, noNaN: true }),
        ([path, text], share) => {
          const source = text.slice(0, Math.round(share * text.length));
          tryAt(path, source, source.length);
        },
      ),
      { numRuns: 120 },
    );
  });

  it('are safe anywhere in a sample of which a stretch is gone', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...more),
        fc.nat(),
        fc.nat({ max: 40 }),
        fc.constantFrom('', ' ', '\n', '\n  ', '- ', '{ ', '"', ': '),
        ([path, text], place, length, typed) => {
          const start = place % (text.length + 1);
          tryAt(path, text.slice(0, start) + typed + text.slice(start + length), start + typed.length);
        },
      ),
      { numRuns: 120 },
    );
  });
});
