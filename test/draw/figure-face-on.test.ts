// The figure face-on is true to scale, at every checkpoint and for either hand, and says what it cannot show.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { checkpoints } from '../../src/registry/quantity.ts';
import { analysed, student } from '../language/analysed.ts';
import { angleOf, assertKept, assertSound, drawn, numberAt, part, places } from './drawn.ts';

const name = 'figure-face-on';
const record = `swing: 1
student: mira.student.yaml
club: hybrid
template: iron.template.yaml
checkpoints:
  address:
    stance_width: 44 cm by tape
    lead_foot_flare: 17 deg out
    trail_foot_flare: 6 deg out
    ball_position: 6 cm behind by tape
    head: 13 cm behind by video
    sternum: 6 cm behind by video
    pelvis: 5 cm behind by video
    shaft_lean: 3 deg forward by video
    spine_tilt: 7 deg away by video
    lead_pressure: 52 %
  top: { shoulder_turn: 88 deg closed, pelvis_turn: 42 deg closed, shaft_lean: 250 deg, lead_pressure: 30 % }
  impact:
    lead_shoulder: 9 cm ahead by video
    hands: 8 cm ahead by video
    shaft_lean: 7 deg forward by video
    lead_pressure: 80 %
`;
const template = `template: 1
checkpoints: { impact: { hands: { window: 5..10 cm ahead }, shaft_lean: { window: 4..10 deg forward } } }
`;
const files = { 'mira.student.yaml': student, 'iron.template.yaml': template };

/** Units of the picture for a centimetre, from the bar of 20 cm. */
function centimetre(svg: string): number {
  const bar = places(part(svg, 'data-part="scale"'));
  return (bar.at(-1)!.x - bar[0]!.x) / 20;
}

function marked(svg: string, id: string): string {
  const marks = part(svg, 'data-part="marks"');
  return part(marks, `data-id="${id}"`);
}

