// Tests of the check outside-template.
import assert from 'node:assert/strict';
import { assertMarked, assertNone, messageOf } from './files.ts';

const template = `template: 1
clubs: [iron]
checkpoints: { impact: { shaft_lean: 4..12 deg forward } }
delivery:
  attack: { window: 2..6 deg down, strict: firm, source: common practice }
  path: { window: 0..4 deg right, strict: firm, source: our own }
  face_to_path: { window: 2 deg left..1 deg right, strict: firm }
`;
const bag = (hand: string): string => `student: 1
hand: ${hand}
bag:
  eight iron: { kind: iron, loft: 36 deg }
  four hybrid: { kind: hybrid, loft: 22 deg }`;
const lesson = (lines: string, hand = 'right', club = 'eight iron'): Record<string, string> => ({
  'lesson.swing.yaml': `swing: 1
student: mira.student.yaml
club: ${club}
template: iron.template.yaml
${lines}`,
  'mira.student.yaml': bag(hand),
  'iron.template.yaml': template,
});

describe('outside-template', () => {
  it('marks an entry with its window, how far it is outside, how strict that is and the source', () => {
    const message = messageOf(
      assertMarked(
        'outside-template',
        lesson(`delivery:
  attack: 8 deg down ± 1 deg
#         ^^^^^^^^^^^^^^^^^^ information[outside-template]`),
      ),
      'outside-template',
    );
    assert.equal(
      message,
      'Attack angle 8.0 deg down ± 1.0 deg is outside the template by 2.0 standard uncertainties; expected 2..6 deg down (firm; common practice).',
    );
  });

  it('waits longer where the window is gentle', () => {
    assertNone(
      'outside-template',
      lesson('checkpoints: { impact: { shaft_lean: 13.9 deg forward ± 1 deg } }'),
    );
    assertMarked(
      'outside-template',
      lesson(`checkpoints:
  impact:
    shaft_lean: 15 deg forward ± 1 deg
#               ^^^^^^^^^^^^^^^^^^^^^^ information[outside-template]`),
    );
  });

  it('tells of what is computed at the reference to the template', () => {
    const analysis = assertMarked('outside-template', {
      ...lesson(''),
      'lesson.swing.yaml': `swing: 1
student: mira.student.yaml
club: eight iron
template: iron.template.yaml
#         ^^^^^^^^^^^^^^^^^^ information[outside-template]
delivery: { face: 6 deg right ± 1 deg, path: 1 deg right ± 1 deg }`,
    });
    assert.match(
      messageOf(analysis, 'outside-template'),
      /^Face to path 5\.0 deg right ± 1\.4 deg, computed, is outside the template by 2\.8 standard uncertainties; expected 2 deg left\.\.1 deg right \(firm; no source\)\.$/,
    );
  });

  it('reads the template the other way round for a left-handed player', () => {
    assertNone('outside-template', lesson('delivery: { path: 3 deg left ± 1 deg }', 'left'));
    assert.match(
      messageOf(
        assertMarked(
          'outside-template',
          lesson(
            `delivery:
  path: 3 deg right ± 1 deg
#       ^^^^^^^^^^^^^^^^^^^ information[outside-template]`,
            'left',
          ),
        ),
        'outside-template',
      ),
      /expected 0\.\.4 deg left/,
    );
  });

  it('marks the key of several readings', () => {
    assertMarked(
      'outside-template',
      lesson(`delivery:
  attack: [8 deg down ± 1 deg, 9 deg down ± 1 deg]
# ^^^^^^ information[outside-template]`),
    );
  });

  it('leaves what is impossible, and a template for another club, to the other checks', () => {
    assertNone('outside-template', lesson('delivery: { attack: 89 deg down }'));
    assertNone(
      'outside-template',
      lesson('delivery: { attack: 8 deg down ± 1 deg }', 'right', 'four hybrid'),
    );
  });
});
