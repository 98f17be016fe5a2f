// Tests of the check outside-practice.
import assert from 'node:assert/strict';
import { analyseFiles, assertMarked, assertNone, messageOf } from './files.ts';

const bag = `student: 1
bag:
  driver: { kind: driver, loft: 10.5 deg }
  eight iron: { kind: iron, loft: 36 deg }`;
const flown = (club: string): Record<string, string> => ({
  'lesson.swing.yaml': `swing: 1
student: mira.student.yaml
club: ${club}
flight:
  carry: 270 m
#        ^^^^^ information[outside-practice]`,
  'mira.student.yaml': bag,
});

describe('outside-practice', () => {
  it('knows what is usual with the kind of club', () => {
    assert.match(
      messageOf(assertMarked('outside-practice', flown('eight iron')), 'outside-practice'),
      /^Carry 270 m is unusual with an iron; seen in practice: 3\.\.240 m\.$/,
    );
    const driven = Object.fromEntries(
      Object.entries(flown('driver')).map(([name, text]) => [name, text.replace(/\n#.*/, '')]),
    );
    assertNone('outside-practice', driven);
    // Without a club, with whatever club.
    assertNone('outside-practice', 'swing: 1\nflight: { carry: 270 m }');
  });

  it('knows each club of a bag by its kind', () => {
    assertMarked('outside-practice', {
      'mira.student.yaml': `student: 1
bag:
  driver:
    kind: driver
    loft: 33 deg
#         ^^^^^^ information[outside-practice]
  seven iron: { kind: iron, loft: 33 deg }
  other: { loft: 33 deg }`,
    });
  });

  it('marks what is possible but not seen', () => {
    assertMarked(
      'outside-practice',
      `swing: 1
delivery:
  attack: 20 deg down
#         ^^^^^^^^^^^ information[outside-practice]`,
    );
  });

  it('turns what is usual of left and right round for a left-handed player', () => {
    const address = 'checkpoints: { address: { shoulder_direction: 24 deg';
    const player = (hand: string) => ({ 'mira.student.yaml': `student: 1\n${hand}` });
    const record = (side: string): string => `swing: 1\nstudent: mira.student.yaml\n${address} ${side} } }`;
    const wide = (side: string, hand: string) => ({ 'lesson.swing.yaml': record(side), ...player(hand) });
    assertNone('outside-practice', wide('right', 'hand: right'));
    assertNone('outside-practice', wide('left', 'hand: left'));
    assert.match(
      messageOf(analyseFiles(wide('right', 'hand: left')), 'outside-practice'),
      /24 deg right is unusual; seen in practice: 25 deg left\.\.20 deg right\.$/,
    );
    assert.notEqual(messageOf(analyseFiles(wide('left', 'hand: right')), 'outside-practice'), '');
    // Nothing rests on a guessed hand.
    for (const side of ['left', 'right']) assertNone('outside-practice', wide(side, 'name: Mira'));
  });

  it('leaves what is impossible to the other check', () => {
    assertNone(
      'outside-practice',
      `swing: 1
delivery:
  attack: 75 deg down
  path: 3 deg right`,
    );
  });

  it('holds what goals and changes aim at against it, with the club that they are for', () => {
    assertMarked('outside-practice', {
      'lesson.swing.yaml': `swing: 1
student: mira.student.yaml
club: eight iron
goals:
  - carry: 150..270 m
#          ^^^^^^^^^^ information[outside-practice]
plan:
  - { change: delivery.attack, to: 20 deg down }
#                                  ^^^^^^^^^^^ information[outside-practice]
  - { change: delivery.path, to: 4 deg right, proof: delivery.attack < -20 deg }
#                                                    ^^^^^^^^^^^^^^^^^^^^^^^^^ information[outside-practice]`,
      'mira.student.yaml': bag,
    });
    assertMarked('outside-practice', {
      'mira.student.yaml': `${bag}
goals:
  - { carry: 270 m, club: eight iron }
#            ^^^^^ information[outside-practice]
  - { carry: 270 m, club: driver }
  - { carry: 270 m }`,
    });
  });

  it('leaves to a coach what a template wants', () => {
    assertNone('outside-practice', {
      'a.template.yaml': 'template: 1\ndelivery: { attack: 15..20 deg down }',
    });
  });
});