describe('the figure face-on', () => {
  const analysis = analysed(record, { files });
  const [address, top, impact] = (['address', 'top', 'impact'] as const).map((at) =>
    drawn(name, analysis, at),
  );
  const ball = (svg: string): number => numberAt(part(svg, 'data-part="ball"'), 'cx');

  it('draws offsets as far from the ball as they are, on its scale', () => {
    const at = (svg: string, id: string): number =>
      (numberAt(marked(svg, id), 'cx') - ball(svg)) / centimetre(svg);
    for (const [svg, id, offset] of [
      [address!, 'checkpoints.address.head', -13],
      [address!, 'checkpoints.address.sternum', -6],
      [address!, 'checkpoints.address.pelvis', -5],
      [impact!, 'checkpoints.impact.lead_shoulder', 9],
      [impact!, 'checkpoints.impact.hands', 8],
    ] as const) {
      assert.ok(Math.abs(at(svg, id) - offset) < 0.05, `${id}: ${at(svg, id)}`);
    }
  });

  it('draws the shaft and the trunk at their angles', () => {
    const shaft = (svg: string): number => {
      const [end, head] = places(part(svg, 'data-part="shaft"'));
      return angleOf([head!, end!]);
    };
    assert.ok(Math.abs(shaft(address!) - 3) < 0.5);
    assert.ok(Math.abs(shaft(impact!) - 7) < 0.5);
    assert.ok(Math.abs(shaft(top!) - (250 - 360)) < 0.5);
    assert.ok(Math.abs(angleOf(places(part(address!, 'data-part="trunk-line"'))) - -7) < 0.5);
  });

  it('stands the feet as wide, as flared and as far from the ball as they are', () => {
    const unit = centimetre(address!);
    const [from, to] = places(part(address!, 'data-part="stance-width"'));
    assert.ok(Math.abs((to!.x - from!.x) / unit - 44) < 0.05);
    const flare = (side: string): number =>
      angleOf(places(part(part(address!, `data-part="${side}-sole"`), 'data-part="foot-line"')).toReversed());
    assert.ok(Math.abs(flare('lead') - -17) < 0.5, `${flare('lead')}`);
    assert.ok(Math.abs(flare('trail') - 6) < 0.5, `${flare('trail')}`);
    const heel = places(part(address!, 'data-part="heel-line"'))[0]!.x;
    assert.ok(Math.abs((heel - ball(address!)) / unit - 6) < 0.05);
  });

  it('turns shoulders and hips, seen from above', () => {
    const plan = part(top!, 'data-part="feet-from-above"');
    const turn = (key: string): number =>
      angleOf(places(part(plan, `data-id="checkpoints.top.${key}"`))) - 90;
    assert.ok(Math.abs(turn('shoulder_turn') - 88) < 0.5);
    assert.ok(Math.abs(turn('pelvis_turn') - 42) < 0.5);
  });

  it('fills the feet by their share of the pressure', () => {
    const shares = [...impact!.matchAll(/data-share="([\d.]+)"/g)].map(([, share]) => Number(share));
    assert.deepEqual(shares, [0.8, 0.2]);
  });

  it('hatches what is taught, to scale', () => {
    const edges = places(part(impact!, 'data-window="hands"')).map(
      ({ x }) => (x - ball(impact!)) / centimetre(impact!),
    );
    assert.ok(Math.abs(Math.min(...edges) - 5) < 0.05 && Math.abs(Math.max(...edges) - 10) < 0.05);
    assert.ok(impact!.includes('inside 4..10 deg forward'));
  });

  it('never calls inside what is outside, however little', () => {
    const lean = (degrees: number): string =>
      drawn(
        name,
        analysed(record.replace('shaft_lean: 7 deg', `shaft_lean: ${degrees} deg`), { files }),
        'impact',
      );
    assert.ok(lean(3).includes('just outside 4..10 deg forward'));
    assert.ok(lean(20).includes('>outside 4..10 deg forward'));
  });

  it('tells recorded parts from those that are drawn as usual', () => {
    assert.match(address!, /data-part="head" data-anchor="entered" data-id="checkpoints.address.head"/);
    assert.match(address!, /data-part="trailArm" data-anchor="guessed"/);
  });

  it('has the target on the left for a left-handed player, as the camera sees it', () => {
    const left = { ...files, 'mira.student.yaml': student.replace('hand: right', 'hand: left') };
    const svg = drawn(name, analysed(record, { files: left }), 'impact');
    const hands = numberAt(marked(svg, 'checkpoints.impact.hands'), 'cx');
    assert.ok(Math.abs((hands - ball(svg)) / centimetre(svg) - -8) < 0.05);
    assert.ok(svg.includes('← target'));
  });

  it('draws no label over another', () => {
    for (const svg of [address!, top!, impact!]) {
      const labels = [...svg.matchAll(/data-label="[^"]*"[^]*?<\/g>/g)].map(([text]) =>
        [...text.matchAll(/<text x="[\d.]+" y="([\d.]+)"/g)].map(([, y]) => Number(y)),
      );
      assert.ok(labels.length > 2);
      const lines = labels.flat();
      for (const [i, y] of lines.entries()) if (i > 0) assert.ok(y - lines[i - 1]! >= 12);
    }
  });

  it('draws what can be drawn of one entry, of none and of absurd ones, at each checkpoint', () => {
    const one = analysed('swing: 1\ncheckpoints: { top: { shoulder_turn: 80 deg closed } }\n');
    const none = analysed('swing: 1\n');
    const absurd = analysed(
      `swing: 1\nstudent: mira.student.yaml\ncheckpoints:\n  address: { stance_width: 1e300 m, ball_position: -1e300 cm }\n  impact: { pelvis: 140 cm ahead, sternum: 1e300 cm ahead, shaft_lean: 700 deg, hands: 90 cm behind, lead_pressure: 900 % }\n`,
      { files },
    );
    for (const checkpoint of checkpoints) {
      for (const record of [one, none, absurd]) {
        assertSound(drawn(name, record, checkpoint));
      }
    }
    const said = drawn(name, none, 'impact');
    assert.ok(said.includes('Not known: head, breastbone, pelvis, lead shoulder, hands'));
    assert.ok(said.includes('a right-handed player, a stature of 1.72 m, a middle iron'));
    assert.match(
      drawn(name, absurd, 'impact'),
      /Pelvis drawn as near as a body comes, \d+ cm (ahead|behind), not 140 cm ahead/,
    );
  });

  it('puts an arrow at the edge for a mark that lies off the field, and says where limits were drawn', () => {
    const far = analysed(
      'swing: 1\ncheckpoints: { address: { sternum: 300 cm ahead, ball_position: 200 cm behind, stance_width: 44 cm } }\n',
    );
    const picture = drawn(name, far, 'address');
    const mark = part(part(picture, 'data-part="marks"'), 'data-id="checkpoints.address.sternum"');
    assert.match(mark, /data-part="off-the-scale"/);
    assert.match(mark, />off the scale</);
    assert.doesNotMatch(mark, /<circle/);
    assert.match(picture, />Ball position drawn at its limit, 120 cm behind, not 200 cm behind\.</);
  });

  it('is as high at every checkpoint as the highest figure of the record needs, so that nothing jumps', () => {
    const ground = (svg: string): number => places(part(svg, 'data-part="ground"'))[0]!.y;
    const [low, high] = ['address', 'impact'].map((at) =>
      drawn(name, analysed(record.replace(/\n {2}top: .*/, ''), { files }), at as 'address'),
    );
    assert.equal(ground(low!), ground(high!));
    assert.equal(ground(address!), ground(top!));
    assert.ok(ground(address!) > ground(low!) + 40);
    // Nothing but the title stands above the highest head or club.
    const [, y] = /data-part="club-head"/.test(top!)
      ? places(part(top!, 'data-part="shaft"')).map((one) => one.y)
      : [];
    assert.ok(y! < 120);
  });

  it('labels the direction of the stance, which turns the feet', () => {
    const turned = drawn(
      name,
      analysed(record.replace('    head: 13', '    stance_direction: 12 deg left\n    head: 13'), { files }),
      'address',
    );
    assert.match(
      turned,
      /data-id="checkpoints.address.stance_direction" data-label="Direction of the stance"/,
    );
    assert.doesNotMatch(address!, /stance_direction/);
  });

  it('dots the ball and the turn of the feet where the stance width alone is known, and says so', () => {
    const wide = drawn(
      name,
      analysed('swing: 1\ncheckpoints: { address: { stance_width: 44 cm } }\n'),
      'address',
    );
    const isDotted = (svg: string, of: string): boolean =>
      part(svg, `data-part="${of}"`).includes('stroke-dasharray="1 3.5"');
    for (const of of ['ball-from-above', 'lead-sole', 'trail-sole']) {
      assert.ok(isDotted(wide, of), of);
      assert.ok(!isDotted(address!, of), of);
    }
    assert.match(wide, /Not known: [^.<]*ball position, [^.<]*flare[^.<]*flare/);
    assert.doesNotMatch(address!, /Not known: [^.<]*(ball position|flare)/);
  });

  it('says in words what it shows', () => {
    const [, words] = /<desc[^>]*>([^]*?)<\/desc>/.exec(impact!)!;
    assert.ok(words!.includes('Hands: 8 cm ahead ± 3 cm.'));
    assert.ok(words!.includes('Not known: head, breastbone'));
  });

  it('looks as it was found good', () => {
    assertKept('figure-face-on-address', address!);
    assertKept('figure-face-on-top', top!);
    assertKept('figure-face-on-impact', impact!);
  });

  it('looks as it was found good where nothing is known, at every checkpoint', () => {
    const nothing = analysed('swing: 1\nstudent: mira.student.yaml\n', { files });
    for (const checkpoint of checkpoints) {
      assertKept(`figure-face-on-usual-${checkpoint}`, drawn(name, nothing, checkpoint));
    }
  });

  it('draws the samples without a word of what it could not do where their numbers agree', () => {
    const text = readFileSync('samples/tove/2026-04-18-seven-iron.swing.yaml', 'utf8');
    const tove = readFileSync('samples/tove/tove.student.yaml', 'utf8');
    const sample = analysed(text, { files: { 'tove.student.yaml': tove } });
    for (const checkpoint of checkpoints) assert.ok(!drawn(name, sample, checkpoint).includes('drawn at'));
  });
});
