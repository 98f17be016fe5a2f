// Tests of the check plan-loads-injury.
import assert from 'node:assert/strict';
import { assertMarked, assertNone, messageOf } from './files.ts';

const files = {
  'house.faults.yaml': `faults: 1
book:
  stands-up:
    changes: [{ change: checkpoints.impact.forward_bend, by: 6 deg more }]
    cautions: [lower back]`,
  'ansa.student.yaml': 'student: 1\nname: Ansa\ninjuries: [{ part: lower back }]',
};
const head = 'swing: 1\nstudent: ansa.student.yaml\nfaults_from: house.faults.yaml\nplan:\n';

describe('plan-loads-injury', () => {
  it('marks a change that a book gives a caution for, whatever its reason, in words that clear nobody', () => {
    const analysis = assertMarked('plan-loads-injury', {
      'lesson.swing.yaml': `${head}  - change: checkpoints.impact.forward_bend
#           ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ information[plan-loads-injury]`,
      ...files,
    });
    assert.equal(
      messageOf(analysis, 'plan-loads-injury'),
      "The change of forward bend at impact loads the lower back, which Ansa's file notes as injured: stop if it hurts. This is no medical advice; see a physician or physiotherapist.",
    );
  });

  it('marks a change that is for such a fault, and says which', () => {
    const analysis = assertMarked('plan-loads-injury', {
      'lesson.swing.yaml': `${head}  - change: delivery.attack
#           ^^^^^^^^^^^^^^^ information[plan-loads-injury]
    because: [stands-up]`,
      ...files,
    });
    assert.match(
      messageOf(analysis, 'plan-loads-injury'),
      /^What helps against "stands-up", which the change of attack angle is for, loads the lower back/,
    );
  });

  it('says nothing of a change that has to do with none', () => {
    assertNone('plan-loads-injury', { 'lesson.swing.yaml': `${head}  - change: delivery.attack`, ...files });
  });
});
