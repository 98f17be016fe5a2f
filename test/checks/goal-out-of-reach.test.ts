// Tests of the check goal-out-of-reach.
import assert from 'node:assert/strict';
import { assertMarked, assertNone, messageOf } from './files.ts';

const student = {
  'ansa.student.yaml': `student: 1
hand: right
bag: { hybrid: { kind: hybrid, loft: 22 deg, head_mass: 230 g } }`,
};
const head = `swing: 1
student: ansa.student.yaml
club: hybrid
checkpoints: { impact: { shaft_lean: 5 deg forward ± 2 deg } }
delivery: { club_speed: 41 m/s ± 0.5 m/s, attack: 3 deg down, path: 3 deg left ± 0.5 deg, face: 0 deg ± 0.5 deg }
`;
const plan = 'plan:\n  - { change: delivery.face_to_path, to: 0 deg ± 1 deg, because: carry }';

describe('goal-out-of-reach', () => {
  it('marks a carry that needs more club speed than the plan has, and says how much', () => {
    const analysis = assertMarked('goal-out-of-reach', {
      'lesson.swing.yaml': `${head}goals:
  - carry: 260 m
#          ^^^^^ information[goal-out-of-reach]
${plan}`,
      ...student,
    });
    assert.match(
      messageOf(analysis, 'goal-out-of-reach'),
      /^Out of reach: carry 260 m needs \d\d\.\d m\/s of club speed; this plan gives 41\.0 m\/s ± 0\.5 m\/s\.$/,
    );
  });

  it('says nothing of what may be reached, nor without a plan', () => {
    assertNone('goal-out-of-reach', {
      'lesson.swing.yaml': `${head}goals: [{ carry: 170 m }]\n${plan}`,
      ...student,
    });
    assertNone('goal-out-of-reach', { 'lesson.swing.yaml': `${head}goals: [{ carry: 260 m }]`, ...student });
  });
});
