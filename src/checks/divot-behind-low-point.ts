// The check that says where a divot starts farther behind than the low point allows.
import { conflictCheck } from './conflict-check.ts';
import { explain } from './explain.ts';

export const divotBehindLowPoint = conflictCheck({
  code: 'divot-behind-low-point',
  severity: 'warning',
  title: 'Divot starts too far behind the low point',
  explanation: explain({
    found: 'The divot starts farther behind than the low point and the depth of the cut allow.',
    matters:
      'An arc that is lowest well ahead of the ball reaches the ground late; drag of the turf moves a divot ahead, never back.',
    raises: `delivery:
  low_point: { ahead: 12 cm ahead by motion capture }
  arc: { radius: 1.6 m, inclination: 60 deg }
ground:
  divot: { starts: 20 cm behind by tape, depth: 5 mm by ruler }`,
    accepts: `delivery:
  low_point: { ahead: 12 cm ahead by motion capture }
  arc: { radius: 1.6 m, inclination: 60 deg }
ground:
  divot: { starts: 2 cm ahead by tape, depth: 5 mm by ruler }`,
    source:
      'the same circle cut at the depth d: the cut starts R sin θ behind the low point, with R (1 − cos θ) sin i = d.',
  }),
});
