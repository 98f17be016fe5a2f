// The flight is drawn to one scale, lands where it was recorded, and its spreads are as wide as a normal distribution has them.
import assert from 'node:assert/strict';
import chiSquareQuantile from '@stdlib/stats-base-dists-chisquare-quantile';
import { computedFlightOf, flightPathOf } from '../../src/analysis/flight-path.ts';
import { sayingOf } from '../../src/draw/known.ts';
import { builtIn } from '../../src/registry/registry.ts';
import { analysed, student } from '../language/analysed.ts';
import { assertKept, drawn, numberAt, part, places } from './drawn.ts';
import { boxesOf, sizeOf } from './words-on.ts';

const name = 'flight';
const record = `swing: 1
student: mira.student.yaml
club: hybrid
conditions: { wind: 3 m/s from left }
flight:
  ball_speed: 58 m/s
  launch_angle: 15 deg
  spin: 4200 rpm
  spin_tilt: 4 deg right
  start: 2 deg left ± 1 deg
  curve: 9 m right ± 2 m
  carry: 160 m ± 4 m
  apex: 24 m
  descent: 40 deg
shots:
  - { carry: 150 m, finish: 4 m left }
  - { carry: 158 m, finish: 2 m right }
  - { carry: 163 m, finish: 9 m right }
  - { carry: 155 m, finish: 1 m left }
goals: [{ carry: 150..165 m, finish: 5 m left..5 m right }]
`;
const files = { 'mira.student.yaml': student };

