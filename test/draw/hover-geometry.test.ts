// Small pictures for hovers are true to scale: angles to half a degree, lengths against the ball and against one another, measured in the SVG.
import assert from 'node:assert/strict';
import { hoverPictureOf } from '../../src/draw/hover-pictures.tsx';
import { svgOf } from '../../src/draw/picture.tsx';
import { themes } from '../../src/draw/theme.ts';
import { analysed, student } from '../language/analysed.ts';
import { angleOf, numberAt, part, places } from './drawn.ts';

const record = `swing: 1
student: mira.student.yaml
club: hybrid
delivery:
  path: 14 deg right
  face: 6 deg left
  attack: 4 deg down
  low_point: { ahead: 6 cm ahead, depth: 15 mm below }
  arc: { radius: 1.4 m, inclination: 58 deg }
ground: { divot: { starts: 2 cm behind, length: 12 cm, depth: 10 mm } }
flight: { launch_angle: 15 deg, descent: 40 deg, apex: 24 m, carry: 160 m, start: 3 deg left, finish: 8 m right }
`;
const analysis = analysed(record, { files: { 'mira.student.yaml': student } });

function drawn(id: string): string {
  const picture = hoverPictureOf(analysis, id, themes.light);
  assert.ok(picture, id);
  return svgOf(picture);
}

function near(found: number, expected: number, within: number): void {
  assert.ok(Math.abs(found - expected) <= within, `${found}, expected ${expected} ± ${within}`);
}

/** Units for a metre, from the ball: it is 42.67 mm wide (The R&A and USGA, Equipment Rules, part 4, 4.3). */
function scaleIn(svg: string): number {
  const [ball] = svg.match(/<circle[^>]*stroke-width="1\.5"[^>]*>/) ?? [];
  assert.ok(ball);
  return numberAt(ball, 'r') / (0.04267 / 2);
}

/** Where the ball is on a picture of the flight. */
function ballOf(svg: string): { readonly x: number; readonly y: number } {
  const [ball] = svg.match(/<circle[^>]*r="3\.5"[^>]*>/) ?? [];
  assert.ok(ball);
  return { x: numberAt(ball, 'cx'), y: numberAt(ball, 'cy') };
}

describe('the geometry of small pictures for hovers', () => {
  it('has path and face in their directions, where an angle is too large to be enlarged', () => {
    const svg = drawn('delivery.path');
    assert.ok(svg.includes('true angles'));
    // The target is on the right of the picture, 90° from up.
    near(angleOf(places(part(svg, 'data-id="delivery.path"'))) - 90, 14, 0.5);
    near(angleOf(places(part(svg, 'data-id="delivery.face"'), 1)) - 90, -6, 0.5);
    // The face itself is square to where it points.
    const bar = angleOf(places(part(svg, 'data-id="delivery.face"'), 0)) + 6;
    near((Math.asin(Math.sin((bar * Math.PI) / 180)) * 180) / Math.PI, 0, 0.5);
  });

  it('has the attack three times as steep, downward', () => {
    const svg = drawn('delivery.attack');
    assert.ok(svg.includes('angles × 3'));
    near((angleOf(places(part(svg, 'data-id="delivery.attack"'))) - 90) / 3, 4, 0.5 / 3);
  });

  it('has the low point 6 cm ahead of the ball and 15 mm below the ground, by the size of the ball', () => {
    const svg = drawn('delivery.low_point.ahead');
    const scale = scaleIn(svg);
    const low = part(svg, 'data-part="low-point"');
    const [ground] = places(part(svg, 'data-part="ground"'));
    const [ball] = svg.match(/<circle[^>]*stroke-width="1\.5"[^>]*>/)!;
    near((numberAt(low, 'cx') - numberAt(ball, 'cx')) / scale, 0.06, 0.0005);
    near((numberAt(low, 'cy') - ground!.y) / scale, 0.015, 0.0005);
  });

  it('has the divot from 2 cm behind the ball, 12 cm long and 10 mm deep', () => {
    const svg = drawn('ground.divot.starts');
    const scale = scaleIn(svg);
    const cut = part(svg, 'data-part="divot"');
    const [, from, deepest, to] = /d="M (\S+) \S+ Q \S+ (\S+) (\S+) \S+ Z"/.exec(cut)?.map(Number) ?? [];
    const [ground] = places(part(svg, 'data-part="ground"'));
    const [ball] = svg.match(/<circle[^>]*stroke-width="1\.5"[^>]*>/)!;
    near((from! - numberAt(ball, 'cx')) / scale, -0.02, 0.0005);
    near((to! - from!) / scale, 0.12, 0.0005);
    // A quadratic curve comes half as far as the place that pulls it.
    near((deepest! - ground!.y) / 2 / scale, 0.01, 0.0005);
  });

  it('has launch and descent in their directions, and the apex as high as the carry is far', () => {
    const svg = drawn('flight.carry');
    const slope = (name: string): number => {
      const [from, to] = places(part(svg, `data-part="${name}"`));
      return (Math.atan2(from!.y - to!.y, Math.abs(to!.x - from!.x)) * 180) / Math.PI;
    };
    near(slope('launch'), 15, 0.5);
    near(slope('descent'), 40, 0.5);
    const ball = ballOf(svg);
    const [landed] = places(part(svg, 'data-part="descent"'));
    const scale = (landed!.x - ball.x) / Math.sqrt(160 ** 2 - 8 ** 2);
    const [apex] = places(part(part(svg, 'data-id="flight.apex"'), 'data-part="apex"'));
    near((ball.y - apex!.y) / scale, 24, 0.3);
  });

  it('has the ball 8 m right of the line where it is 160 m away, and leaving 3° left of it', () => {
    const svg = drawn('flight.finish');
    const ball = ballOf(svg);
    const [one, other] = places(part(svg, 'data-part="landing"'));
    const landed = { x: (one!.x + other!.x) / 2, y: one!.y };
    const scale = Math.hypot(landed.x - ball.x, landed.y - ball.y) / 160;
    near((landed.y - ball.y) / scale, 8, 0.3);
    const [, x, y] = /d="M \S+ \S+ Q (\S+) (\S+) /.exec(part(svg, 'data-id="flight.start"'))!.map(Number);
    near((Math.atan2(y! - ball.y, x! - ball.x) * 180) / Math.PI, -3, 0.5);
  });
});
