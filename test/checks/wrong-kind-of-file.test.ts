// Tests of the check wrong-kind-of-file.
import { assertMarked, assertNone } from './files.ts';

describe('wrong-kind-of-file', () => {
  it('marks a template where the student belongs', () => {
    assertMarked('wrong-kind-of-file', {
      'lesson.swing.yaml': `swing: 1
student: irons.template.yaml
#        ^^^^^^^^^^^^^^^^^^^ error[wrong-kind-of-file]`,
      'irons.template.yaml': `template: 1`,
    });
  });

  it('takes a student', () => {
    assertNone('wrong-kind-of-file', {
      'lesson.swing.yaml': `swing: 1
student: mira.student.yaml`,
      'mira.student.yaml': `student: 1`,
    });
  });

  it('marks a name that says nothing of its kind', () => {
    assertMarked(
      'wrong-kind-of-file',
      `swing: 1
template: irons.yaml
#         ^^^^^^^^^^ error[wrong-kind-of-file]`,
    );
  });
});
