// Asks for proposals at every offset of every sample and of beginnings of samples, and takes them: nothing throws, nothing else changes, nothing breaks.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { analyse } from '../../src/analysis/analyse.ts';
import { lineTableOf } from '../../src/analysis/positions.ts';
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
    'tove/half.swing.yaml',
    'swing: 1\nstu\ncheckpoints:\n  address:\n    stance_width: 41 \n    le\n  impact:\n\n    lead_pressure: [70 %, { value: 80 \n  top\ndelivery: { attack: "3 , path\n\nfaults:\n  -\n  - fault\nplan:\n- change: ch\n  proof: "checkpoints.impact. > \n',
  ],
];

function syntaxProblems(text: string): number {
  return readTree(text, []).problems.filter(({ code }) => code === 'yaml-syntax').length;
}

/** One of each kind, and the last: the others of a kind differ in a word. */
function someOf(items: readonly CompletionItem[]): CompletionItem[] {
  return [...new Map(items.map((item) => [item.kind, item])).values(), ...items.slice(-1)];
}

function checkItems(
  text: string,
  offset: number,
  items: readonly CompletionItem[],
  taken: readonly CompletionItem[],
): void {
  const table = lineTableOf(text);
  for (const { textEdit, label } of items) {
    const { start, end } = textEdit.range;
    assert.equal(start.line, end.line, label);
    const [from, to] = [offsetAt(table, start), offsetAt(table, end)];
    assert.ok(from <= offset && offset <= to, `${label} does not hold the cursor`);
    assert.doesNotMatch(textEdit.newText, /undefined|NaN|\[object/);
  }
  const before = syntaxProblems(text);
  for (const item of taken) {
    const after = written(text, item);
    const found = syntaxProblems(after);
    assert.ok(
      found <= before,
      `${JSON.stringify(item.textEdit)} at ${JSON.stringify(text.slice(Math.max(0, offset - 60), offset))}`,
    );
  }
}

describe('proposals anywhere', function () {
  this.timeout(120_000);
  for (const [path, text] of more) {
    const uri = practice + path;
    for (const [ends, source] of [
      ['line feeds', text],
      ['carriage returns', text.replace(/\n/g, '\r\n')],
    ] as const)
      it(`are safe at every offset of ${path} with ${ends}`, () => {
        const analysis = analyse(uri, snapshotWith({ [uri]: source }));
        const step = ends === 'line feeds' ? 1 : 11;
        for (let offset = 0; offset <= source.length; offset += step) {
          // No editor puts its cursor between the two characters of one line end.
          if (source.slice(offset - 1, offset + 1) === '\r\n') continue;
          const items = itemsAt(analysis, offset);
          // Offsets within a word are alike: one in twenty-nine is tried out.
          checkItems(source, offset, items, offset % 29 === 0 ? someOf(items) : []);
        }
      });
  }

  it('are safe at the end of any beginning of a sample', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...more),
        fc.double({ min: 0, max: 1, noNaN: true }),
        ([path, text], share) => {
          const uri = practice + path;
          const source = text.slice(0, Math.round(share * text.length));
          const analysis = analyse(uri, snapshotWith({ [uri]: source }));
          const items = itemsAt(analysis, source.length);
          checkItems(source, source.length, items, someOf(items));
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
          const uri = practice + path;
          const start = place % (text.length + 1);
          const source = text.slice(0, start) + typed + text.slice(start + length);
          const offset = start + typed.length;
          const analysis = analyse(uri, snapshotWith({ [uri]: source }));
          const items = itemsAt(analysis, offset);
          checkItems(source, offset, items, someOf(items));
        },
      ),
      { numRuns: 120 },
    );
  });
});
