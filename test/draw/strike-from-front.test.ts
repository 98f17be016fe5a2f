// The strike from the front is true to scale, whichever hand plays, and says what it cannot show.
import assert from 'node:assert/strict';
import { analysed, student } from '../language/analysed.ts';
import { assertKept, assertSound, drawn, numberAt, part, places } from './drawn.ts';

const name = 'strike-from-front';
const record = `swing: 1
student: mira.student.yaml
club: hybrid
delivery:
  club_speed: 41 m/s
  attack: 4 deg down
  arc: { inclination: 60 deg, radius: 1.5 m }
  low_point: { ahead: 6 cm ahead ± 1 cm, depth: 5 mm below }
ground: { divot: { starts: 2 cm behind, length: 12 cm, depth: 6 mm } }
strike: { across: 10 mm toward toe ± 4 mm, height: 5 mm low ± 2 mm }
`;

/** Units of the picture for a centimetre, from the bar of 10 cm. */
function centimetre(svg: string): number {
  const bar = places(part(svg, 'data-part="scale"'));
  return (bar.at(-1)!.x - bar[0]!.x) / 10;
}

describe('the strike from the front', () => {
  const analysis = analysed(record, { files: { 'mira.student.yaml': student } });
  const svg = drawn(name, analysis);
  const ball = 377.6;

  it('draws a low point 6 cm ahead 6 cm of its scale from the ball', () => {
    const low = numberAt(part(svg, 'data-part="low-point"'), 'cx');
    assert.ok(Math.abs((low - ball) / centimetre(svg) - 6) < 0.05);
  });

  it('draws the divot where it starts and as long as it is', () => {
    const [from] = places(part(svg, 'data-part="divot"'));
    assert.ok(Math.abs((from!.x - ball) / centimetre(svg) - -2) < 0.05);
    const [, end] = /Q [\d.]+ [\d.]+ ([\d.]+)/.exec(part(svg, 'data-part="divot"'))!;
    assert.ok(Math.abs((Number(end) - ball) / centimetre(svg) - 10) < 0.05);
  });

  it('draws dashed beside it what the other entries say of the divot', () => {
    const expected = part(svg, 'data-part="expected-divot"');
    assert.ok(expected.includes('stroke-dasharray="6 4"'));
    const { value } = analysis.derivation!.expected.get('ground.divot.starts')!;
    assert.ok(Math.abs((places(expected)[0]!.x - ball) / centimetre(svg) - 100 * value) < 0.05);
  });

  it('names what the others say of the divot, on the side away from the target', () => {
    const start = places(part(svg, 'data-part="expected-divot"'))[0]!.x;
    const name = /<text x="([\d.]+)"[^>]*text-anchor="end"[^>]*>divot, others</.exec(svg);
    assert.ok(name && Number(name[1]) < start && Number(name[1]) > start - 10);
  });

  it('draws the spot on the face where it was struck, the toe on the left for a right-handed player', () => {
    const face = part(svg, 'data-part="face"');
    const bar = places(part(svg, 'data-part="face-scale"'));
    const millimetre = (bar[1]!.x - bar[0]!.x) / 20;
    const middle = (bar[1]!.x + bar[0]!.x) / 2;
    const spot = part(face, 'data-part="struck"');
    assert.ok(Math.abs((numberAt(spot, 'cx') - middle) / millimetre - -10) < 0.05);
    assert.ok(Math.abs(numberAt(face, 'rx') / millimetre - 4) < 0.05);
    assert.ok(Math.abs(numberAt(face, 'ry') / millimetre - 2) < 0.05);
  });

  it('draws the arc through its lowest point, rising as its radius and plane say', () => {
    const arc = places(part(svg, 'data-part="arc"'));
    const lowest = Math.max(...arc.map(({ y }) => y));
    const unit = centimetre(svg);
    const first = arc[0]!;
    const sine = ((first.x - ball) / unit / 100 - 0.06) / 1.5;
    const rise = 1.5 * (1 - Math.sqrt(1 - sine * sine)) * Math.sin(Math.PI / 3) * 100;
    assert.ok(Math.abs((lowest - first.y) / unit - rise) < 0.1);
  });

  it('has the target on the left for a left-handed player, as the camera sees it', () => {
    const left = student.replace('hand: right', 'hand: left');
    const mirrored = drawn(name, analysed(record, { files: { 'mira.student.yaml': left } }));
    const low = numberAt(part(mirrored, 'data-part="low-point"'), 'cx');
    assert.ok(Math.abs((low - ball) / centimetre(mirrored) - -6) < 0.05);
    assert.ok(mirrored.includes('← target'));
  });

  it('draws what can be drawn of little or nothing, and says what is not known', () => {
    const nothing = drawn(name, analysed('swing: 1\n'));
    assert.ok(nothing.includes('Not known: low point, arc, attack angle, divot, strike on the face'));
    const absurd = drawn(name, analysed('swing: 1\ndelivery: { low_point: { ahead: 1e300 cm ahead } }\n'));
    for (const one of [nothing, absurd]) assert.doesNotMatch(one, /NaN|Infinity|undefined/);
  });

  it('puts arrows that say so, and no marks, at the edges for what lies off the scale', () => {
    const absurd = drawn(
      name,
      analysed(
        'swing: 1\ndelivery: { attack: 4 deg down, arc: { inclination: 60 deg, radius: 1.5 m }, low_point: { ahead: 5 m ahead } }\nground: { divot: { starts: 3 m behind, length: 6 m } }\nstrike: { across: 30 cm toward toe, height: 1 m low }\n',
      ),
    );
    const row = (id: string): string => part(absurd, `transform="translate(0 ${id})"`);
    const arrows = [...absurd.matchAll(/<path [^>]*data-part="off-the-scale"[^>]*>/g)].map(
      ([arrow]) => arrow,
    );
    // The low point on the right, the divots on the left, the spot below the face.
    assert.equal(arrows.length, 4);
    for (const turn of ['rotate(180)', 'rotate(90)']) assert.ok(arrows.some((arrow) => arrow.includes(turn)));
    assert.equal(absurd.split('>off the scale<').length - 1, 3);
    assert.match(absurd, />struck spot off the scale</);
    assert.doesNotMatch(absurd, /data-part="struck"/);
    assert.match(row('36'), />500 cm ahead/);
    for (const at of ['36', '72']) assert.doesNotMatch(row(at), /<circle/);
  });

  it('is sound where the whole arc lies off the picture', () => {
    assertSound(
      drawn(
        name,
        analysed(
          'swing: 1\ndelivery: { arc: { inclination: 60 deg, radius: 1.5 m }, low_point: { ahead: 5 m ahead } }\n',
        ),
      ),
    );
  });

  it('looks as it was found good', () => assertKept(name, svg));
});
