// The steps from the arc to the divot and to where on the face the ball is met; knows nothing of the ball's flight.
import { ruleBall } from '../../physics/ball.ts';
import { cutOfGround, turfDiscrepancy } from '../../physics/ground.ts';
import type { HeadKind } from '../../physics/heads.ts';
import { faces, strikeHeight } from '../../physics/strike-height.ts';
import { headOf } from '../priors.ts';
import { constantDiscrepancy, type Rule } from '../rule.ts';

/** A cut shallower than this, m, leaves no edge to measure: there the length goes on along its tangent, so that a fit finds back. */
const shallowest = 0.0015;

export const groundRules: readonly Rule[] = [
  {
    name: 'divot-from-arc',
    formula:
      'R · (1 − cos θ) · sin i = depth; the cut runs from R · sin θ behind the low point to as far ahead',
    source: 'Geometry of a circle in an inclined plane',
    requires: ['ground.divot.starts', 'ground.divot.length', 'ground.divot.depth'],
    inputs: [
      'delivery.arc.radius',
      'delivery.arc.inclination',
      'delivery.low_point.ahead',
      'delivery.low_point.depth',
    ],
    outputs: ['ground.divot.starts', 'ground.divot.length', 'ground.divot.depth'],
    compute: ([radius, inclination, ahead, depth]) => {
      const arc = { radius: radius!, inclination: inclination!, direction: 0 };
      const held = Math.max(shallowest, depth!);
      const cut = cutOfGround(arc, { ahead: ahead!, depth: held });
      if (!cut) return undefined;
      // The length goes as the root of the depth.
      const length = cut.length * (1 + (depth! - held) / (2 * held));
      return [
        ahead! - length / 2 + turfDiscrepancy.starts.value,
        length * turfDiscrepancy.lengthShare.value,
        depth! * turfDiscrepancy.depthShare.value,
      ];
    },
    discrepancy: {
      of: (_inputs, [, length, depth]) => [
        turfDiscrepancy.starts.u,
        Math.max(0.01, (turfDiscrepancy.lengthShare.u / turfDiscrepancy.lengthShare.value) * length!),
        Math.max(0.001, (turfDiscrepancy.depthShare.u / turfDiscrepancy.depthShare.value) * depth!),
      ],
      reason: `Turf, all by judgement: start ± 1.2 cm, ${turfDiscrepancy.lengthShare.source}, ${turfDiscrepancy.depthShare.source}.`,
    },
  },
  {
    name: 'divot-direction',
    formula: 'divot direction = arc direction',
    source: 'Entry and exit lie at one height, so their line runs along the base of the plane',
    requires: ['ground.divot.direction'],
    inputs: ['delivery.arc.direction'],
    outputs: ['ground.divot.direction'],
    compute: ([direction]) => [direction! + turfDiscrepancy.direction.value],
    discrepancy: constantDiscrepancy([turfDiscrepancy.direction.u], `${turfDiscrepancy.direction.source}.`),
  },
  {
    name: 'strike-height',
    formula: 'height = (r · (1 − sin λ) − h) / cos λ − height of the face centre above the leading edge',
    source: 'Plane geometry of a ball on the ground and a flat face',
    requires: [
      'delivery.low_point.depth',
      'ground.divot.starts',
      'ground.divot.length',
      'ground.divot.depth',
    ],
    inputs: ['strike.sole_height', 'delivery.centre_loft'],
    outputs: ['strike.height'],
    // Off a tee the player chooses the height of the ball to suit, so that the sole says nothing of the strike.
    appliesTo: ({ clubKind }) => headOf(clubKind) !== undefined && clubKind !== 'driver',
    compute: ([soleHeight, loft], { clubKind }) => {
      const face = faces[clubKind as HeadKind];
      const at = { soleHeight: soleHeight!, ballHeight: 0, loft: loft!, ballRadius: ruleBall.radius };
      const height = strikeHeight(at, face);
      return height === undefined ? undefined : [height];
    },
    discrepancy: {
      of: (_inputs, _outputs, { clubKind }) => [Math.hypot(faces[clubKind as HeadKind].u, 0.003)],
      reason:
        'Height of the face’s centre above the sole over heads of the kind, and 3 mm for how the ball lies; judgement.',
    },
  },
];
