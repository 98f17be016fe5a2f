// Tests of the check divot-behind-low-point.
import assert from 'node:assert/strict';
import { analyseFiles, assertMarked, assertNone, messageOf } from './files.ts';

describe('divot-behind-low-point', () => {
  it('marks a divot that starts too far back', () => {
    assertMarked(
      'divot-behind-low-point',
      `swing: 1
delivery:
  low_point: { ahead: 12 cm ahead ± 1 cm }
  arc: { radius: 1.6 m, inclination: 60 deg }
ground:
  divot:
    depth: 5 mm by ruler
    starts: 20 cm behind ± 3 cm
#           ^^^^^^^^^^^^^^^^^^^ warning[divot-behind-low-point]`,
    );
  });

  it('takes one that starts at the ball, and one that starts late', () => {
    assertNone(
      'divot-behind-low-point',
      `swing: 1
delivery:
  low_point: { ahead: 12 cm ahead by motion capture }
  arc: { radius: 1.6 m, inclination: 60 deg }
ground:
  divot:
    depth: 5 mm by ruler
    starts: 2 cm ahead by tape`,
    );
  });

  it('takes the length of the divot where the arc is not known', () => {
    const lesson = (starts: string) => `swing: 1
delivery: { low_point: { ahead: 12 cm ahead ± 1 cm } }
ground: { divot: { starts: ${starts}, length: 12 cm ± 1 cm } }`;
    assertNone('divot-behind-low-point', lesson('6 cm ahead ± 1 cm'));
    assertNone('divot-behind-low-point', lesson('11 cm ahead ± 1 cm'));
    const message = messageOf(analyseFiles(lesson('8 cm behind ± 1 cm')), 'divot-behind-low-point');
    // A real divot starts 1 cm or so farther ahead than the cut of a circle and is as much shorter.
    assert.equal(
      message,
      'Start of the divot 8.0 cm behind does not fit: length of the divot and low point together say 4.9 cm ahead ± 2.6 cm, or low point is off: the two cannot both be true.',
    );
  });

  it('takes the attack angle where no low point is entered', () => {
    const lesson = (starts: string) => `swing: 1
delivery: { attack: 5 deg down ± 0.5 deg, arc: { radius: 1.6 m ± 5 cm, inclination: 60 deg ± 1 deg } }
ground: { divot: { starts: ${starts}, depth: 5 mm ± 1 mm } }`;
    // 16.1 cm − 1.6 m · sin(acos(1 − 0.005/(1.6 · sin 60°))) = 2.5 cm
    assertNone('divot-behind-low-point', lesson('2.5 cm ahead ± 1 cm'));
    assert.match(
      messageOf(analyseFiles(lesson('20 cm behind ± 1 cm')), 'divot-behind-low-point'),
      /attack angle and depth of the divot together say/,
    );
  });

  it('says nothing without a low point and an attack', () => {
    assertNone(
      'divot-behind-low-point',
      'swing: 1\nground: { divot: { starts: 40 cm behind, length: 11 cm } }',
    );
  });
});
