// What a lesson record would say of a figure: each recorded landmark and angle read off its joints; knows no entries.
import { angleBetween, bendOf, minus } from './limbs.ts';
import type { Freedoms } from './freedoms.ts';
import type { Skeleton } from './skeleton.ts';
import type { Vector } from './vector.ts';

/** What a figure shows of a record, by the key below a checkpoint, as for a right-handed player. */
export const poseKeys = [
  'head',
  'sternum',
  'pelvis',
  'lead_shoulder',
  'hands',
  'lead_knee',
  'shoulder_turn',
  'pelvis_turn',
  'shoulder_tilt',
  'spine_tilt',
  'forward_bend',
  'lead_arm',
  'lead_elbow_bend',
  'trail_elbow_bend',
  'lead_wrist_hinge',
  'shaft_lean',
  'shaft_inclination',
  'hand_depth',
  'pelvis_depth',
  'head_height',
  'shoulder_direction',
] as const;
export type PoseKey = (typeof poseKeys)[number];

const lengths: ReadonlySet<PoseKey> = new Set([
  'head',
  'sternum',
  'pelvis',
  'lead_shoulder',
  'hands',
  'lead_knee',
  'hand_depth',
  'pelvis_depth',
  'head_height',
]);

export function isLength(key: PoseKey): boolean {
  return lengths.has(key);
}

export interface Seen {
  readonly skeleton: Skeleton;
  readonly at: Freedoms;
  /** Height of the lead ear at address, m; this figure's own at address. */
  readonly earAtAddress: number;
  readonly isTop: boolean;
}

/** m or rad, signed as the quantities are. */
export function readingOf(key: PoseKey, { skeleton, at, earAtAddress, isTop }: Seen): number {
  const { joints, chest } = skeleton;
  switch (key) {
    case 'head':
      return joints.leadEar.x;
    case 'sternum':
      return joints.sternum.x;
    case 'pelvis':
      return joints.pelvis.x;
    case 'lead_shoulder':
      return joints.leadShoulder.x;
    case 'hands':
      return joints.grip.x;
    case 'lead_knee':
      return joints.leadKnee.x - joints.leadAnkle.x;
    case 'shoulder_turn':
    case 'shoulder_direction':
      return at.shoulderTurn;
    case 'pelvis_turn':
      return at.pelvisTurn;
    case 'shoulder_tilt':
      return Math.asin(Math.max(-1, Math.min(1, chest.side.z)));
    case 'spine_tilt':
      return at.spineTilt;
    case 'forward_bend':
      return at.forwardBend;
    case 'lead_arm':
      return rise(minus(joints.grip, joints.leadShoulder));
    case 'lead_elbow_bend':
      return bendOf(joints.leadShoulder, joints.leadElbow, joints.leadHand);
    case 'trail_elbow_bend':
      return bendOf(joints.trailShoulder, joints.trailElbow, joints.trailHand);
    case 'lead_wrist_hinge':
      return angleBetween(minus(joints.leadHand, joints.leadElbow), shaftOf(skeleton));
    case 'shaft_lean':
      return leanOf(shaftOf(skeleton));
    case 'shaft_inclination':
      return slopeOf(shaftOf(skeleton), isTop);
    case 'hand_depth':
      return joints.grip.y - at.toeLine;
    case 'pelvis_depth':
      return joints.pelvis.y - at.toeLine;
    case 'head_height':
      return joints.leadEar.z - earAtAddress;
  }
}

/** The difference of two readings; a shaft that went once round lies where it lay. */
export function differenceOf(key: PoseKey, drawn: number, asked: number): number {
  const difference = drawn - asked;
  if (key === 'shaft_lean' || key === 'shoulder_turn' || key === 'pelvis_turn') {
    return difference - 2 * Math.PI * Math.round(difference / (2 * Math.PI));
  }
  if (key === 'shaft_inclination') return difference - Math.PI * Math.round(difference / Math.PI);
  return difference;
}

/** How steeply a direction stands to the ground, up positive, rad. */
export function rise(direction: Vector): number {
  return Math.atan2(direction.z, Math.hypot(direction.x, direction.y));
}

function shaftOf({ joints }: Skeleton): Vector {
  return minus(joints.clubHead, joints.grip);
}

/** From the vertical through the head to the shaft, seen face-on, forward positive: 90° level going back, 180° upright. */
function leanOf(shaft: Vector): number {
  return Math.atan2(-shaft.x, -shaft.z);
}

/** Of the shaft's line to the ground down the line; at the top from the hands to the head, which may point below them. */
function slopeOf({ y, z }: Vector, isTop: boolean): number {
  if (isTop) return Math.atan2(z, Math.abs(y));
  return z === 0 ? 0 : Math.atan(z / y);
}
