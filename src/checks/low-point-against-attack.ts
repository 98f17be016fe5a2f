// The check that holds the low point against the attack angle and the arc.
import { conflictCheck } from './conflict-check.ts';
import { explain } from './explain.ts';

export const lowPointAgainstAttack = conflictCheck({
  code: 'low-point-against-attack',
  severity: 'warning',
  title: 'Low point does not fit the attack angle',
  explanation: explain({
    found: 'The low point is not where the attack angle and the arc put it.',
    matters:
      'A club that still moves down at the ball is lowest ahead of it, by the more the steeper it comes.',
    raises: `delivery:
  attack: 5 deg down by radar
  arc: { radius: 1.6 m, inclination: 60 deg }
  low_point: { ahead: 2 cm behind by motion capture }`,
    accepts: `delivery:
  attack: 5 deg down by radar
  arc: { radius: 1.6 m, inclination: 60 deg }
  low_point: { ahead: 15 cm ahead by motion capture }`,
    source:
      'a circle of radius R in a plane of inclination i: sin(attack) = sin θ · sin i, low point ahead = −R sin θ, depth = R (1 − cos θ) sin i.',
  }),
});
