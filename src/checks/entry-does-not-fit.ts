// The check that names an entry which cannot be true together with the others, where no nearer code says how.
import { conflictCheck } from './conflict-check.ts';
import { explain } from './explain.ts';

const student = `student: 1
hand: right
stature: 175 cm ± 1 cm
bag:
  seven: { kind: iron, loft: 33 deg ± 0.5 deg, lie: 62 deg, length: 37 in ± 0.2 in, head_mass: 268 g }`;

const lesson = (attack: string) => `swing: 1
student: mira.student.yaml
club: seven
checkpoints:
  impact: { lead_shoulder: 8 cm ahead ± 1 cm, shaft_lean: 8 deg forward ± 1 deg }
delivery:
  club_speed: 36 m/s by radar
  attack: ${attack}
  release_ratio: 2.2 ± 0.1
  arc: { inclination: 60 deg ± 1 deg, radius: 1.3 m ± 3 cm }
ground: { divot: { starts: 1 cm ahead ± 1 cm, length: 15 cm ± 1 cm } }`;

export const entryDoesNotFit = conflictCheck({
  code: 'entry-does-not-fit',
  severity: 'warning',
  title: 'Entry does not fit the others',
  explanation: explain({
    found:
      'All entries together leave one of them so far off that it cannot be true with the rest: most likely it is the one that is wrong.',
    matters:
      'Look at it a second time: the side, the sign, the unit, the shot that it was read from. The entries that speak against it are linked. If it cannot be read better, mark it `doubtful`.',
    raises: { 'lesson.swing.yaml': lesson('6 deg up ± 0.5 deg'), 'mira.student.yaml': student },
    accepts: { 'lesson.swing.yaml': lesson('4 deg down ± 0.5 deg'), 'mira.student.yaml': student },
    source:
      'least squares over the whole swing with normalised residuals (Baarda 1968; VDI 2048); the limit lets one honest record in a hundred be flagged.',
  }),
});
