// The picture of the agreement: the worst first, each as far out as its residual, and what is unchecked said to be so.
import assert from 'node:assert/strict';
import { analysed } from '../language/analysed.ts';
import { assertKept, assertSound, drawn, numberAt, part } from './drawn.ts';
import { boxesOf, sizeOf } from './words-on.ts';

const record = `swing: 1
delivery:
  face: 1 deg right ± 0.5 deg
  path: 6 deg right ± 0.5 deg
  face_to_path: 1 deg left ± 0.5 deg
  club_speed: 40 m/s ± 0.5 m/s
`;
const [from, to, farthest] = [304, 520, 6];

describe('the picture of the agreement', () => {
  const analysis = analysed(record);
  const svg = drawn('agreement', analysis);
  const judged = new Map(analysis.agreement!.entries.map((entry) => [entry.id, entry]));

  it('draws each as far out as it is apart', () => {
    let drawnOnes = 0;
    for (const [id, { w, verdict }] of judged) {
      if (w === null || verdict === 'unchecked') continue;
      const line = part(svg, `data-id="${id}"`);
      const [, x0, x1] = /M ([\d.]+) [\d.]+ L ([\d.]+) [\d.]+/.exec(line)!.map(Number);
      const apart = ((x1! - x0!) / (to - from)) * 2 * farthest;
      assert.ok(Math.abs(apart - Math.max(-farthest, Math.min(farthest, w))) < 0.05, `${id} ${apart} ${w}`);
      assert.ok(Math.abs(numberAt(line, 'data-apart') - w) < 0.01);
      drawnOnes += 1;
    }
    assert.ok(drawnOnes >= 3);
  });

  it('has the worst first, and says that it does not fit', () => {
    const order = [...svg.matchAll(/data-id="([^"]+)"/g)].map(([, id]) => Math.abs(judged.get(id!)!.w!));
    assert.deepEqual(
      order,
      [...order].sort((a, b) => b - a),
    );
    const [worst] = [...svg.matchAll(/data-id="([^"]+)"/g)];
    assert.match(part(svg, `data-id="${worst![1]!}"`), /does not fit/);
  });

  it('shades as far as the threshold of the record', () => {
    const shade = part(svg, 'data-part="threshold"');
    const width = (numberAt(shade, 'width') / (to - from)) * 2 * farthest;
    assert.ok(Math.abs(width - 2 * analysis.agreement!.threshold) < 0.05);
  });

  it('counts those that are unchecked, numbers of the student apart', () => {
    assert.match(svg, /Unchecked: 1 entry;/);
    const files = { 'ansa.student.yaml': 'student: 1\nhand: right\nstature: 170 cm\nmass: 64 kg\n' };
    const path = 'swing: 1\nstudent: ansa.student.yaml\ndelivery: { path: 2 deg right }\n';
    assert.match(
      drawn('agreement', analysed(path, { files })),
      /Unchecked: 1 entry and 2 numbers of the student('|&#39;)s file;/,
    );
  });

  it('breaks what it says below well inside the edge', () => {
    const files = { 'ansa.student.yaml': 'student: 1\nhand: right\nstature: 170 cm\nmass: 64 kg\n' };
    const path = 'swing: 1\nstudent: ansa.student.yaml\ndelivery: { path: 2 deg right }\n';
    const below = drawn('agreement', analysed(path, { files }));
    const [told, rest] = boxesOf(below).filter(({ text }) => /Unchecked|right or wrong/.test(text));
    assert.match(rest!.text, /right or wrong$/);
    for (const { right } of [told!, rest!]) assert.ok(right < sizeOf(below).width - 48, `${right}`);
  });

  it('says why a cross may stand inside the shade', () => {
    assert.doesNotMatch(svg, /cross inside the shade/);
    const worst = Math.max(
      ...analysis.agreement!.conflicts.map(({ w }) => Math.abs(w)).filter((w) => w < farthest),
    );
    assert.ok(worst > 0);
    const wide = { ...analysis, agreement: { ...analysis.agreement!, threshold: worst + 0.1 } };
    assert.match(drawn('agreement', wide), />a cross inside the shade: taken out since/);
    assert.match(drawn('agreement', wide), /<desc[^<]*A cross inside the shade/);
  });

  it('says what is not known', () => {
    const empty = drawn('agreement', analysed('swing: 1\n'));
    assert.match(empty, /Not known: any entry/);
    assertSound(
      drawn('agreement', analysed('swing: 1\ndelivery: { face: 1e300 deg right, path: -1e300 deg }\n')),
    );
  });

  it('is kept', () => assertKept('agreement', svg));
});
