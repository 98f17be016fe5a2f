// Tests of the check consent-and-privacy.
import { assertMarked, assertNone } from './files.ts';

describe('consent-and-privacy', () => {
  it('marks the injuries in a student’s file, once', () => {
    assertMarked('consent-and-privacy', {
      'ansa.student.yaml': `student: 1
injuries:
#^^^^^^^ hint[consent-and-privacy]
  - { part: back }
  - { part: knee }`.replace('#^^^^^^^', '^^^^^^^^'),
    });
    assertNone('consent-and-privacy', { 'ansa.student.yaml': 'student: 1\ninjuries: []' });
  });

  it('marks the student of a record who is under eighteen on its day', () => {
    assertMarked('consent-and-privacy', {
      'lesson.swing.yaml': `swing: 1
student: ansa.student.yaml
#        ^^^^^^^^^^^^^^^^^ hint[consent-and-privacy]
date: 2026-05-13`,
      'ansa.student.yaml': 'student: 1\nname: Ansa\nborn: 2008-05-14',
    });
  });

  it('says nothing from the eighteenth birthday on, or while no day is known', () => {
    const student = { 'ansa.student.yaml': 'student: 1\nborn: 2008-05-14' };
    assertNone('consent-and-privacy', {
      'lesson.swing.yaml': 'swing: 1\nstudent: ansa.student.yaml\ndate: 2026-05-14',
      ...student,
    });
    assertNone('consent-and-privacy', {
      'lesson.swing.yaml': 'swing: 1\nstudent: ansa.student.yaml',
      ...student,
    });
  });
});
