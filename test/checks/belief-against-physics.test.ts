// Tests of the check belief-against-physics.
import assert from 'node:assert/strict';
import { analyseFiles, assertMarked, assertNone, messageOf } from './files.ts';

const student = (hand: string): string => `student: 1
hand: ${hand}
stature: 171 cm
bag:
  eight iron: { kind: iron, loft: 36 deg, length: 36.5 in }`;

const book = (effect: string): string => `faults: 1
book:
  open-face:
    evidence: delivery.face > 2 deg
    tends_to: [{ effect: ${effect} }]`;

const files = (hand: string, side: string, effect: string): Record<string, string> => ({
  'lesson.swing.yaml': `swing: 1
student: mira.student.yaml
club: eight iron
faults_from: house.faults.yaml
delivery: { club_speed: 33 m/s ± 1 m/s, face: 4 deg ${side} ± 1 deg, path: 1 deg right ± 1 deg }
faults:
  - { fault: open-face }`,
  'mira.student.yaml': student(hand),
  'house.faults.yaml': book(effect),
});

describe('belief-against-physics', () => {
  const wrong = files('right', 'right', 'flight.start, direction: left, size: 1 deg per deg');

  it('marks a stated fault that the model surely has going the other way', () => {
    const analysis = assertMarked('belief-against-physics', {
      ...wrong,
      'lesson.swing.yaml': `${wrong['lesson.swing.yaml']}
#            ^^^^^^^^^ information[belief-against-physics]`,
    });
    assert.match(
      messageOf(analysis, 'belief-against-physics'),
      /^`open-face` is believed to change start direction, when face direction changes by 1\.0 deg right: 1\.0 deg left; physics says 0\.\d+ deg right ± 0\.\d+ deg \(probability over 99 %\)\.$/,
    );
  });

  it('links to the belief in the book', () => {
    const { related } = analyseFiles(wrong).findings.find(({ code }) => code === 'belief-against-physics')!;
    assert.equal(related[0]?.message, 'The belief in the fault book');
    assert.match(related[0]?.uri ?? '', /house\.faults\.yaml$/);
  });

  it('knows that left and right change places for a left-handed player', () => {
    const right = 'flight.start, direction: right';
    assertNone('belief-against-physics', files('right', 'right', right));
    assertNone('belief-against-physics', files('left', 'left', right));
    const analysis = analyseFiles(
      files('left', 'left', 'flight.start, direction: left, size: 1 deg per deg'),
    );
    assert.match(
      messageOf(analysis, 'belief-against-physics'),
      /when face direction changes by 1\.0 deg left: 1\.0 deg right; physics says 0\.\d+ deg left/,
    );
  });

  it('is silent where the model has no way, and in the book itself', () => {
    assertNone('belief-against-physics', files('right', 'right', 'delivery.club_speed, direction: more'));
    assertNone('belief-against-physics', files('right', 'right', 'strike.across, direction: toward heel'));
    assertNone('belief-against-physics', { 'house.faults.yaml': wrong['house.faults.yaml']! });
  });
});
