// Small pictures for hovers: the right one for each quantity, true to their angles, with all words inside, and none of what is not known.
import assert from 'node:assert/strict';
import { analyse } from '../../src/analysis/analyse.ts';
import { hoverPictureOf } from '../../src/draw/hover-pictures.tsx';
import { svgOf } from '../../src/draw/picture.tsx';
import { themes, type ThemeName } from '../../src/draw/theme.ts';
import type { Analysis } from '../../src/analysis/result.ts';
import { fullRecord } from '../../build/bench/full-record.ts';
import { analysed, student } from '../language/analysed.ts';
import { samples, snapshotWith } from '../samples.ts';
import { angleOf, assertSound, part, places } from './drawn.ts';
import { boxesOf, overlap, sizeOf } from './words-on.ts';

const record = `swing: 1
student: mira.student.yaml
club: hybrid
delivery:
  club_speed: 41 m/s
  path: 5 deg right ± 1 deg
  face: 2 deg left ± 1 deg
  attack: 4 deg down
  arc: { inclination: 60 deg, radius: 1.5 m }
  low_point: { ahead: 6 cm ahead ± 1 cm, depth: 5 mm below }
ground: { divot: { starts: 2 cm behind, length: 12 cm, depth: 6 mm } }
flight: { ball_speed: 60 m/s, launch_angle: 12 deg, spin: 4000 rpm, start: 1 deg right, carry: 160 m }
`;
const absurd = `swing: 1
delivery: { path: 5000 deg right, face: ~1e300 deg left, attack: 80 deg down, low_point: { ahead: 3 cm ahead, depth: 1e300 cm below } }
ground: { divot: { starts: 2 cm behind, length: 1e300 m, depth: 1e300 m } }
flight: { ball_speed: 9e9 m/s, launch_angle: 1e300 deg, start: 170 deg left, carry: 3 mm, apex: 1e200 m }
`;
const named: readonly (readonly [name: string, ids: readonly string[]])[] = [
  ['hover-directions', ['delivery.path', 'delivery.face', 'delivery.face_to_path']],
  ['hover-attack', ['delivery.attack']],
  [
    'hover-low-point',
    [
      'delivery.low_point.ahead',
      'delivery.low_point.depth',
      'ground.divot.starts',
      'ground.divot.length',
      'ground.divot.depth',
    ],
  ],
  ['hover-flight-from-above', ['flight.start', 'flight.curve', 'flight.finish', 'flight.spin_tilt']],
  [
    'hover-flight-from-the-side',
    ['launch_angle', 'apex', 'descent', 'carry', 'total', 'spin', 'ball_speed', 'time'].map(
      (key) => `flight.${key}`,
    ),
  ],
];
const ids = named.flatMap(([, own]) => own);

function of(text: string, id: string, hand = 'right'): string | undefined {
  return drawn(read(text, hand), id);
}

function read(text: string, hand = 'right'): Analysis {
  return analysed(text, {
    files: { 'mira.student.yaml': student.replace('hand: right', `hand: ${hand}`) },
  });
}

function drawn(analysis: Analysis, id: string, theme: ThemeName = 'light'): string | undefined {
  const picture = hoverPictureOf(analysis, id, themes[theme]);
  return picture && svgOf(picture);
}

