// Tests of the check no-value-yet.
import assert from 'node:assert/strict';
import { assertMarked, assertNone, messageOf } from './files.ts';

describe('no-value-yet', () => {
  it('marks the empty place after a key', () => {
    assertMarked(
      'no-value-yet',
      `swing: 1
student: mira.student.yaml
date: 2026-05-14
club: hybrid
delivery:
  attack:
#        | hint[no-value-yet]`,
    );
  });

  it('says at the first key what a record still waits for', () => {
    const analysis = assertMarked(
      'no-value-yet',
      `swing: 1
^^^^^ hint[no-value-yet]
date: 2026-05-14`,
    );
    assert.match(messageOf(analysis, 'no-value-yet'), /`student`.*`club`/);
  });

  it('marks a unit, a direction or a method that waits for its number, in any form', () => {
    assertMarked(
      'no-value-yet',
      `swing: 1
student: mira.student.yaml
date: 2026-05-14
club: hybrid
checkpoints:
  impact:
    lead_shoulder:  cm ahead by video
#                   ^^^^^^^^^^^^^^^^^ hint[no-value-yet]
    shaft_lean: { value: deg forward, by: video }
#                        ^^^^^^^^^^^ hint[no-value-yet]
    hands: [ahead, 3 cm ahead]
#           ^^^^^ hint[no-value-yet]`,
    );
  });

  it('leaves what cannot be read to others', () => {
    for (const value of ['cm ahead 7', 'ca. 7 cm', 'cm cm', '7 cm over', '..5 cm', 'm/s ahead'])
      assertNone(
        'no-value-yet',
        `swing: 1
student: mira.student.yaml
date: 2026-05-14
club: hybrid
checkpoints: { impact: { hands: ${value} } }`,
      );
  });

  it('marks items that do not say what they are about, and takes those that do', () => {
    const analysis = assertMarked('no-value-yet', {
      'lesson.swing.yaml': `swing: 1
student: ansa.student.yaml
date: 2026-05-14
club: hybrid
faults: [{ at: top }]
#          ^^ hint[no-value-yet]
plan: [{ to: 3 deg left, because: slice }, { change: delivery.face, to: 3 deg left }]
#        ^^ hint[no-value-yet]`,
      'ansa.student.yaml': 'student: 1\nbag: { hybrid: { kind: hybrid } }',
    });
    const { message } = analysis.findings.findLast(({ code }) => code === 'no-value-yet')!;
    assert.equal(
      message,
      'Found no `change` beside `to`; expected `change`, without which nothing is made of the rest.',
    );
    assertMarked('no-value-yet', {
      'ansa.student.yaml': `student: 1
injuries: [{ since: 2026 }, { part: lead knee }]
#            ^^^^^ hint[no-value-yet]`,
    });
  });

  it('takes a key with a value', () => {
    assertNone(
      'no-value-yet',
      `swing: 1
student: mira.student.yaml
date: 2026-05-14
club: hybrid
delivery:
  attack: 3 deg down`,
    );
  });
});
