// Tests of the check loft-against-lean.
import assert from 'node:assert/strict';
import { analyseFiles, assertMarked, assertNone, uriOf } from './files.ts';

describe('loft-against-lean', () => {
  it('marks a loft that the lean cannot leave', () => {
    assertMarked('loft-against-lean', {
      'lesson.swing.yaml': `swing: 1
student: mira.student.yaml
club: seven
checkpoints: { impact: { shaft_lean: 10 deg forward ± 0.5 deg } }
delivery:
  face: 0 deg by radar
  arc: { direction: 0 deg by camera }
  delivered_loft: 52 deg by camera
#                 ^^^^^^^^^^^^^^^^ warning[loft-against-lean]`,
      'mira.student.yaml': `student: 1
hand: right
bag:
  seven: { kind: iron, loft: 33 deg, lie: 62 deg }`,
    });
  });

  it('takes the loft of the club less the lean', () => {
    assertNone('loft-against-lean', {
      'lesson.swing.yaml': `swing: 1
student: mira.student.yaml
club: seven
checkpoints: { impact: { shaft_lean: 10 deg forward ± 0.5 deg } }
delivery:
  face: 0 deg by radar
  arc: { direction: 0 deg by camera }
  delivered_loft: 25 deg by camera`,
      'mira.student.yaml': `student: 1
hand: right
bag:
  seven: { kind: iron, loft: 33 deg, lie: 62 deg }`,
    });
  });

  it('points to the loft in the bag', () => {
    const { findings } = analyseFiles({
      'lesson.swing.yaml': `swing: 1
student: mira.student.yaml
club: seven
checkpoints: { impact: { shaft_lean: 10 deg forward ± 0.5 deg } }
delivery: { face: 0 deg by radar, arc: { direction: 0 deg by camera }, delivered_loft: 52 deg by camera }`,
      'mira.student.yaml':
        'student: 1\nhand: right\nbag:\n  seven: { kind: iron, loft: 33 deg, lie: 62 deg }',
    });
    const { related } = findings.find(({ code }) => code === 'loft-against-lean')!;
    const words = related.map(({ uri, message }) => [uri, message.replace(/ ±.*/, '')]);
    assert.ok(
      words.some(([, message]) => message === 'Shaft lean 10.0 deg forward'),
      words.join('\n'),
    );
    const bag = words.find(([uri]) => uri === uriOf('mira.student.yaml'));
    assert.match(bag?.[1] ?? '', /loft of the club 33\.0 deg/i);
  });
});
