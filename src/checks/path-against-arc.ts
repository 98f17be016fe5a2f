// The check that holds the club path against the direction of the arc and the attack angle.
import { conflictCheck } from './conflict-check.ts';
import { explain } from './explain.ts';

export const pathAgainstArc = conflictCheck({
  code: 'path-against-arc',
  severity: 'warning',
  title: 'Club path does not fit the arc',
  explanation: explain({
    found: 'The club path is not what the direction of the arc and the attack angle make it.',
    matters:
      'A downward strike sends the path outward of the direction of the arc, an upward one inward; it takes a known hand.',
    raises: {
      'lesson.swing.yaml': `swing: 1
student: mira.student.yaml
delivery:
  attack: 5 deg down by radar
  arc: { direction: 0 deg, inclination: 60 deg }
  path: 20 deg left by radar`,
      'mira.student.yaml': `student: 1
hand: right`,
    },
    accepts: {
      'lesson.swing.yaml': `swing: 1
student: mira.student.yaml
delivery:
  attack: 5 deg down by radar
  arc: { direction: 0 deg, inclination: 60 deg }
  path: 3 deg right by radar`,
      'mira.student.yaml': `student: 1
hand: right`,
    },
    source:
      'the same circle: path = direction of the arc ∓ atan(tan θ · cos i), − for a right-handed player.',
  }),
});