describe('small pictures for hovers', () => {
  for (const [name, own] of named)
    it(`draw ${name} of ${own.join(', ')}`, () => {
      const analysis = read(record);
      for (const id of own)
        assert.equal(/data-picture="([^"]*)"/.exec(drawn(analysis, id) ?? '')?.[1], name, id);
    });

  it('draw nothing of other quantities, and nothing where nothing is known', () => {
    for (const id of ['strike.across', 'delivery.club_speed', 'checkpoints.impact.shaft_lean', 'toString'])
      assert.equal(of(record, id), undefined, id);
    const nothing = read('swing: 1\n');
    for (const id of ids) assert.equal(drawn(nothing, id), undefined, id);
  });

  it('draw angles three times as large and say so, and larger ones as they are', () => {
    const [small, large] = [
      of(record, 'delivery.path')!,
      of(record.replace('5 deg', '25 deg'), 'delivery.path')!,
    ];
    // The target is on the right of the picture, 90° from up.
    const angle = (svg: string): number => angleOf(places(part(svg, 'data-id="delivery.path"'))) - 90;
    assert.ok(Math.abs(angle(small) - 15) < 0.2, String(angle(small)));
    assert.ok(small.includes('angles × 3'));
    assert.ok(Math.abs(angle(large) - 25) < 0.2, String(angle(large)));
    assert.ok(large.includes('true angles'));
  });

  it('draw what the other entries expect dashed beside what was entered', () => {
    const svg = of(record, 'delivery.attack')!;
    assert.match(svg, /stroke-dasharray="6 4"/);
    assert.match(svg, />others [\d.]+ deg (up|down)</);
    assert.match(svg, /Attack angle, by the other entries: /);
  });

  it('draw what the others expect farther than what was entered, so that it is seen where both lie on one line', () => {
    const svg = of(record, 'delivery.attack')!;
    const length = (attribute: string): number => {
      const [from, to] = places(part(svg, attribute));
      return Math.hypot(to!.x - from!.x, to!.y - from!.y);
    };
    assert.ok(length('data-part="others"') > length('data-id="delivery.attack"') + 8);
  });

  it('say what is hatched, how long 10 cm are, and where the others expect the ball', () => {
    const goal = `${record}goals: [{ finish: 5 m left..5 m right }]\n`;
    assert.match(of(goal, 'flight.curve')!, />goal</);
    assert.doesNotMatch(of(goal, 'flight.carry')!, />goal</);
    const bar = places(part(of(record, 'delivery.low_point.ahead')!, 'data-part="scale"'));
    assert.ok(Math.abs(Math.abs(bar.at(-1)!.x - bar[0]!.x) - 44) < 0.01);
    const launched = `swing: 1
student: mira.student.yaml
club: hybrid
flight: { ball_speed: 58 m/s, launch_angle: 15 deg, spin: 4200 rpm, spin_tilt: 4 deg right, start: 2 deg left, curve: 9 m right, carry: 160 m }
`;
    assert.match(of(launched, 'flight.curve')!, />others \d+ m, [\d.]+ m (left|right)</);
    assert.match(of(launched, 'flight.carry')!, />others \d+ m</);
    assert.match(
      of(launched.replace(', carry: 160 m', ''), 'flight.curve')!,
      />computed \d+ m, [\d.]+ m (left|right)</,
    );
  });

  it('draw a low point 6 cm ahead toward the target, which is on the left for a left-handed player', () => {
    const at = (hand: string): number =>
      Number(
        /cx="([\d.]+)"[^>]*data-part="low-point"/.exec(of(record, 'delivery.low_point.ahead', hand)!)?.[1],
      );
    assert.ok(Math.abs(at('right') - (130 + 440 * 0.06)) < 0.05);
    assert.ok(Math.abs(at('left') - (130 - 440 * 0.06)) < 0.05);
    assert.ok(of(record, 'delivery.attack', 'left')!.includes('← target'));
  });

  it('leave out what nobody could draw', () => {
    const analysis = read(absurd);
    for (const id of ids) {
      const svg = drawn(analysis, id) ?? '';
      assertSound(svg);
    }
    assert.equal(drawn(analysis, 'delivery.path'), undefined);
  });

  it('have colours of the theme alone, letters of the system, and are small', () => {
    const analysis = read(record);
    for (const theme of Object.keys(themes) as ThemeName[])
      for (const id of ids) {
        const svg = drawn(analysis, id, theme)!;
        const colours = new Set<string>(Object.values(themes[theme]));
        for (const [colour] of svg.matchAll(/#[0-9a-f]{6}/g)) assert.ok(colours.has(colour), colour);
        assert.doesNotMatch(svg, /var\(|<style|<script|href=/);
        assert.ok(svg.length < 9000, `${id}: ${svg.length}`);
      }
  });

  const full = fullRecord();
  const files = { 'bench.student.yaml': full.student };
  const records: readonly Analysis[] = [
    ...[...samples.keys()]
      .filter((uri) => uri.endsWith('.swing.yaml'))
      .map((uri) => analyse(uri, snapshotWith({}))),
    analysed(full.record, { name: 'bench.swing.yaml', files }),
    read(record),
    read(record, 'left'),
  ];
  for (const [place, analysis] of records.entries())
    it(`have all their words inside and none on another: ${place}, ${analysis.uri}`, () => {
      let count = 0;
      for (const id of ids) {
        const svg = drawn(analysis, id);
        if (svg === undefined) continue;
        count += 1;
        const { width, height } = sizeOf(svg);
        const boxes = boxesOf(svg);
        for (const [i, box] of boxes.entries()) {
          const isInside = box.left >= 0 && box.right <= width && box.top >= 0 && box.bottom <= height;
          assert.ok(isInside, `${id}: outside of ${width} × ${height}: ${JSON.stringify(box)}`);
          for (const other of boxes.slice(i + 1))
            assert.ok(!overlap(box, other), `${id}: ${JSON.stringify(box)} on ${JSON.stringify(other)}`);
        }
      }
      assert.ok(count > 0);
    });
});
