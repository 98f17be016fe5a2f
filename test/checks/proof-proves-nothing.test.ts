// Tests of the check proof-proves-nothing.
import assert from 'node:assert/strict';
import { analyseFiles, assertMarked, assertNone, messageOf } from './files.ts';

const student = {
  'ansa.student.yaml': 'student: 1\nstature: 171 cm\nbag: { hybrid: { kind: hybrid, loft: 22 deg } }',
};
const files = (proof: string) => ({
  'lesson.swing.yaml': `swing: 1
student: ansa.student.yaml
club: hybrid
plan:
  - change: delivery.attack
    proof: ${proof}`,
  ...student,
});

describe('proof-proves-nothing', () => {
  it('marks a proof that every swing meets, and one that none does', () => {
    for (const [proof, marks, words] of [
      ['delivery.path < 120 deg', '^^^^^^^^^^^^^^^^^^^^^^^', /by every swing;/],
      ['delivery.path > delivery.path', '^^^^^^^^^^^^^^^^^^^^^^^^^^^^^', /by no swing;/],
      ['3 deg > 2 deg', '^^^^^^^^^^^^^', /by every swing, since it speaks of no quantity;/],
      ['club.loft > 20 deg', '^^^^^^^^^^^^^^^^^^', /by every swing;/],
      ['student.stature > 2 m', '^^^^^^^^^^^^^^^^^^^^^', /by no swing;/],
    ] as const) {
      const marked = files(`${proof}\n#          ${marks} warning[proof-proves-nothing]`);
      assert.match(messageOf(assertMarked('proof-proves-nothing', marked), 'proof-proves-nothing'), words);
    }
  });

  it('takes one that the next record may meet or not, and leaves what cannot be read to others', () => {
    for (const proof of [
      'delivery.path < 2 deg',
      'club.loft - delivery.delivered_loft > 4 deg',
      'nonsense >',
      '',
    ])
      assertNone('proof-proves-nothing', files(proof));
    assert.ok(
      analyseFiles(files('nonsense >')).findings.some(({ code }) => code === 'unreadable-expression'),
    );
  });
});
