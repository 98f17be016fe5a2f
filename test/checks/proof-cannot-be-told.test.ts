// Tests of the check proof-cannot-be-told.
import { assertMarked, assertNone } from './files.ts';

const record = (mark: string): string => `swing: 1
student: ansa.student.yaml
club: hybrid
plan:
  - change: checkpoints.impact.shaft_lean
    proof: club.loft - delivery.delivered_loft > 4 deg
${mark}`;
const student = (rest: string): string => `student: 1\nbag: { hybrid: { kind: hybrid${rest} } }`;

describe('proof-cannot-be-told', () => {
  it('marks a proof about a loft that nobody has written down', () => {
    const mark = '#          ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ warning[proof-cannot-be-told]';
    assertMarked('proof-cannot-be-told', {
      'lesson.swing.yaml': record(mark),
      'ansa.student.yaml': student(''),
    });
    assertMarked('proof-cannot-be-told', {
      'lesson.swing.yaml': record(mark),
      'ansa.student.yaml': student(', loft: '),
    });
  });

  it('takes one that is written down, and says nothing while the file of the student is not there', () => {
    const written = { 'lesson.swing.yaml': record(''), 'ansa.student.yaml': student(', loft: 22 deg') };
    assertNone('proof-cannot-be-told', written);
    assertNone('proof-cannot-be-told', { 'lesson.swing.yaml': record('') });
  });
});
