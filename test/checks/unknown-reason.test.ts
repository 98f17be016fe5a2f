// Tests of the check unknown-reason.
import { assertFixedTo, assertMarked, assertNone } from './files.ts';

const plan = (because: string): string => `plan:\n  - { change: delivery.attack, because: [${because}] }`;

describe('unknown-reason', () => {
  it('marks what is neither a stated fault nor a miss nor a goal', () => {
    assertMarked(
      'unknown-reason',
      `swing: 1
misses: [heavy]
${plan('thin, heavy')}
#                                        ^^^^ warning[unknown-reason]`,
    );
  });

  it('takes faults, misses, and goals of the record and of the student', () => {
    const files = {
      'lesson.swing.yaml': `swing: 1
student: ansa.student.yaml
faults: [{ fault: stands-up }]
misses: [thin]
goals: [{ shape: draw, carry: 170 m }]
${plan('stands-up, thin, shape, carry, contact')}`,
      'ansa.student.yaml': 'student: 1\ngoals: [{ contact: ball before turf }]',
    };
    assertNone('unknown-reason', files);
  });

  it('writes the reason that was meant', () => {
    assertFixedTo(
      'unknown-reason',
      `swing: 1\nmisses: [heavy]\n${plan('heavi')}`,
      `swing: 1\nmisses: [heavy]\n${plan('heavy')}`,
    );
  });
});
