// Tests of the check fault-cannot-be-seen-here.
import { assertFixedTo, assertMarked, assertNone } from './files.ts';

describe('fault-cannot-be-seen-here', () => {
  const house = `faults: 1
book:
  late-weight:
    title: Weight comes late
    at: [lead_arm_parallel_down, impact]
    evidence: checkpoints.impact.lead_pressure < 65 %
    cautions: [lead knee]`;

  it('marks a checkpoint that the book does not list', () => {
    assertMarked('fault-cannot-be-seen-here', {
      'lesson.swing.yaml': `swing: 1
faults_from: house.faults.yaml
faults:
  - { fault: late-weight, at: top }
#                             ^^^ warning[fault-cannot-be-seen-here]
  - { fault: late-weight, at: impact }
  - { fault: late-weight }`,
      'house.faults.yaml': house,
    });
  });

  it('says nothing where the book lists no checkpoint', () => {
    assertNone('fault-cannot-be-seen-here', {
      'lesson.swing.yaml':
        'swing: 1\nfaults_from: house.faults.yaml\nfaults: [{ fault: late-weight, at: top }]',
      'house.faults.yaml': 'faults: 1\nbook: { late-weight: { title: Weight comes late } }',
    });
  });

  it('writes the only checkpoint there is', () => {
    assertFixedTo(
      'fault-cannot-be-seen-here',
      {
        'lesson.swing.yaml':
          'swing: 1\nfaults_from: house.faults.yaml\nfaults: [{ fault: late-weight, at: top }]',
        'house.faults.yaml': 'faults: 1\nbook: { late-weight: { at: impact } }',
      },
      'swing: 1\nfaults_from: house.faults.yaml\nfaults: [{ fault: late-weight, at: impact }]',
    );
  });
});
