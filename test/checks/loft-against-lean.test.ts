// Tests of the check loft-against-lean.
import assert from 'node:assert/strict';
import { analyseFiles, assertMarked, assertNone, uriOf } from './files.ts';

describe('loft-against-lean', () => {
  it('marks a loft that the lean cannot leave', () => {
    assertMarked('loft-against-lean', {
      'lesson.swing.yaml': `swing: 1
student: mira.student.yaml
club: seven
checkpoints: { impact: { shaft_lean: 10 deg forward by video } }
delivery:
  delivered_loft: 52 deg by camera
#                 ^^^^^^^^^^^^^^^^ warning[loft-against-lean]`,
      'mira.student.yaml': `student: 1
hand: right
bag:
  seven: { kind: iron, loft: 33 deg }`,
    });
  });

  it('takes the loft of the club less the lean', () => {
    assertNone('loft-against-lean', {
      'lesson.swing.yaml': `swing: 1
student: mira.student.yaml
club: seven
checkpoints: { impact: { shaft_lean: 10 deg forward by video } }
delivery:
  delivered_loft: 25 deg by camera`,
      'mira.student.yaml': `student: 1
hand: right
bag:
  seven: { kind: iron, loft: 33 deg }`,
    });
  });

  it('points to the loft in the bag', () => {
    const { findings } = analyseFiles({
      'lesson.swing.yaml': `swing: 1
student: mira.student.yaml
club: seven
checkpoints: { impact: { shaft_lean: 10 deg forward by video } }
delivery: { delivered_loft: 52 deg by camera }`,
      'mira.student.yaml': 'student: 1\nhand: right\nbag:\n  seven: { kind: iron, loft: 33 deg }',
    });
    const { related } = findings.find(({ code }) => code === 'loft-against-lean')!;
    assert.deepEqual(
      related.map(({ uri, message }) => [uri, message.replace(/ ±.*/, '')]),
      [
        [uriOf('lesson.swing.yaml'), 'Shaft lean 10.0 deg forward'],
        [uriOf('mira.student.yaml'), 'Loft of the club 33.0 deg'],
      ],
    );
  });
});
