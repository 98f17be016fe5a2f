// Tests of the check changes-do-not-fit.
import assert from 'node:assert/strict';
import { assertMarked, assertNone, messageOf } from './files.ts';

const plan = (face: string, path: string, faceToPath: string): string => `swing: 1
misses: [hook]
plan:
  - { change: delivery.face, to: ${face}, because: hook }
  - { change: delivery.path, to: ${path}, because: hook }
  - { change: delivery.face_to_path, to: ${faceToPath}, because: hook }`;

describe('changes-do-not-fit', () => {
  it('marks the last of face, path and face-to-path, with links to the others', () => {
    const analysis = assertMarked(
      'changes-do-not-fit',
      `${plan('1 deg right', '3 deg right', '5 deg left')}
#                                        ^^^^^^^^^^ warning[changes-do-not-fit]`,
    );
    assert.match(messageOf(analysis, 'changes-do-not-fit'), /since face = path \+ face-to-path/);
    const { related } = analysis.findings.find(({ code }) => code === 'changes-do-not-fit')!;
    assert.deepEqual(
      related.map(({ message }) => message),
      ['Another change of this plan', 'Another change of this plan'],
    );
  });

  it('takes what fits, also by decimals and for a left-hander', () => {
    assertNone('changes-do-not-fit', plan('1 deg right', '3 deg right', '2 deg left'));
    assertNone('changes-do-not-fit', plan('1.3 deg right', '4.7 deg right', '3.4 deg left'));
    assertNone('changes-do-not-fit', {
      'lesson.swing.yaml': plan('1 deg right', '3 deg right', '2 deg left').replace(
        '\n',
        '\nstudent: mira.student.yaml\n',
      ),
      'mira.student.yaml': 'student: 1\nhand: left',
    });
  });

  it('takes each number for all that is rounded to it, a written zero too', () => {
    // 0.4° right, 2.6° right and 2.2° left are such a swing: half a degree of each is not written.
    assertNone('changes-do-not-fit', plan('0 deg', '3 deg right', '2 deg left'));
    assertNone('changes-do-not-fit', plan('2 deg right', '3 deg right', '0.5 deg left'));
    assertMarked(
      'changes-do-not-fit',
      `${plan('0.0 deg', '3.0 deg right', '2.8 deg left')}
#                                        ^^^^^^^^^^^^ warning[changes-do-not-fit]`,
    );
    assertNone('changes-do-not-fit', plan('0.0 deg', '3.0 deg right', '2.9 deg left'));
    // A step of the ratio is worth as much of the ball speed as the club is fast: 0.1 of it 4 m/s.
    const speeds = (ratio: string): string => `swing: 1
misses: [short]
plan:
  - { change: delivery.club_speed, to: 40 m/s, because: short }
  - { change: flight.speed_ratio, to: ${ratio}, because: short }
  - { change: flight.ball_speed, to: 57.0 m/s, because: short }`;
    assertNone('changes-do-not-fit', speeds('1.4'));
    assertMarked(
      'changes-do-not-fit',
      `${speeds('1.400')}
#                                    ^^^^^^^^ warning[changes-do-not-fit]`,
    );
  });

  it('takes windows that leave room, and marks those that leave none', () => {
    assertNone('changes-do-not-fit', plan('0..2 deg right', '3 deg right', '1..4 deg left'));
    assertMarked(
      'changes-do-not-fit',
      `${plan('0..2 deg right', '3 deg right', '1..4 deg right')}
#                                        ^^^^^^^^^^^^^^ warning[changes-do-not-fit]`,
    );
  });

  it('says nothing where one of them is free', () => {
    assertNone(
      'changes-do-not-fit',
      plan('1 deg right', '3 deg right', '5 deg left').split('\n').slice(0, -1).join('\n'),
    );
  });
});
