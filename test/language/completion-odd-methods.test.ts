// Methods whose names YAML would read otherwise are written in quotes, wherever a proposal holds them.
import assert from 'node:assert/strict';
import { analyse } from '../../src/analysis/analyse.ts';
import type { SwingRecord } from '../../src/record/document.ts';
import { marked } from '../marked.ts';
import { practice, snapshotWith } from '../samples.ts';
import { itemsAt, written } from './proposals.ts';

const odd = ['@laser', '% cam', 'null', 'it’s "new"'];
const workspace = `swingwright: 1
methods:
${odd.map((name) => `  ${JSON.stringify(name)}: { meaning: new, uncertainty: { angle: 1 deg, length: 1 cm } }\n`).join('')}`;
const head = `swing: 1
student: tove.student.yaml
date: 2026-05-30
club: seven iron
`;
const lastTime = `${head}delivery: { face: 1 deg right by @laser, path: 2 deg right by % cam }\n`;

/** The lesson before, as it is read with these methods known. */
const earlier = analyse(`${practice}tove/last.swing.yaml`, {
  file: snapshotWith({
    [`${practice}swingwright.yaml`]: workspace,
    [`${practice}tove/last.swing.yaml`]: lastTime,
  }).file,
}).document as SwingRecord;

/** What is found wrong with the text after each proposal that names an odd method, `behind` following what is written. */
function wrongAfter(path: string, source: string, behind = ''): readonly (readonly string[])[] {
  const { text, offset } = marked(source);
  const own = practice + path;
  const files = { [`${practice}swingwright.yaml`]: workspace, [own]: text };
  const items = itemsAt(analyse(own, snapshotWith(files)), offset, { earlier });
  return items
    .filter(({ textEdit: { newText } }) => /laser|% cam|null|it’s/.test(newText))
    .map((item) => {
      // What a new record leaves blank is filled in.
      const after = (written(text, item) + behind).replace(/: ("?) (?=\S)/g, ': $11 ');
      const { problems } = analyse(own, snapshotWith({ ...files, [own]: after })).document;
      return problems
        .filter(({ code }) => code !== 'no-value-yet')
        .map(({ found }) => `${found} in ${after}`);
    });
}

const places: readonly (readonly [what: string, source: string])[] = [
  ['behind `by`', 'delivery:\n  face: 2 deg right by $0\n'],
  ['behind a unit', 'delivery:\n  face: 2 deg right $0\n'],
  ['behind a number', 'delivery:\n  face: 2 $0\n'],
  ['in quotes', 'delivery:\n  face: "2 deg right by $0"\n'],
  ['in single quotes', "delivery:\n  face: '2 deg right by $0'\n"],
  ['between braces', 'delivery: { face: 2 deg right by $0 }\n'],
  ['before ±', 'delivery:\n  face: 2 deg right by $0 ± 1 deg\n'],
  ['in the long form', 'delivery:\n  face: { value: 2 deg right, by: $0 }\n'],
  ['in the long form on lines', 'delivery:\n  face:\n    value: 2 deg right\n    by: $0\n'],
  ['as a whole long form', 'delivery:\n  face: $0\n'],
];

describe('methods with odd names', () => {
  for (const [what, source] of places)
    it(`are written so that they read back ${what}`, () => {
      const wrong = wrongAfter('tove/new.swing.yaml', head + source);
      assert.ok(wrong.length > 0);
      assert.deepEqual(wrong.flat(), []);
    });

  it('are written so that a whole new record reads back', () => {
    const wrong = wrongAfter('tove/new.swing.yaml', '$0');
    assert.ok(wrong.length > 0);
    assert.deepEqual(wrong.flat(), []);
  });

  it('are quoted as keys of a table of uncertainties', () => {
    const own = `${workspace}quantities:\n  delivery.wobble:\n    like: delivery.path\n    uncertainty:\n      $0`;
    const wrong = wrongAfter('swingwright.yaml', own, '1 deg\n');
    assert.equal(wrong.length, odd.length);
    assert.deepEqual(wrong.flat(), []);
  });
});
