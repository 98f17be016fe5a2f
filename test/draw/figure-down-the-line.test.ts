// The figure down the line is true to scale, for either hand, and says what it cannot show.
import assert from 'node:assert/strict';
import { checkpoints } from '../../src/registry/quantity.ts';
import { analysed, student } from '../language/analysed.ts';
import { angleOf, assertKept, assertSound, drawn, numberAt, part, places } from './drawn.ts';

const name = 'figure-down-the-line';
const record = `swing: 1
student: mira.student.yaml
club: hybrid
template: hybrid.template.yaml
checkpoints:
  address:
    forward_bend: 35 deg forward by video
    hand_depth: 13 cm outside by video
    pelvis_depth: 22 cm inside by video
    shaft_inclination: 55 deg by video
  top: { hand_depth: 24 cm inside, head_height: 2 cm down, shaft_inclination: 10 deg }
`;
const template =
  'template: 1\ncheckpoints: { address: { forward_bend: { window: 30..40 deg forward }, hand_depth: { window: 8..16 cm outside } } }\n';
const files = { 'mira.student.yaml': student, 'hybrid.template.yaml': template };

function centimetre(svg: string): number {
  const bar = places(part(svg, 'data-part="scale"'));
  return (bar.at(-1)!.x - bar[0]!.x) / 20;
}

function markOf(svg: string, id: string): string {
  return part(part(svg, 'data-part="marks"'), `data-id="${id}"`);
}

describe('the figure down the line', () => {
  const analysis = analysed(record, { files });
  const [address, top] = (['address', 'top'] as const).map((at) => drawn(name, analysis, at));
  const left = { ...files, 'mira.student.yaml': student.replace('hand: right', 'hand: left') };
  const mirrored = drawn(name, analysed(record, { files: left }), 'address');
  const toes = (svg: string): number => places(part(svg, 'data-part="toe-line"'))[0]!.x;

  it('draws depths as far from the line of the toes as they are, the ball outside of it', () => {
    for (const [svg, side] of [
      [address!, 1],
      [mirrored, -1],
    ] as const) {
      const off = (key: string): number =>
        (side * (numberAt(markOf(svg, `checkpoints.address.${key}`), 'cx') - toes(svg))) / centimetre(svg);
      assert.ok(Math.abs(off('hand_depth') - 13) < 0.05);
      assert.ok(Math.abs(off('pelvis_depth') - -22) < 0.05);
      assert.ok(side * (numberAt(part(svg, 'data-part="ball"'), 'cx') - toes(svg)) > 0);
    }
  });

  it('draws bend and shaft at their angles', () => {
    assert.ok(Math.abs(angleOf(places(part(address!, 'data-part="trunk-line"'))) - 35) < 0.5);
    assert.ok(Math.abs(angleOf(places(part(mirrored, 'data-part="trunk-line"'))) - -35) < 0.5);
    const [end, head] = places(part(address!, 'data-part="shaft"'));
    assert.ok(Math.abs(angleOf([head!, end!]) - (55 - 90)) < 0.5);
    const [hands, club] = places(part(top!, 'data-part="shaft"'));
    assert.ok(
      Math.abs((Math.atan2(hands!.y - club!.y, Math.abs(hands!.x - club!.x)) * 180) / Math.PI - 10) < 0.5,
    );
  });

  it('draws the head as much lower as it is than at address', () => {
    const overBall = (svg: string): number =>
      numberAt(markOf(svg, 'checkpoints.top.head_height'), 'cy') -
      numberAt(part(svg, 'data-part="ball"'), 'cy');
    const low = overBall(top!);
    const lower = overBall(drawn(name, analysed(record.replace('2 cm down', '5 cm down'), { files }), 'top'));
    assert.ok(Math.abs((lower - low) / centimetre(top!) - 3) < 0.05);
  });

  it('hatches what is taught', () => {
    const unit = centimetre(address!);
    const edges = places(part(address!, 'data-window="hand_depth"')).map(
      ({ x }) => (x - toes(address!)) / unit,
    );
    assert.ok(Math.abs(Math.min(...edges) - 8) < 0.05 && Math.abs(Math.max(...edges) - 16) < 0.05);
    assert.ok(address!.includes('data-window="forward_bend"'));
  });

  it('draws what can be drawn of nothing and of absurd entries, at each checkpoint', () => {
    const absurd = analysed(
      'swing: 1\ncheckpoints: { top: { hand_depth: 1e300 cm, head_height: 79 cm up, forward_bend: 119 deg, pelvis_depth: 90 cm outside } }\n',
    );
    for (const checkpoint of checkpoints) {
      for (const one of [absurd, analysed('swing: 1\n')]) {
        assertSound(drawn(name, one, checkpoint));
      }
    }
    const said = drawn(name, analysed('swing: 1\n'), 'impact');
    assert.ok(said.includes('Not known: forward bend, depth of the hands'));
  });

  it('looks as it was found good', () => {
    assertKept('figure-down-the-line-address', address!);
    assertKept('figure-down-the-line-top', top!);
    const nothing = analysed('swing: 1\nstudent: mira.student.yaml\n', { files });
    for (const checkpoint of checkpoints) {
      assertKept(`figure-down-the-line-usual-${checkpoint}`, drawn(name, nothing, checkpoint));
    }
  });
});
