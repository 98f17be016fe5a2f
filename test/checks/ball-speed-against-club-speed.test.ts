// Tests of the check ball-speed-against-club-speed.
import assert from 'node:assert/strict';
import { analyseFiles, assertMarked, assertNone, messageOf } from './files.ts';

describe('ball-speed-against-club-speed', () => {
  it('marks a ball that is faster than any face can make it', () => {
    assertMarked(
      'ball-speed-against-club-speed',
      `swing: 1
delivery: { club_speed: 41 m/s by radar }
flight:
  ball_speed: 75 m/s by radar
#             ^^^^^^^^^^^^^^^ warning[ball-speed-against-club-speed]`,
    );
  });

  it('takes a ball one and a half times as fast as the club', () => {
    assertNone(
      'ball-speed-against-club-speed',
      `swing: 1
delivery: { club_speed: 41 m/s by radar }
flight:
  ball_speed: 60 m/s by radar`,
    );
  });

  it('marks a speed ratio that no club can give', () => {
    assertMarked(
      'ball-speed-against-club-speed',
      `swing: 1
flight:
  speed_ratio: 1.9 by radar
#              ^^^^^^^^^^^^ warning[ball-speed-against-club-speed]`,
    );
  });

  it('marks a speed ratio that is not that of the two speeds', () => {
    assertMarked(
      'ball-speed-against-club-speed',
      `swing: 1
delivery: { club_speed: 41 m/s by radar }
flight:
  ball_speed: 57 m/s by radar
  speed_ratio: 1.1 by radar
#              ^^^^^^^^^^^^ warning[ball-speed-against-club-speed]`,
    );
  });

  it('has its ceiling at 1.488 for a head of 200 g and restitution 0.83', () => {
    const files = (ball: string) => ({
      'lesson.swing.yaml': `swing: 1
student: mira.student.yaml
club: long
delivery: { club_speed: 50 m/s ± 0.001 m/s }
flight: { ball_speed: ${ball} m/s ± 0.001 m/s }`,
      'mira.student.yaml': 'student: 1\nhand: right\nbag:\n  long: { head_mass: 200 g ± 0.001 g }',
    });
    // Penner 2001, Am. J. Phys. 69:563: v = (1 + e) V/(1 + m/M).
    assertNone('ball-speed-against-club-speed', files('74.39'));
    assert.match(
      messageOf(analyseFiles(files('74.45')), 'ball-speed-against-club-speed'),
      /expected at most 74\.4 m\/s\.$/,
    );
  });
});
