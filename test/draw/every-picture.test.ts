// What holds of every picture of every record: its words are inside and apart, nothing is no number, each says in words what it shows.
import assert from 'node:assert/strict';
import { analyse } from '../../src/analysis/analyse.ts';
import type { Analysis } from '../../src/analysis/result.ts';
import { svgOf } from '../../src/draw/picture.tsx';
import { pictures, sheetsOf } from '../../src/draw/pictures.tsx';
import { themes, type Theme } from '../../src/draw/theme.ts';
import { analysed, student } from '../language/analysed.ts';
import { practice, samples, snapshotWith } from '../samples.ts';
import { fullRecord } from '../../build/bench/full-record.ts';
import { boxesOf, overlap, sizeOf } from './words-on.ts';

const left = student.replace('hand: right', 'hand: left');
const full = fullRecord();
const book = `faults: 1
faults:
  one-with-a-long-name-that-nobody-would-choose:
    title: Lets the upper body and everything that hangs on it stay behind for much too long on the way down
    evidence: [checkpoints.impact.lead_pressure < 70 %]
    tends_to:
      - { effect: delivery.low_point.ahead, direction: behind }
      - { effect: delivery.path, direction: right }
`;
const absurd = `swing: 1
student: m.student.yaml
faults_from: b.faults.yaml
checkpoints:
  address: { lead_pressure: 1e300 %, head: 1e12 cm behind }
  impact: { lead_pressure: -400 %, shaft_lean: 5000 deg forward }
delivery: { club_speed: 9999 m/s, path: 5000 deg right, face: ~1e300 deg left, face_to_path: 80 deg right, low_point: { ahead: 1e300 cm ahead } }
ground: { divot: { starts: 90 m ahead, length: 1e9 m, depth: 3 m } }
strike: { across: 4 m toward toe, height: 1e9 mm low }
flight: { ball_speed: 9e9 m/s, start: 170 deg left, curve: 1e6 m left, carry: 3 mm, apex: 1e200 m }
faults: [{ fault: one-with-a-long-name-that-nobody-would-choose }, { fault: unknown-one }]
misses: [slice, heavy, nothing-known]
goals: [{ start: 80 deg left, finish: 1e9 m right, carry: 1e20 m }]
`;

const records: readonly (readonly [string, () => Analysis])[] = [
  ...[...samples.keys()]
    .filter((uri) => uri.endsWith('.swing.yaml'))
    .map((uri) => [uri.slice(practice.length), () => analyse(uri, snapshotWith({}))] as const),
  ['a record without an entry', () => analysed('swing: 1\n')],
  ['a record of one pressure', () => analysed('swing: 1\ncheckpoints: { top: { lead_pressure: 30 % } }\n')],
  ['a record of one carry', () => analysed('swing: 1\nflight: { carry: 150 m }\n')],
  ['a record of one fault that no book has', () => analysed('swing: 1\nfaults: [{ fault: odd }]\n')],
  ['an absurd record', () => analysed(absurd, { files: { 'm.student.yaml': left, 'b.faults.yaml': book } })],
  [
    'a full record',
    () => analysed(full.record, { name: 'bench.swing.yaml', files: { 'bench.student.yaml': full.student } }),
  ],
  [
    'a full record of a left-handed player',
    () =>
      analysed(full.record, {
        name: 'bench.swing.yaml',
        files: { 'bench.student.yaml': full.student.replace('hand: right', 'hand: left') },
      }),
  ],
];

describe('every picture', () => {
  for (const [record, find] of records) {
    describe(`of ${record}`, () => {
      const analysis = find();
      for (const { name, title, checkpoint, draw } of pictures.flatMap((picture) =>
        sheetsOf(picture, analysis),
      )) {
        const svg = svgOf(draw(themes.light));
        const called = checkpoint === undefined ? name : `${name} at ${checkpoint}`;

        it(`${called}: has all its words inside and none on another`, () => {
          const { width, height } = sizeOf(svg);
          const boxes = boxesOf(svg);
          assert.equal(boxes.length, svg.split('<text').length - 1);
          for (const [i, box] of boxes.entries()) {
            const isInside = box.left >= 0 && box.right <= width && box.top >= 0 && box.bottom <= height;
            assert.ok(isInside, `outside of ${width} × ${height}: ${JSON.stringify(box)}`);
            for (const other of boxes.slice(i + 1))
              assert.ok(!overlap(box, other), `${JSON.stringify(box)} on ${JSON.stringify(other)}`);
          }
        });

        it(`${called}: holds numbers only, and says what it shows`, () => {
          assert.doesNotMatch(svg, /NaN|Infinity|undefined|null|\[object/);
          const [, shown = ''] = new RegExp(`<title id="${name}-title">([^<]*)</title>`).exec(svg) ?? [];
          const place = checkpoint?.replaceAll('_', ' ');
          if (place === undefined) assert.equal(shown, title);
          else assert.ok(shown.toLowerCase().startsWith(place), shown);
          const [, words] = new RegExp(`<desc id="${name}-words">([^<]*)</desc>`).exec(svg) ?? [];
          assert.ok(words !== undefined && words.length > 10, 'no words');
        });
      }
    });
  }

  it('takes its colours as they come, so that a page may hand in variables', () => {
    const variables = Object.fromEntries(
      Object.keys(themes.light).map((key) => [key, `var(--sw-${key})`]),
    ) as unknown as Theme;
    const analysis = records[0]![1]();
    for (const { draw } of pictures.flatMap((picture) => sheetsOf(picture, analysis))) {
      const svg = svgOf(draw(variables));
      assert.doesNotMatch(svg, /#[0-9a-f]{3,8}"|rgb\(/i);
    }
  });
});
