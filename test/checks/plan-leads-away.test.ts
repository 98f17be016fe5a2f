// Tests of the check plan-leads-away.
import { assertMarked, assertNone } from './files.ts';

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
const goals = 'goals: [{ start: 1 deg left..1 deg right }]\nplan:\n';

describe('plan-leads-away', () => {
  it('marks a plan that moves a goal out of its window for certain', () => {
    assertMarked('plan-leads-away', {
      'lesson.swing.yaml': `${head}${goals}  - { change: delivery.face_to_path, to: 9 deg right ± 0.5 deg, because: start }
#             ^^^^^^^^^^^^^^^^^^^^^ warning[plan-leads-away]`,
      ...student,
    });
  });

  it('says nothing of one that may still reach it', () => {
    assertNone('plan-leads-away', {
      'lesson.swing.yaml': `${head}${goals}  - { change: delivery.face_to_path, to: 2 deg right ± 0.5 deg, because: start }`,
      ...student,
    });
  });

  it('marks the change that does, of two, and of two of one quantity', () => {
    assertMarked('plan-leads-away', {
      'lesson.swing.yaml': `${head}${goals}  - { change: delivery.club_speed, to: 42 m/s, because: start }
  - { change: delivery.face_to_path, to: 9 deg right ± 0.5 deg, because: start }
#             ^^^^^^^^^^^^^^^^^^^^^ warning[plan-leads-away]`,
      ...student,
    });
    assertMarked('plan-leads-away', {
      'lesson.swing.yaml': `${head}${goals}  - { change: delivery.face_to_path, to: 2 deg right ± 0.5 deg, because: start }
  - { change: delivery.face_to_path, to: 9 deg right ± 0.5 deg, because: start }
#             ^^^^^^^^^^^^^^^^^^^^^ warning[plan-leads-away]`,
      ...student,
    });
  });

  it('marks one that sets what the goal asks for elsewhere', () => {
    assertMarked('plan-leads-away', {
      'lesson.swing.yaml': `${head}goals: [{ contact: on the rise }]\nplan:\n  - { change: delivery.attack, to: 8 deg down ± 0.5 deg, because: contact }
#             ^^^^^^^^^^^^^^^ warning[plan-leads-away]`,
      ...student,
    });
  });
});
