// The check that holds where the ball finished against its start, curve and carry.
import { conflictCheck } from './conflict-check.ts';
import { explain } from './explain.ts';

export const finishAgainstCurve = conflictCheck({
  code: 'finish-against-curve',
  severity: 'warning',
  title: 'Finish does not fit start and curve',
  explanation: explain({
    found: 'The finish is not where start direction, curve and carry together put it.',
    matters: 'One of the four was most likely noted for another shot or on the wrong side of the target.',
    raises: `flight:
  start: 1 deg right
  curve: 14 yd right
  carry: 171 m
  finish: 30 yd left`,
    accepts: `flight:
  start: 1 deg right
  curve: 14 yd right
  carry: 171 m
  finish: 17 yd right`,
    source: 'geometry: finish = carry · sin(start) + curve · cos(start), positive to the right.',
  }),
});
