// The strike from above is true to its angles, and says in words what it cannot show.
import assert from 'node:assert/strict';
import { goalWindowsOf } from '../../src/analysis/windows.ts';
import type { Analysis } from '../../src/analysis/result.ts';
import type { Goal } from '../../src/record/document.ts';
import { analysed, student } from '../language/analysed.ts';
import { angleOf, assertKept, drawn, part, places } from './drawn.ts';

const name = 'strike-from-above';
const record = `swing: 1
student: mira.student.yaml
club: hybrid
delivery:
  club_speed: 41 m/s ± 0.5 m/s
  attack: 3.5 deg down
  path: 5 deg right ± 1 deg
  face: 2 deg left ± 1 deg
flight: { start: 1 deg left ± 1 deg, curve: 12 m left, carry: 171 m }
goals: [{ start: 1 deg right, curve: 0..5 m left }]
`;
const files = { 'mira.student.yaml': student };

function goals({ document }: Analysis): readonly Goal[] {
  return document.kind === 'swing' ? document.goals : [];
}

describe('the strike from above', () => {
  const analysis = analysed(record, { files });
  const svg = drawn(name, analysis);

  it('draws path and face in their directions, to half a degree', () => {
    const path = places(part(svg, 'data-id="delivery.path"'));
    assert.ok(Math.abs(angleOf(path) - 5) < 0.5, `${angleOf(path)}`);
    const face = part(svg, 'data-id="delivery.face"');
    assert.ok(Math.abs(angleOf(places(face, 1)) - -2) < 0.5);
    // The face itself lies across its direction.
    assert.ok(Math.abs(angleOf(places(face, 0)) - (90 - 2)) < 0.5);
  });

  it('says where face to path is not what path and face as entered make it', () => {
    const note =
      /Face to path is what all entries together say; path and face as entered would make it 7 deg left/;
    const torn = `swing: 1
student: mira.student.yaml
club: hybrid
delivery: { club_speed: 38 m/s by radar, path: 4 deg right by eye, face: 3 deg left by eye }
flight: { start: 1 deg left by radar, curve: 8 m right by radar, carry: 120 m by radar }
`;
    assert.match(drawn(name, analysed(torn, { files })).replace(/<[^>]*>/g, ' '), note);
    assert.doesNotMatch(svg, /what all entries together say/);
  });

  it('starts the ball in its direction and ends it where start and curve lead', () => {
    const [, x0, y0, x1, y1, x2, y2] = /M ([\d.]+) ([\d.]+) Q ([\d.]+) ([\d.]+) ([\d.]+) ([\d.]+)/
      .exec(part(svg, 'data-id="flight.start"'))!
      .map(Number);
    const from = { x: x0!, y: y0! };
    assert.ok(Math.abs(angleOf([from, { x: x1!, y: y1! }]) - -1) < 0.5);
    const chord = -1 - (Math.asin(12 / 171) * 180) / Math.PI;
    assert.ok(Math.abs(angleOf([from, { x: x2!, y: y2! }]) - chord) < 0.5);
  });

  it('shows the windows of flight and goal', () => {
    assert.ok(part(svg, 'data-window="flight"').includes('hatch-allowed'));
    assert.ok(part(svg, 'data-window="goal"').includes('hatch-goal'));
  });

  it('says that not every number in a window goes with every one in the others, below them and to who cannot see', () => {
    const plain = svg.replaceAll(/<[^>]+>/g, ' ').replaceAll(/\s+/g, ' ');
    const words =
      /Of what the goal asks, each holds for some values of the others, not for all of them; their middles go together: .*club path \d/g;
    assert.ok(words.test(plain), plain);
    const drawnLines = [...svg.matchAll(/<text[^>]*>([^<]+)<\/text>/g)].map(([, text]) => text).join(' ');
    assert.match(drawnLines, /not for all of them; their middles go together: .*club path \d/);
    const alone = analysed(record.replace('start: 1 deg right, ', ''), { files });
    assert.equal(goalWindowsOf(alone, goals(alone)[0]!).size, 1);
    assert.doesNotMatch(drawn(name, alone), /not for all/);
  });

  it('draws the windows of face to path from the path on', () => {
    const goal = part(svg, 'data-window="goal"');
    const [, x, y] = / d="M ([\d.]+) ([\d.]+)/.exec(goal)!.map(Number);
    const { min } = goalWindowsOf(analysis, goals(analysis)[0]!).get('delivery.face_to_path')!;
    const from = angleOf([
      { x: 270, y: 318 },
      { x: x!, y: y! },
    ]);
    assert.ok(Math.abs(from - (5 + (min * 180) / Math.PI)) < 0.5, `${from}`);
  });

  it('draws the degrees of its scale where they are', () => {
    const marks = [...part(svg, 'data-part="degrees"').matchAll(/ d="M ([\d.]+) ([\d.]+) L /g)];
    const angles = marks.map(([, x, y]) =>
      angleOf([
        { x: 270, y: 318 },
        { x: Number(x), y: Number(y) },
      ]),
    );
    for (const degree of [-18, -10, 0, 10, 18])
      assert.ok(
        angles.some((angle) => Math.abs(angle - degree) < 0.05),
        `${degree}`,
      );
  });

  it('puts a left-handed player on the other side of the ball', () => {
    const left = student.replace('hand: right', 'hand: left');
    const mirrored = drawn(name, analysed(record, { files: { 'mira.student.yaml': left } }));
    const [one, other] = [svg, mirrored].map((picture) => places(part(picture, 'data-part="player"'))[0]!.x);
    assert.ok(one! < 270 && other! > 270);
    assertKept(`${name}-left`, mirrored);
  });

  it('draws solid what was written down and dashed what was computed', () => {
    const computed = drawn(
      name,
      analysed('swing: 1\ndelivery: { path: 5 deg right, face_to_path: 2 deg left }\n'),
    );
    assert.ok(part(computed, 'data-id="delivery.face"').includes('stroke-dasharray="6 4"'));
    assert.ok(!part(svg, 'data-id="delivery.path"').includes('stroke-dasharray="6 4"'));
  });

  it('draws what can be drawn of little or nothing, and says what is not known', () => {
    const nothing = drawn(name, analysed('swing: 1\n'));
    assert.ok(nothing.includes('Not known: path, face, start of the ball'));
    const absurd = drawn(
      name,
      analysed('swing: 1\ndelivery: { path: 5000 deg right, face: ~1e300 deg left }\n'),
    );
    for (const one of [nothing, absurd]) assert.doesNotMatch(one, /NaN|Infinity|undefined/);
  });

  it('looks as it was found good', () => assertKept(name, svg));
});
