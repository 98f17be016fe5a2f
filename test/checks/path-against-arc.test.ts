// Tests of the check path-against-arc.
import assert from 'node:assert/strict';
import { analyseFiles, assertMarked, assertNone } from './files.ts';

describe('path-against-arc', () => {
  it('marks a path far from the arc', () => {
    assertMarked('path-against-arc', {
      'lesson.swing.yaml': `swing: 1
student: mira.student.yaml
delivery:
  attack: 5 deg down by radar
  arc: { direction: 0 deg, inclination: 60 deg }
  path: 20 deg left by radar
#       ^^^^^^^^^^^^^^^^^^^^ warning[path-against-arc]`,
      'mira.student.yaml': `student: 1
hand: right`,
    });
  });

  it('takes a path that a downward strike sends outward', () => {
    assertNone('path-against-arc', {
      'lesson.swing.yaml': `swing: 1
student: mira.student.yaml
delivery:
  attack: 5 deg down by radar
  arc: { direction: 0 deg, inclination: 60 deg }
  path: 3 deg right by radar`,
      'mira.student.yaml': `student: 1
hand: right`,
    });
  });

  it('turns outward round for a left-handed player', () => {
    const lesson = (path: string) => `swing: 1
student: mira.student.yaml
delivery:
  attack: 9 deg down ± 0.3 deg
  arc: { direction: 0 deg ± 0.3 deg, inclination: 50 deg ± 1 deg }
  path: ${path} ± 0.3 deg`;
    const left = { 'mira.student.yaml': 'student: 1\nhand: left' };
    assertNone('path-against-arc', { 'lesson.swing.yaml': lesson('7.6 deg left'), ...left });
    const codes = analyseFiles({ 'lesson.swing.yaml': lesson('7.6 deg right'), ...left }).findings.map(
      ({ code }) => code,
    );
    assert.ok(codes.includes('path-against-arc'));
  });

  it('says nothing where no hand is known', () => {
    assertNone(
      'path-against-arc',
      'swing: 1\ndelivery:\n  attack: 5 deg down\n  arc: { direction: 0 deg, inclination: 60 deg }\n  path: 40 deg left ± 1 deg',
    );
  });
});
