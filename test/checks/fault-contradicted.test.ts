// Tests of the check fault-contradicted.
import assert from 'node:assert/strict';
import { analyseFiles, assertMarked, assertNone, messageOf, uriOf } from './files.ts';

describe('fault-contradicted', () => {
  const house = `faults: 1
book:
  late-weight:
    title: Weight comes late
    at: [lead_arm_parallel_down, impact]
    evidence: checkpoints.impact.lead_pressure < 65 %
    cautions: [lead knee]`;

  it('marks a stated fault whose evidence does not hold, and points to the numbers and to the evidence', () => {
    const { findings } = assertMarked('fault-contradicted', {
      'lesson.swing.yaml': `swing: 1
faults_from: house.faults.yaml
checkpoints: { impact: { lead_pressure: 82 % by pressure mat } }
faults:
  - fault: late-weight
#          ^^^^^^^^^^^ warning[fault-contradicted]
    at: impact`,
      'house.faults.yaml': house,
    });
    const { message, related } = findings.find(({ code }) => code === 'fault-contradicted')!;
    assert.match(
      message,
      /pressure in the lead foot at impact 82 % ± 3 %.*`checkpoints\.impact\.lead_pressure < 65 %`/,
    );
    assert.deepEqual(
      related.map(({ uri, range: { start } }) => [uri, start.line]),
      [
        [uriOf('lesson.swing.yaml'), 2],
        [uriOf('house.faults.yaml'), 5],
      ],
    );
  });

  it('points to the entries that a computed number comes from', () => {
    const { findings } = analyseFiles({
      'lesson.swing.yaml': `swing: 1
student: ansa.student.yaml
faults_from: house.faults.yaml
delivery:
  face: 1 deg left by radar
  path: 5 deg right by radar
faults: [{ fault: open }]`,
      'ansa.student.yaml': 'student: 1\nhand: right',
      'house.faults.yaml': 'faults: 1\nbook: { open: { evidence: delivery.face_to_path > 3 deg } }',
    });
    const { related } = findings.find(({ code }) => code === 'fault-contradicted')!;
    assert.deepEqual(
      related.map(({ range: { start } }) => start.line),
      [4, 5, 1],
    );
  });

  it('says nothing of what is supported, of what nobody can tell, or of a place where the book does not look', () => {
    for (const [pressure, at] of [
      ['50 %', 'impact'],
      ['66 %', 'impact'],
      ['', 'impact'],
      ['82 %', 'top'],
      ['82 %', 'lead_arm_parallel_down'],
    ])
      assertNone('fault-contradicted', {
        'lesson.swing.yaml': `swing: 1
faults_from: house.faults.yaml
checkpoints: { impact: { lead_pressure: ${pressure} } }
faults: [{ fault: late-weight, at: ${at} }]`,
        'house.faults.yaml': house,
      });
  });

  it('says that what the book says of left and right is mirrored for a left-handed player', () => {
    const messageFor = (hand: string): string =>
      messageOf(
        analyseFiles({
          'lesson.swing.yaml': `swing: 1
student: a.student.yaml
faults_from: a.faults.yaml
delivery: { path: 5 deg ${hand} ± 1 deg }
faults: [{ fault: in-to-out }]`,
          'a.student.yaml': `student: 1\nhand: ${hand}`,
          'a.faults.yaml': 'faults: 1\nbook: { in-to-out: { evidence: delivery.path < 0 deg } }',
        }),
        'fault-contradicted',
      );
    assert.match(
      messageFor('left'),
      /path 5.0 deg left .*`delivery.path < 0 deg`, mirrored for a left-handed player\.$/,
    );
    assert.match(messageFor('right'), /path 5.0 deg right .*`delivery.path < 0 deg`\.$/);
  });
});
