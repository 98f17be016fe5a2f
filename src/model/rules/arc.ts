// The steps between attack, path and low point on a circular arc; knows nothing of the face, the ball or the flight.
import { arcAtStrike, attackFromLowPoint } from '../../physics/arc.ts';
import type { Rule } from '../rule.ts';

const degree = Math.PI / 180;
const circle = 'Geometry of a circle in an inclined plane';
const morrison = 'Morrison, McGrath & Wallace 2018, J. Sports Sci. 36:303';

export const arcRules: readonly Rule[] = [
  {
    name: 'attack-from-low-point',
    direction: 'inverse',
    formula: 'sin θ = −low point ahead / R, sin(attack) = sin θ · sin i',
    source: circle,
    inputs: ['delivery.low_point.ahead', 'delivery.arc.radius', 'delivery.arc.inclination'],
    outputs: ['delivery.attack'],
    compute: ([ahead, radius, inclination]) => {
      const attack = attackFromLowPoint({ radius: radius!, inclination: inclination! }, ahead!);
      return attack === undefined ? undefined : [attack];
    },
    discrepancy: {
      of: (_inputs, [attack]) => [Math.hypot(0.03 * attack!, 0.1 * degree)],
      reason: `Attack from a fitted ellipse holds to 3 % (${morrison}); 0.1° more by judgement.`,
    },
  },
  {
    name: 'path-from-arc',
    formula: 'sin θ = sin(attack) / sin i, path = arc direction − atan(tan θ · cos i)',
    source: circle,
    inputs: ['delivery.arc.direction', 'delivery.arc.inclination', 'delivery.attack'],
    outputs: ['delivery.path'],
    appliesTo: ({ hand }) => hand !== 'unknown',
    compute: ([direction, inclination, attack]) => {
      const at = arcAtStrike({ radius: 1, inclination: inclination!, direction: direction! }, attack!);
      return at && [at.path];
    },
    discrepancy: {
      of: ([direction], [path]) => [Math.hypot(0.02 * (path! - direction!), 0.2 * degree)],
      reason: `Path from a fitted ellipse holds to 2 % (${morrison}); 0.2° more by judgement.`,
    },
  },
  {
    name: 'low-point-from-arc',
    formula: 'sin θ = sin(attack) / sin i, low point ahead = −R · sin θ',
    source: circle,
    inputs: ['delivery.attack', 'delivery.arc.radius', 'delivery.arc.inclination'],
    outputs: ['delivery.low_point.ahead'],
    // The ball stays where it is: an arc whose lowest point moves meets it at another height of the way down.
    yields: ['delivery.attack'],
    compute: ([attack, radius, inclination]) => {
      const at = arcAtStrike({ radius: radius!, inclination: inclination!, direction: 0 }, attack!);
      return at && [at.lowPointAhead];
    },
    discrepancy: {
      of: (_inputs, [ahead]) => [Math.hypot(0.03 * ahead!, 0.005)],
      reason: `Attack from a fitted ellipse holds to 3 % (${morrison}); 5 mm more by judgement.`,
    },
  },
  {
    name: 'low-point-depth-from-arc',
    formula:
      'sin θ = sin(attack) / sin i, low point depth = R · (1 − cos θ) · sin i − height of the sole at the ball',
    source: circle,
    inputs: ['delivery.attack', 'delivery.arc.radius', 'delivery.arc.inclination', 'strike.sole_height'],
    outputs: ['delivery.low_point.depth'],
    compute: ([attack, radius, inclination, soleHeight]) => {
      const at = arcAtStrike({ radius: radius!, inclination: inclination!, direction: 0 }, attack!);
      return at && [at.lowPointDepth - soleHeight!];
    },
    discrepancy: {
      of: ([, , , soleHeight], [depth]) => [Math.hypot(0.06 * (depth! + soleHeight!), 0.0012)],
      reason: `Real paths near the strike fit an ellipse to 1.2 mm, and the depth goes with the square of an attack that holds to 3 % (${morrison}).`,
    },
  },
];
