// Tests of the check unknown-club.
import assert from 'node:assert/strict';
import { analyseFiles, assertFixedTo, assertMarked, assertNone, uriOf } from './files.ts';

describe('unknown-club', () => {
  it('marks a club that is not in the bag', () => {
    assertMarked('unknown-club', {
      'lesson.swing.yaml': `swing: 1
student: mira.student.yaml
club: hybird
#     ^^^^^^ error[unknown-club]`,
      'mira.student.yaml': `student: 1
hand: left
bag:
  hybrid: { kind: hybrid, loft: 22 deg }`,
    });
  });

  it('takes a club of the bag', () => {
    assertNone('unknown-club', {
      'lesson.swing.yaml': `swing: 1
student: mira.student.yaml
club: hybrid`,
      'mira.student.yaml': `student: 1
hand: left
bag:
  hybrid: { kind: hybrid, loft: 22 deg }`,
    });
  });

  it('writes the nearest club', () => {
    assertFixedTo(
      'unknown-club',
      {
        'lesson.swing.yaml': `swing: 1
student: mira.student.yaml
club: hybird # new`,
        'mira.student.yaml': `student: 1
hand: left
bag:
  hybrid: { kind: hybrid, loft: 22 deg }`,
      },
      `swing: 1
student: mira.student.yaml
club: hybrid # new`,
    );
  });

  it('points to the bag', () => {
    const { findings } = analyseFiles({
      'lesson.swing.yaml': 'swing: 1\nstudent: mira.student.yaml\nclub: hybird',
      'mira.student.yaml': 'student: 1\nbag:\n  hybrid: { kind: hybrid }',
    });
    const related = findings.find(({ code }) => code === 'unknown-club')?.related;
    const range = { start: { line: 2, character: 2 }, end: { line: 2, character: 8 } };
    assert.deepEqual(related, [{ uri: uriOf('mira.student.yaml'), range, message: 'The bag: `hybrid`' }]);
  });

  it('says nothing while the student is not known or cannot be read', () => {
    assertNone('unknown-club', 'swing: 1\nclub: hybird');
    assertNone('unknown-club', {
      'lesson.swing.yaml': 'swing: 1\nstudent: mira.student.yaml\nclub: hybird',
      'mira.student.yaml': 'student: 1\nbag: { hybrid: { kind: hybrid }',
    });
  });

  it('holds the clubs of goals against the bag too, in the record and in the file of the student', () => {
    const bag = 'bag: { hybrid: { kind: hybrid } }';
    assertMarked('unknown-club', {
      'lesson.swing.yaml': `swing: 1
student: mira.student.yaml
club: hybrid
goals:
  - { carry: 165 m, club: hybird }
#                         ^^^^^^ error[unknown-club]
  - { carry: 165 m, club: }`,
      'mira.student.yaml': `student: 1\n${bag}`,
    });
    assertFixedTo(
      'unknown-club',
      { 'mira.student.yaml': `student: 1\n${bag}\ngoals: [{ carry: 165 m, club: hybird }]\n` },
      `student: 1\n${bag}\ngoals: [{ carry: 165 m, club: hybrid }]\n`,
    );
  });
});
