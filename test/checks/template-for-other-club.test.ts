// Tests of the check template-for-other-club.
import assert from 'node:assert/strict';
import { assertMarked, assertNone, messageOf } from './files.ts';

const files = {
  'mira.student.yaml': `student: 1
bag:
  eight iron: { kind: iron, loft: 36 deg }
  four hybrid: { kind: hybrid, loft: 22 deg }
  old one: { loft: 30 deg }`,
  'turf.template.yaml': 'template: 1\nclubs: [iron, wedge]',
  'all.template.yaml': 'template: 1',
};
const lesson = (club: string, template = 'turf.template.yaml'): Record<string, string> => ({
  'lesson.swing.yaml': `swing: 1\nstudent: mira.student.yaml\nclub: ${club}\ntemplate: ${template}`,
  ...files,
});

describe('template-for-other-club', () => {
  it('marks the reference and says what both are for', () => {
    const marks = lesson('four hybrid');
    const analysis = assertMarked('template-for-other-club', {
      ...marks,
      'lesson.swing.yaml': `${marks['lesson.swing.yaml']}
#         ^^^^^^^^^^^^^^^^^^ warning[template-for-other-club]`,
    });
    assert.equal(
      messageOf(analysis, 'template-for-other-club'),
      'Found a template for `iron` or `wedge`; `four hybrid` is a hybrid, and expected is a template for that.',
    );
  });

  it('takes a template for this kind, for all kinds, and a club whose kind is not known', () => {
    assertNone('template-for-other-club', lesson('eight iron'));
    assertNone('template-for-other-club', lesson('four hybrid', 'all.template.yaml'));
    assertNone('template-for-other-club', lesson('old one'));
  });
});
