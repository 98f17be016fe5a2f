// Tests of the check missing-reference.
import { assertMarked, assertNone } from './files.ts';

describe('missing-reference', () => {
  it('marks the path of a file that is not there', () => {
    assertMarked(
      'missing-reference',
      `swing: 1
student: nobody.student.yaml
#        ^^^^^^^^^^^^^^^^^^^ error[missing-reference]
shots: shots/none.csv
#      ^^^^^^^^^^^^^^ error[missing-reference]`,
    );
  });

  it('takes a file that is there', () => {
    assertNone('missing-reference', {
      'lesson.swing.yaml': `swing: 1
student: mira.student.yaml`,
      'mira.student.yaml': `student: 1`,
    });
  });

  it('marks a path that starts at the root, since records move between machines', () => {
    assertMarked(
      'missing-reference',
      `swing: 1
student: /home/mira.student.yaml
#        ^^^^^^^^^^^^^^^^^^^^^^^ error[missing-reference]`,
    );
  });
});
