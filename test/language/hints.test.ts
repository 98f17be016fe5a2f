// Inlay hints say what cannot be read on the line, and only that.
import assert from 'node:assert/strict';
import { computedFlightOf } from '../../src/analysis/flight-path.ts';
import { sayingOf } from '../../src/draw/known.ts';
import { builtIn } from '../../src/registry/registry.ts';
import { findHints, type HintSwitches } from '../../src/language/index.ts';
import { analysed, everywhere, student } from './analysed.ts';

const none: HintSwitches = {
  units: false,
  faceToPath: false,
  lowPoint: false,
  flight: false,
  shots: false,
  windows: false,
  faults: false,
};

function hintsIn(
  text: string,
  family: keyof HintSwitches,
  files: Readonly<Record<string, string>> = {},
): string[] {
  const lines = text.split('\n');
  return findHints(analysed(text, { files }), everywhere, { ...none, [family]: true }).map(
    ({ position: { line, character }, label }) => {
      const text = lines[line] ?? '';
      return `${text.slice(0, character)}⟦${label}⟧${text.slice(character)}`;
    },
  );
}

describe('hints', () => {
  it('give the unit of a bare number, before its direction word', () => {
    assert.deepEqual(hintsIn('swing: 1\ndelivery:\n  attack: 3 down\n  path: 5 deg right\n', 'units'), [
      '  attack: 3⟦deg⟧ down',
    ]);
  });

  it('give the unit in the long form and in lists', () => {
    const text = 'swing: 1\nflight:\n  carry: [171, 169 m]\n  start: { value: 2 right, by: eye }\n';
    assert.deepEqual(hintsIn(text, 'units'), [
      '  carry: [171⟦m⟧, 169 m]',
      '  start: { value: 2⟦deg⟧ right, by: eye }',
    ]);
  });

  it('write the unit out when they are accepted', () => {
    const text = 'swing: 1\nflight:\n  carry: 171\n';
    const [hint] = findHints(analysed(text), everywhere, { ...none, units: true });
    assert.deepEqual(
      hint?.textEdits?.map(({ newText }) => newText),
      [' m'],
    );
  });

  it('give face-to-path behind the face, with the uncertainty in the same unit', () => {
    // face − path = 1 − 5 = −4 deg; √(1² + 1²) = 1.4 deg.
    const text = 'swing: 1\ndelivery:\n  face: 1 deg right ± 1 deg # by radar\n  path: 5 deg right ± 1 deg\n';
    assert.deepEqual(hintsIn(text, 'faceToPath'), [
      '  face: 1 deg right ± 1 deg # by radar⟦face-to-path 4.0 deg left ± 1.4 deg⟧',
    ]);
  });

  it('call the face open or closed to the path where the hand is known', () => {
    const face = (side: string, hand: string): string | undefined =>
      hintsIn(
        `swing: 1\nstudent: m.student.yaml\ndelivery:\n  face: 6 deg ${side} ± 1 deg\n  path: 0 deg ± 1 deg\n`,
        'faceToPath',
        { 'm.student.yaml': `student: 1\nhand: ${hand}\n` },
      )[0]?.replace(/^.*⟦|⟧$/g, '');
    assert.equal(face('right', 'right'), 'face-to-path 6.0 deg right ± 1.4 deg (open)');
    assert.equal(face('right', 'left'), 'face-to-path 6.0 deg right ± 1.4 deg (closed)');
    assert.equal(face('left', 'left'), 'face-to-path 6.0 deg left ± 1.4 deg (open)');
    assert.match(face('left', '') ?? '', /deg$/);
  });

  it('give the direction that a number without word and sign is read in', () => {
    const address = (value: string): string[] =>
      hintsIn(`swing: 1\ncheckpoints:\n  address:\n    ball_position: ${value}\n`, 'units');
    assert.deepEqual(address('9 cm'), ['    ball_position: 9 cm⟦ahead⟧']);
    assert.deepEqual(address('9 cm ± 2 cm by tape'), ['    ball_position: 9 cm⟦ahead⟧ ± 2 cm by tape']);
    assert.deepEqual(address('9 ± 2 cm'), ['    ball_position: 9 ± 2 cm⟦ahead⟧']);
    assert.deepEqual(address('9'), ['    ball_position: 9⟦cm ahead⟧']);
    assert.deepEqual(address('-9'), ['    ball_position: -9⟦cm⟧']);
    assert.deepEqual(address('9 cm behind'), []);
    assert.deepEqual(address('0 cm'), []);
  });

  it('do not repeat a face-to-path that was entered', () => {
    const text =
      'swing: 1\ndelivery:\n  face: 1 deg right\n  path: 5 deg right\n  face_to_path: 4 deg left\n';
    assert.deepEqual(hintsIn(text, 'faceToPath'), []);
  });

  it('say nothing of a face-to-path that cannot be computed', () => {
    assert.deepEqual(hintsIn('swing: 1\ndelivery:\n  face: 1 deg right\n', 'faceToPath'), []);
  });

  it('give the low point that the arc leads to expect, behind the attack', () => {
    // R · sin 4° / sin 58° = 1.5 m · 0.069756 / 0.848048 = 12.3 cm; half a degree of attack alone is 1.5 cm.
    const text = `swing: 1
delivery:
  attack: 4 deg down ± 0.5 deg
  arc: { radius: 1.5 m ± 5 cm, inclination: 58 deg ± 2 deg }
`;
    const [hint] = hintsIn(text, 'lowPoint');
    assert.match(
      hint ?? '',
      /^ {2}attack: 4 deg down ± 0\.5 deg⟦low point expected 12\.3 cm ahead ± 1\.\d cm⟧$/,
    );
  });

  it('give carry and finish behind the flight, and what they came from in the tooltip', () => {
    const text = `swing: 1
student: mira.student.yaml
club: hybrid
delivery:
  club_speed: 41 m/s
  attack: 3 deg down
  path: 2 deg right
  face: 1 deg right
  delivered_loft: 20 deg
flight:
  start: 1 deg right
`;
    const files = { 'mira.student.yaml': student };
    const [hint] = hintsIn(text, 'flight', files);
    assert.match(hint ?? '', /^flight:⟦expected carry \d+ m ± \d+ m, finish .* ± \d+(\.\d+)? m⟧$/);
    const [full] = findHints(analysed(text, { files }), everywhere, { ...none, flight: true });
    assert.match(full?.tooltip.value ?? '', /From .*club speed/s);
    assert.match(full?.tooltip.value ?? '', /Assumes /);
  });

  it('give carry and finish by the entries besides those of the landing, as the picture draws them', () => {
    const text = `swing: 1
student: mira.student.yaml
club: hybrid
flight:
  ball_speed: 58 m/s
  launch_angle: 15 deg
  spin: 4200 rpm
  spin_tilt: 4 deg right
  start: 2 deg left ± 1 deg
  curve: 19 m left ± 2 m
  carry: 160 m ± 4 m
`;
    const files = { 'mira.student.yaml': student };
    const [hint] = hintsIn(text, 'flight', files);
    const analysis = analysed(text, { files });
    const { carry, finish } = computedFlightOf(analysis);
    const numbers = [carry!, finish!].map((value) => sayingOf(value, builtIn).number);
    assert.equal(hint, `flight:⟦the others say carry ${numbers[0]}, finish ${numbers[1]}⟧`);
    // With the curve that was entered the ball would finish some 25 m left.
    assert.ok(Math.abs(finish!.value) < 15);
    const [full] = findHints(analysis, everywhere, { ...none, flight: true });
    assert.match(full?.tooltip.value ?? '', /^Without the carry, curve and finish that were entered\./);
  });

  const delivered = `swing: 1
student: mira.student.yaml
club: hybrid
checkpoints: { impact: { shaft_lean: 3 deg forward ± 1 deg } }
conditions: { wind: 0 m/s ± 0.2 m/s }
strike: { across: 0 mm ± 1 mm }
delivery:
  club_speed: 41 m/s by radar
  attack: 3 deg down by radar
  face: 1 deg right by radar
flight:
  ball_speed: 57.5 m/s by radar
  launch_angle: 15 deg by radar
  spin_tilt: 6 deg right ± 1 deg
  start: 0.5 deg right by radar
  carry: 171 m by radar
  curve: 12 m right ± 2 m
goals:
  - { shape: draw, finish: 4 m left..3 m right }
`;

  it('give the face-to-path that the flight allows behind the face, and the one that a goal asks for', () => {
    const [allowed, wanted, ...others] = hintsIn(delivered, 'windows', { 'mira.student.yaml': student });
    // The ball curved right, so that the face pointed right of the path; a draw takes the other side.
    assert.match(allowed ?? '', /^ {2}face: .*radar⟦flight says \d.*–\d.* deg right⟧$/);
    assert.match(
      wanted ?? '',
      /^ {2}- \{ shape: draw.*\}⟦asks for face-to-path [\d.]+–[\d.]+ deg left; now [\d.]+ deg right⟧$/,
    );
    assert.deepEqual(others, []);
  });

  it('give windows on the other side for a left-handed player, and none for a shape without a hand', () => {
    const lefty = student.replace('hand: right', 'hand: left');
    const [, wanted] = hintsIn(delivered, 'windows', { 'mira.student.yaml': lefty });
    assert.match(wanted ?? '', /asks for face-to-path [\d.]+–[\d.]+ deg right; now/);
    const hands = student.replace(/hand: right\n/, '');
    assert.equal(hintsIn(delivered, 'windows', { 'mira.student.yaml': hands }).length, 1);
  });

  it('give no window where too little of the flight is known', () => {
    assert.deepEqual(hintsIn('swing: 1\ndelivery:\n  face: 1 deg right\n', 'windows'), []);
  });

  it('keep to the range that is asked for', () => {
    const analysis = analysed('swing: 1\nflight:\n  carry: 171\n  total: 180\n');
    const line = { start: { line: 2, character: 0 }, end: { line: 2, character: 100 } };
    assert.equal(findHints(analysis, line, { ...none, units: true }).length, 1);
  });
});
