// The steps between face, path, loft and obliquity; knows nothing of the arc before or of the ball after.
import { deliveredLoft, obliquity } from '../../physics/loft.ts';
import { headOf } from '../priors.ts';
import { constantDiscrepancy, exact, type Context, type Rule } from '../rule.ts';

const degree = Math.PI / 180;

export const faceRules: readonly Rule[] = [
  {
    name: 'face-to-path',
    direction: 'inverse',
    formula: 'face-to-path = face − path',
    source: 'definition',
    inputs: ['delivery.face', 'delivery.path'],
    outputs: ['delivery.face_to_path'],
    compute: ([face, path]) => [face! - path!],
    discrepancy: exact,
  },
  {
    name: 'path-from-face',
    direction: 'inverse',
    formula: 'path = face − face-to-path',
    source: 'definition',
    inputs: ['delivery.face', 'delivery.face_to_path'],
    outputs: ['delivery.path'],
    compute: ([face, faceToPath]) => [face! - faceToPath!],
    discrepancy: exact,
  },
  {
    name: 'face-from-path',
    formula: 'face = path + face-to-path',
    source: 'definition',
    inputs: ['delivery.path', 'delivery.face_to_path'],
    outputs: ['delivery.face'],
    compute: ([path, faceToPath]) => [path! + faceToPath!],
    discrepancy: exact,
    yields: ['delivery.face_to_path', 'delivery.path'],
  },
  {
    name: 'delivered-loft',
    formula: 'delivered loft = club loft − shaft lean + kick of the shaft + asin(strike height / roll)',
    source: 'Small rotations about one horizontal axis',
    inputs: ['club.loft', 'checkpoints.impact.shaft_lean', 'club.shaft_kick', 'strike.height'],
    outputs: ['delivery.delivered_loft'],
    compute: ([clubLoft, shaftLean, kick, height], context) => [
      deliveredLoft({ clubLoft: clubLoft!, shaftLean: shaftLean!, kick: kick! }) +
        curvature(height!, 'roll', context),
    ],
    discrepancy: constantDiscrepancy(
      [0.7 * degree],
      'Judgement: 0.5° for adding rotations, and as much for a face a few degrees open or shut.',
    ),
  },
  {
    name: 'obliquity',
    formula: 'cos(obliquity) = cos(loft) · cos(attack) · cos(face-to-path) + sin(loft) · sin(attack)',
    source: 'Angle between two directions; the term is that of Penner 2001, Am. J. Phys. 69:563',
    inputs: ['delivery.delivered_loft', 'delivery.attack', 'delivery.face_to_path'],
    outputs: ['delivery.obliquity'],
    compute: ([loft, attack, faceToPath]) => [
      obliquity({ path: 0, attack: attack!, face: faceToPath!, loft: loft! }),
    ],
    discrepancy: exact,
    yields: ['delivery.delivered_loft'],
  },
];

/** How far the face's normal has turned at that distance (m) from its centre, rad; 0 on a flat or unknown face. */
export function curvature(distance: number, section: 'bulge' | 'roll', context: Context): number {
  const radius = headOf(context.clubKind)?.head[section] ?? Infinity;
  return Math.asin(Math.max(-1, Math.min(1, distance / radius)));
}