describe('the flight', () => {
  const analysis = analysed(record, { files });
  const svg = drawn(name, analysis);
  const ball = 32;
  /** Units of the picture for a metre, from the mark that says 50 m. */
  const scale = (Number(/<text x="([\d.]+)"[^>]*>50 m</.exec(svg)?.[1]) - ball) / 50;
  const line = places(part(part(svg, 'data-part="above"'), 'stroke-dasharray="10 4 2 4"'))[0]!.y;
  const ground = places(part(svg, 'data-part="distances"'))[0]!.y;

  it('lands where carry, start and curve lead', () => {
    const landing = part(part(svg, 'data-part="above"'), 'data-part="landing"');
    const finish = 160 * Math.sin((-2 * Math.PI) / 180 + Math.asin(9 / 160));
    assert.ok(Math.abs((numberAt(landing, 'cx') - ball) / scale - Math.sqrt(160 ** 2 - finish ** 2)) < 0.1);
    assert.ok(Math.abs((numberAt(landing, 'cy') - line) / scale - finish) < 0.1);
  });

  it('draws the computed way dashed, from the side and from above at the same scale', () => {
    const path = flightPathOf(computedFlightOf(analysis))!;
    const top = Math.max(...path.map(({ up }) => up));
    const { ahead, right } = path.at(-1)!;
    const side = part(svg, 'data-part="side-path"');
    const drawnPath = numbersOf(side);
    assert.ok(Math.abs((ground - Math.min(...drawnPath.map(([, y]) => y))) / scale - top) < 0.1);
    const [x, y] = numbersOf(part(svg, 'data-part="above-path"')).at(-1)!;
    assert.ok(Math.abs((x - ball) / scale - ahead) < 0.1);
    assert.ok(Math.abs((y - line) / scale - right) < 0.1);
    assert.ok(side.includes('stroke-dasharray="6 4"'));
  });

  it('draws launch and descent in their directions, and the apex at its height', () => {
    const angle = (attribute: string): number => {
      const [from, to] = places(part(svg, attribute));
      return (Math.atan2(from!.y - to!.y, Math.abs(to!.x - from!.x)) * 180) / Math.PI;
    };
    assert.ok(Math.abs(angle('data-part="launch"') - 15) < 0.5);
    assert.ok(Math.abs(angle('data-part="descent"') - 40) < 0.5);
    assert.ok(Math.abs((ground - places(part(svg, 'data-part="apex"'))[0]!.y) / scale - 24) < 0.1);
  });

  it('draws every shot, and the ellipse that holds 95 % of a normal spread like theirs', () => {
    assert.equal(part(svg, 'data-part="above"').split('data-part="shot"').length - 1, 4);
    const { long, short } = analysis.subject.shots!.summary!.ellipse!;
    // χ² with 2 degrees of freedom, from a library of distributions.
    const factor = Math.sqrt(chiSquareQuantile(0.95, 2));
    const spread = part(svg, 'data-part="spread"');
    assert.ok(Math.abs(numberAt(spread, 'rx') / scale - factor * long) < 0.05);
    assert.ok(Math.abs(numberAt(spread, 'ry') / scale - factor * short) < 0.05);
  });

  it('draws a shot hollow that the spread leaves out, and says so', () => {
    const near = [150, 152, 154, 156, 158, 160].map((m, i) => `  - { carry: ${m} m, finish: ${i} m left }\n`);
    const listed = `shots:\n${near.join('')}  - { carry: 60 m, finish: 1 m left }\n`;
    const picture = drawn(name, analysed(`swing: 1\n${listed}`));
    const above = part(picture, 'data-part="above"');
    assert.equal(above.split('data-part="shot"').length - 1, 6);
    assert.equal(above.split('data-part="far-shot"').length - 1, 1);
    assert.match(picture, />left out: far from the others</);
    assert.match(picture, />95 % of shots that spread as these 6</);
    assert.match(picture, /Shots drawn: 7, 1 of them left out: far from the others\./);
  });

  it('hatches the goal where it is', () => {
    const zone = part(svg, 'data-part="goal"');
    assert.ok(zone.includes('hatch-goal'));
    assert.ok(Math.abs((numberAt(zone, 'x') - ball) / scale - 150) < 0.1);
    assert.ok(Math.abs(numberAt(zone, 'width') / scale - 15) < 0.1);
    assert.ok(Math.abs(numberAt(zone, 'height') / scale - 10) < 0.1);
  });

  it('lets a wind from the left blow to the right, which is down when the target lies to the right', () => {
    const [tail, tip] = places(part(svg, 'data-part="wind"'));
    assert.ok(tip!.y - tail!.y > 25 && Math.abs(tip!.x - tail!.x) < 0.5);
  });

  it('bends to the other side for the same flight mirrored, whoever plays', () => {
    const left = student.replace('hand: right', 'hand: left');
    const mirrored = record
      .replaceAll(/\b(left|right)\b/g, (side) => (side === 'left' ? 'right' : 'left'))
      .replace('5 m right..5 m left', '5 m left..5 m right');
    const other = flightPathOf(
      computedFlightOf(analysed(mirrored, { files: { 'mira.student.yaml': left } })),
    )!.at(-1)!;
    assert.ok(Math.abs(other.right + flightPathOf(computedFlightOf(analysis))!.at(-1)!.right) < 1e-6);
  });

  it('draws what can be drawn of little or nothing, and says what is not known', () => {
    const nothing = drawn(name, analysed('swing: 1\n'));
    assert.ok(nothing.includes('Not known: launch angle, apex, descent angle, carry'));
    assert.ok(!nothing.includes('data-part="side-path"'));
    const far = drawn(name, analysed('swing: 1\nflight: { carry: 1e9 m, apex: 1e7 m }\n'));
    assert.ok(!far.includes('data-part="landing"'));
  });

  it('draws each goal for itself, by name where there are several', () => {
    const two = record.replace(
      /goals: .*/,
      'goals: [{ shape: draw, carry: 150..160 m, finish: 10..20 m left }, { shape: fade, finish: 5..15 m right }]',
    );
    const picture = drawn(name, analysed(two, { files }));
    const zones = [...picture.matchAll(/<rect [^>]*data-part="goal"[^>]*>/g)].map(([zone]) => zone);
    assert.equal(zones.length, 2);
    const heights = zones.map((zone) => numberAt(zone, 'height'));
    assert.ok(Math.abs(heights[0]! - heights[1]!) < 0.1);
    // The first one's carry is none of the second's.
    assert.ok(numberAt(zones[1]!, 'width') > 5 * numberAt(zones[0]!, 'width'));
    assert.match(picture, />draw</);
    assert.match(picture, />fade</);
  });

  it('sets the words on a goal, and on the line to the target, on paper of their own above all hatching', () => {
    const picture = drawn(
      name,
      analysed(
        record.replace(
          /goals: .*/,
          'goals: [{ shape: draw, finish: 2 m left..3 m right }, { shape: fade }, { shape: fade, finish: 9..20 m right }]',
        ),
        { files },
      ),
    );
    const last = picture.lastIndexOf('data-part="goal"');
    for (const words of ['draw', 'fade', 'target \u2192']) {
      const at = picture.indexOf(`>${words}<`);
      assert.ok(at > last, words);
      const box = boxesOf(picture).find(({ text }) => text === words)!;
      const paper = picture.slice(picture.lastIndexOf('<rect', at), at);
      assert.match(paper, /data-part="paper"/);
      assert.ok(numberAt(paper, 'x') < box.left && numberAt(paper, 'y') < box.top);
      assert.ok(numberAt(paper, 'x') + numberAt(paper, 'width') > box.right);
      assert.ok(numberAt(paper, 'y') + numberAt(paper, 'height') > box.bottom);
    }
  });

  it('breaks what it has not drawn into lines that keep clear of the edge', () => {
    const absurd = drawn(
      name,
      analysed(
        'swing: 1\nflight: { carry: 900 m, apex: 200 m }\ngoals: [{ carry: 1600..1780 m, finish: 4 m left..5 m right }]\n',
      ),
    );
    const lines = boxesOf(absurd).filter(({ text }) => /possible|500 m\)/.test(text));
    assert.ok(lines.length > 1);
    // The widest of usual letters are some 8 % wider than is reckoned with: judgement.
    for (const { left, right } of lines) assert.ok(left + (right - left) * 1.08 < sizeOf(absurd).width - 16);
  });

  it('keeps goals out of the view from the side', () => {
    const picture = drawn(
      name,
      analysed(record.replace(/goals: .*/, 'goals: [{ carry: 150..160 m }]'), { files }),
    );
    const clip = / id="flight-above"><rect [^>]*>/.exec(picture)![0];
    const above = places(part(picture, 'data-part="distances"'))[0]!.y;
    assert.ok(numberAt(clip, 'y') > above);
    assert.match(picture, /clip-path="url\(#flight-above\)"><g data-part="above"/);
  });

  it('draws the rest of a record with absurd entries, and says which ones it left out', () => {
    const absurd = record
      .replace('carry: 160 m ± 4 m', 'carry: 900 m')
      .replace('curve: 9 m right ± 2 m', 'curve: 400 m right')
      .replace('carry: 150 m, finish: 4 m left', 'carry: 4000 m, finish: 4 m left')
      .replace('carry: 150..165 m', 'carry: 950 m');
    const picture = drawn(name, analysed(absurd, { files }));
    const said = / id="flight-words">([^<]*)</.exec(picture)![1]!;
    for (const words of [
      'Not drawn: carry 900 m (possible: 0..500 m); curve 400.0 m right (possible: 350 m left..350 m right)',
      'the goal’s carry 950 m (possible: 0..500 m)',
      '1 shot farther than a ball flies',
    ])
      assert.ok(said.includes(words), said);
    assert.match(picture, />Not drawn: carry 900 m/);
    assert.ok(!picture.includes('data-part="landing"'));
    assert.ok(picture.includes('data-part="side-path"'));
  });

  it('says that a finish is not drawn where there is no carry to draw it at', () => {
    const picture = drawn(name, analysed('swing: 1\nflight: { carry: 900 m, finish: 12 m right ± 2 m }\n'));
    const said = / id="flight-words">([^<]*)</.exec(picture)![1]!;
    assert.ok(said.includes('finish 12.0 m right ± 2.0 m, without a carry that it could be drawn at'), said);
  });

  it('puts no landing on the target line where the finish lies farther aside than the ball flies', () => {
    const picture = drawn(name, analysed('swing: 1\nflight: { carry: 100 m, finish: 120 m left }\n'));
    assert.ok(!picture.includes('data-part="landing"'));
    assert.match(picture, />Not drawn: finish, which is farther aside than the ball flies</);
  });

  it('draws one computed place, says it in the same numbers there, in the text alternative and in the hint, and whose it is', () => {
    const { by, carry, finish } = computedFlightOf(analysis);
    assert.equal(by, 'others');
    const diamond = part(part(svg, 'data-part="above"'), 'data-part="expected-landing"');
    const [x, top] = numbersOf(diamond.slice(diamond.indexOf('<path')))[0]!;
    // The diamond's path begins at its upper corner, 5.5 above its middle.
    const [ahead, right] = [(x - ball) / scale, (top + 5.5 - line) / scale];
    assert.ok(Math.abs(Math.hypot(ahead, right) - carry!.value) < 0.1);
    assert.ok(Math.abs(right - finish!.value) < 0.1);
    const side = numbersOf(part(svg, 'data-part="side-path"')).at(-1)!;
    assert.ok(Math.abs((side[0] - ball) / scale - ahead) < 0.1);
    const numbers = [carry!, finish!].map((value) => sayingOf(value, builtIn).number).join(', ');
    assert.ok(svg.includes(`>By the other entries</text>`) && svg.includes(`>${numbers}</text>`));
    const said = / id="flight-words">([^<]*)</.exec(svg)![1]!;
    assert.ok(said.includes(`By the other entries, dashed: ${numbers}.`), said);
  });

  it('takes the computed place from nothing that was recorded of the landing', () => {
    const other = record
      .replace('carry: 160 m ± 4 m', 'carry: 170 m')
      .replace('curve: 9 m right ± 2 m', 'curve: 30 m left, finish: 28 m left');
    const [one, two] = [analysis, analysed(other, { files })].map(computedFlightOf);
    // Both are led on from fits that ended elsewhere, each to a hundredth of a standard uncertainty.
    for (const of of ['carry', 'finish'] as const)
      assert.ok(Math.abs(two![of]!.value - one![of]!.value) < 0.03 * one![of]!.u!, of);
  });

  it('leads the computed way to the recorded place where the others say nothing of it', () => {
    const lone = analysed(
      `swing: 1
student: mira.student.yaml
club: hybrid
checkpoints: { impact: { shaft_lean: 10 deg forward, hands: 6 cm ahead } }
strike: { across: 6 mm toward toe, height: 4 mm high }
delivery: { attack: 4 deg down, path: 7 deg right, face: 3 deg left, low_point: { ahead: 6 cm ahead } }
flight: { carry: 120 m, launch_angle: 18 deg, start: 5 deg left, curve: 20 m right }
`,
      { files },
    );
    const computed = computedFlightOf(lone);
    assert.equal(computed.by, 'all');
    const end = flightPathOf(computed)!.at(-1)!;
    assert.ok(Math.abs(Math.hypot(end.ahead, end.right) - 120) < 1e-6);
    const picture = drawn(name, lone);
    assert.ok(!picture.includes('data-part="expected-landing"'));
    assert.match(picture, />computed by all entries together</);
  });

  it('says goal, shots, spread and wind to who cannot see them', () => {
    const said = / id="flight-words">([^<]*)</.exec(svg)![1]!;
    for (const words of [
      'Goal, hatched: carry 150..165 m, finish 5 m left..5 m right.',
      'Shots drawn: 4.',
      'Ellipse: 95 % of shots that spread as these 4.',
      'Arrow: wind 3.0 m/s from left.',
    ])
      assert.ok(said.includes(words), said);
  });

  it('looks as it was found good', () => assertKept(name, svg));
});

function numbersOf(shape: string): readonly (readonly [number, number])[] {
  const [, d] = / d="([^"]+)"/.exec(shape)!;
  const numbers = [...d!.matchAll(/-?[\d.]+/g)].map(Number);
  return Array.from(
    { length: numbers.length / 2 },
    (_, i) => [numbers[2 * i]!, numbers[2 * i + 1]!] as const,
  );
}
