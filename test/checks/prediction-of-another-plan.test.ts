// Tests of the check prediction-of-another-plan.
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
misses: [slice]
plan: [{ change: delivery.face_to_path, to: 1 deg right ± 0.5 deg, because: slice }]
predicted:
`;

describe('prediction-of-another-plan', () => {
  it('marks what was stored of a plan that has been changed since', () => {
    assertMarked('prediction-of-another-plan', {
      'lesson.swing.yaml': `${head}  flight.start: 1.0 deg right ± 0.8 deg by model
#               ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ information[prediction-of-another-plan]`,
      ...student,
    });
  });

  it('says nothing within the uncertainty that was stored', () => {
    assertNone('prediction-of-another-plan', {
      'lesson.swing.yaml': `${head}  flight.start: 1.6 deg left ± 0.8 deg by model\n`,
      ...student,
    });
  });

  it('reads that uncertainty by the coverage of the workspace', () => {
    const stored = {
      'lesson.swing.yaml': `${head}  flight.start: 1.6 deg left ± 0.8 deg by model
#               ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ information[prediction-of-another-plan]`,
    };
    assertMarked('prediction-of-another-plan', {
      ...stored,
      ...student,
      'swingwright.yaml': 'workspace: 1\ncoverage: 2\n',
    });
  });

  it('leaves alone what somebody foresaw by a method of their own', () => {
    assertNone('prediction-of-another-plan', {
      'lesson.swing.yaml': `${head}  flight.start: 1.0 deg right ± 0.8 deg\n`,
      ...student,
    });
  });
});
