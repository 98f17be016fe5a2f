// The steps from the club's loft by way of lean, kick and an opened face to the loft at the strike; knows nothing of the ball.
import { deliveredLoft } from '../../physics/loft.ts';
import { loftWithFaceAt } from '../../physics/opened-face.ts';
import { constantDiscrepancy, exact, type Rule } from '../rule.ts';
import { curvature } from './face.ts';

const degree = Math.PI / 180;

export const loftRules: readonly Rule[] = [
  {
    name: 'loft-of-opened-face',
    formula:
      'loft = club loft − shaft lean + kick of the shaft, turned about the shaft until the face stands open by face − arc direction',
    source: 'Rotation about the shaft (Rodrigues); to first order (face − arc direction) · cot(lie)',
    inputs: [
      'club.loft',
      'checkpoints.impact.shaft_lean',
      'club.shaft_kick',
      'delivery.face',
      'delivery.arc.direction',
      'club.lie',
    ],
    outputs: ['delivery.centre_loft'],
    appliesTo: ({ hand }) => hand !== 'unknown',
    compute: ([clubLoft, shaftLean, kick, face, direction, lie]) => {
      const loft = deliveredLoft({ clubLoft: clubLoft!, shaftLean: shaftLean!, kick: kick! });
      const opened = loftWithFaceAt({ loft, lie: lie!, lean: shaftLean! }, face! - direction!);
      return opened === undefined ? undefined : [opened];
    },
    discrepancy: constantDiscrepancy([0.5 * degree], 'Judgement: 0.5° for adding rotations.'),
  },
  {
    name: 'loft-of-square-face',
    formula: 'loft = club loft − shaft lean + kick of the shaft',
    source: 'Small rotations about one horizontal axis',
    inputs: ['club.loft', 'checkpoints.impact.shaft_lean', 'club.shaft_kick'],
    outputs: ['delivery.centre_loft'],
    // Whether a face that points right is open or shut is the hand's to say.
    appliesTo: ({ hand }) => hand === 'unknown',
    compute: ([clubLoft, shaftLean, kick]) => [
      deliveredLoft({ clubLoft: clubLoft!, shaftLean: shaftLean!, kick: kick! }),
    ],
    discrepancy: constantDiscrepancy(
      [0.7 * degree],
      'Judgement: 0.5° for adding rotations, and as much for a face a few degrees open or shut.',
    ),
  },
  {
    name: 'loft-at-strike',
    formula: 'delivered loft = loft at the centre of the face + asin(strike height / roll)',
    source: 'Geometry of a curved face',
    inputs: ['delivery.centre_loft', 'strike.height'],
    outputs: ['delivery.delivered_loft'],
    compute: ([loft, height], context) => [loft! + curvature(height!, 'roll', context)],
    discrepancy: exact,
  },
];
