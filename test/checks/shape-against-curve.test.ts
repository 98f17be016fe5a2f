// Tests of the check shape-against-curve.
import assert from 'node:assert/strict';
import { analyseFiles, assertMarked, assertNone, messageOf } from './files.ts';

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

  const right = { 'mira.student.yaml': 'student: 1\nhand: right\nbag:\n  i: { kind: iron, loft: 33 deg }' };
  const record = (lines: string) => ({
    'lesson.swing.yaml': `swing: 1\nstudent: mira.student.yaml\nclub: i\n${lines}`,
    ...right,
  });

  it('marks a straight one that curves by more than its uncertainty and 5 % of the carry', () => {
    const flight = (curve: string) =>
      record(`flight: { shape: straight, carry: 140 m, curve: ${curve} ± 2 m }`);
    assert.match(
      messageOf(analyseFiles(flight('12 m left')), 'shape-against-curve'),
      /^Shape `straight` does not curve, but by the curve it went 12\.0 m left ± 2\.0 m; expected a curve of at most 5 % of the carry or another shape\.$/,
    );
    assertNone('shape-against-curve', flight('6.9 m left'));
    assertNone(
      'shape-against-curve',
      record('flight: { shape: straight, carry: 140 m, curve: 12 m left ± 5 m }'),
    );
    // What is straight is so for both hands, known or not.
    assert.ok(
      messageOf(
        analyseFiles('swing: 1\nflight: { shape: straight, curve: 30 m left ± 2 m }'),
        'shape-against-curve',
      ),
    );
    // Of a carry that is not known, only what no carry makes straight.
    assertNone('shape-against-curve', record('flight: { shape: straight, curve: 12 m left ± 2 m }'));
    assert.ok(
      messageOf(
        analyseFiles(record('flight: { shape: push, start: 2 deg right, curve: 40 m left ± 2 m }')),
        'shape-against-curve',
      ),
    );
  });

  it('marks a straight start that is not', () => {
    const flight = (start: string) => record(`flight: { shape: straight draw, start: ${start} ± 0.5 deg }`);
    assert.match(
      messageOf(analyseFiles(flight('8 deg left')), 'shape-against-curve'),
      /starts straight, but by the start it went 8\.0 deg left/,
    );
    assertNone('shape-against-curve', flight('2.9 deg left'));
  });

  it('holds the word against path and face where no curve is entered', () => {
    const club = (face: string) =>
      record(
        `delivery: { club_speed: 34 m/s, attack: 4 deg down, path: 4 deg left by radar, face: ${face} by radar }\nflight: { shape: draw }`,
      );
    const analysis = analyseFiles(club('6 deg right'));
    assert.match(
      messageOf(analysis, 'shape-against-curve'),
      /^Shape `draw` curves left for a right-handed player, but by the club's path and face it curves right \(.*\); expected a curve to the left or another shape\.$/,
    );
    // Within what is called straight, face and path do not gainsay the coach's eye.
    assertNone('shape-against-curve', club('3 deg left'));
  });

  it('lets an entered curve overrule path and face', () => {
    assertNone(
      'shape-against-curve',
      record(
        'delivery: { path: 4 deg left by radar, face: 6 deg right by radar }\nflight: { shape: draw, curve: 5 m left }',
      ),
    );
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

  it('marks a goal that is straight and curves or starts to a side, whichever hand plays', () => {
    const goal = (targets: string): Record<string, string> => ({
      'mira.student.yaml': `student: 1\ngoals:\n  - { ${targets} }`,
    });
    assert.match(
      messageOf(
        analyseFiles(goal('shape: straight, curve: 12 m right, carry: 150 m')),
        'shape-against-curve',
      ),
      /^Shape `straight` does not curve, but by the curve the goal sends it right; expected a curve of at most 5 % of the carry or another shape\.$/,
    );
    assertNone('shape-against-curve', goal('shape: straight, curve: 7 m right, carry: 150 m'));
    assert.match(
      messageOf(analyseFiles(goal('shape: straight, start: 4..6 deg left')), 'shape-against-curve'),
      /starts straight, but by the start the goal sends it left; expected a start within 3 deg of the target line/,
    );
    // Without a curve, what start and finish leave of it: 8.7 m less 8.6 m, and less −5.2 m.
    const crossing = (start: string): Record<string, string> =>
      goal(`shape: push, start: ${start}, finish: 9 m right, carry: 100 m`);
    assertNone('shape-against-curve', crossing('5 deg right'));
    assert.ok(messageOf(analyseFiles(crossing('1 deg right')), 'shape-against-curve'));
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
