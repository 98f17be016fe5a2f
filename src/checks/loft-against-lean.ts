// The check that holds the delivered loft against the club's loft and the lean of the shaft.
import { conflictCheck } from './conflict-check.ts';
import { explain } from './explain.ts';

const student = `student: 1
hand: right
bag:
  seven: { kind: iron, loft: 33 deg, lie: 62 deg }`;

export const loftAgainstLean = conflictCheck({
  code: 'loft-against-lean',
  severity: 'warning',
  title: 'Delivered loft does not fit the shaft lean',
  explanation: explain({
    found: 'The delivered loft is not what the loft of the club and the lean of the shaft at impact leave.',
    matters:
      'A shaft that leans forward takes loft off; if it does not seem to, look at the lean, the loft or the club again.',
    raises: {
      'lesson.swing.yaml': `swing: 1
student: mira.student.yaml
club: seven
checkpoints: { impact: { shaft_lean: 10 deg forward by video } }
delivery: { delivered_loft: 52 deg by camera, face: 0 deg by radar, arc: { direction: 0 deg by camera } }`,
      'mira.student.yaml': student,
    },
    accepts: {
      'lesson.swing.yaml': `swing: 1
student: mira.student.yaml
club: seven
checkpoints: { impact: { shaft_lean: 10 deg forward by video } }
delivery: { delivered_loft: 25 deg by camera, face: 0 deg by radar, arc: { direction: 0 deg by camera } }`,
      'mira.student.yaml': student,
    },
    source:
      'delivered loft ≈ club loft − shaft lean, with what the bend of the shaft and the opened face add as uncertainty.',
  }),
});
