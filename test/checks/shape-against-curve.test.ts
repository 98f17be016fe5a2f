// Tests of the check shape-against-curve.
import assert from 'node:assert/strict';
import { analyseFiles, assertMarked, assertNone } from './files.ts';

describe('shape-against-curve', () => {
  it('marks a draw of a left-handed player that curves left', () => {
    assertMarked('shape-against-curve', {
      'lesson.swing.yaml': `swing: 1
student: mira.student.yaml
flight:
  shape: draw
#        ^^^^ warning[shape-against-curve]
  curve: 14 yd left by radar`,
      'mira.student.yaml': `student: 1
hand: left`,
    });
  });

  it('takes one that curves right', () => {
    assertNone('shape-against-curve', {
      'lesson.swing.yaml': `swing: 1
student: mira.student.yaml
flight:
  shape: draw
  curve: 14 yd right by radar`,
      'mira.student.yaml': `student: 1
hand: left`,
    });
  });

  it('marks a push of a right-handed player that starts left', () => {
    assertMarked('shape-against-curve', {
      'lesson.swing.yaml': `swing: 1
student: mira.student.yaml
flight:
  shape: push
#        ^^^^ warning[shape-against-curve]
  start: 8 deg left by radar`,
      'mira.student.yaml': 'student: 1\nhand: right',
    });
  });

  it('says nothing of a curve within its uncertainty, or without a known hand', () => {
    assertNone('shape-against-curve', 'swing: 1\nflight: { shape: draw, curve: 40 m right ± 1 m }');
    assertNone('shape-against-curve', {
      'lesson.swing.yaml':
        'swing: 1\nstudent: mira.student.yaml\nflight: { shape: draw, curve: 4 m right ± 2 m }',
      'mira.student.yaml': 'student: 1\nhand: right',
    });
  });

  it('marks a goal whose start and finish leave the other curve', () => {
    const goal = (start: string, finish: string, hand: string) => ({
      'mira.student.yaml': `student: 1\nhand: ${hand}\ngoals:\n  - { shape: draw, start: ${start}, finish: ${finish} }`,
    });
    const codes = (files: Record<string, string>) => analyseFiles(files).findings.map(({ code }) => code);
    assert.deepEqual(codes(goal('2 deg right', '5..10 m left', 'left')), ['shape-against-curve']);
    assertNone('shape-against-curve', goal('2 deg right', '5..10 m left', 'right'));
    // For a left-handed player a draw starts left and comes back to the right.
    assertNone('shape-against-curve', goal('2 deg left', '0..5 yd left', 'left'));
  });

  it('takes the carry of the goal into account', () => {
    const goal = (carry: string) => ({
      'mira.student.yaml': `student: 1\nhand: right\ngoals:\n  - { shape: draw, start: 2 deg right, finish: 8 m right, carry: ${carry} }`,
    });
    // 2° over 100 m are 3.5 m, over 250 m 8.7 m.
    assert.equal(analyseFiles(goal('100 m')).findings[0]?.code, 'shape-against-curve');
    assertNone('shape-against-curve', goal('250 m'));
  });
});
