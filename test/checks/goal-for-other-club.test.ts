// Tests of the check goal-for-other-club.
import assert from 'node:assert/strict';
import { goalsOf } from '../../src/analysis/plan.ts';
import { assertMarked, assertNone } from './files.ts';

const student = {
  'ansa.student.yaml': 'student: 1\nbag: { hybrid: { kind: hybrid }, driver: { kind: driver } }',
};
const head = 'swing: 1\nstudent: ansa.student.yaml\nclub: hybrid\ngoals:\n';

describe('goal-for-other-club', () => {
  it('marks a goal for another club, which is not held against the record', () => {
    const { subject } = assertMarked('goal-for-other-club', {
      'lesson.swing.yaml': `${head}  - { carry: 165 m, club: driver }
#                         ^^^^^^ information[goal-for-other-club]
  - { carry: 165 m }
  - { carry: 165 m, club: hybrid }`,
      ...student,
    });
    assert.equal(goalsOf(subject).length, 2);
  });

  it('leaves a club that nobody has to another finding, and says nothing of a record without a club', () => {
    assertNone('goal-for-other-club', {
      'lesson.swing.yaml': `${head}  - { carry: 165 m, club: diver }`,
      ...student,
    });
    assertNone('goal-for-other-club', 'swing: 1\ngoals: [{ carry: 165 m, club: driver }]');
  });
});
