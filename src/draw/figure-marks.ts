// Where on a figure each recorded quantity is to be seen, face-on and down the line; knows no colours.
import { isSeen, type StanceKey, type View } from '../physics/pose-anchors.ts';
import type { PoseKey } from '../physics/pose-readings.ts';
import type { JointName } from '../physics/skeleton.ts';
import { vector, type Vector } from '../physics/vector.ts';
import type { Stand } from './figure-pose.ts';

/** Offsets are drawn where they were recorded, in the one direction that the camera sees them; angles have a joint to stand at. */
export type MarkKind = 'along' | 'depth' | 'height' | 'angle';

export interface Mark {
  readonly key: PoseKey | StanceKey;
  readonly kind: MarkKind;
  /** In space, as for this player: what was recorded, on the figure's height and depth. */
  readonly at: Vector;
}

const offsets: Readonly<Partial<Record<PoseKey | StanceKey, readonly [MarkKind, JointName]>>> = {
  head: ['along', 'leadEar'],
  sternum: ['along', 'sternum'],
  pelvis: ['along', 'pelvis'],
  lead_shoulder: ['along', 'leadShoulder'],
  hands: ['along', 'grip'],
  lead_knee: ['along', 'leadKnee'],
  hand_depth: ['depth', 'grip'],
  pelvis_depth: ['depth', 'pelvis'],
  head_height: ['height', 'leadEar'],
};

const angles: Readonly<Partial<Record<PoseKey | StanceKey, JointName>>> = {
  shoulder_turn: 'trailShoulder',
  shoulder_direction: 'trailShoulder',
  pelvis_turn: 'trailHip',
  shoulder_tilt: 'leadShoulder',
  spine_tilt: 'neck',
  forward_bend: 'neck',
  lead_arm: 'leadWrist',
  lead_elbow_bend: 'leadElbow',
  trail_elbow_bend: 'trailElbow',
  lead_wrist_hinge: 'leadWrist',
};

/** Every recorded quantity that this view shows on the body or the club, with where. */
export function marksOf({ pose, values, hand }: Stand, view: View): readonly Mark[] {
  const { joints } = pose.skeleton;
  return [...values].flatMap(([key, { value }]) => {
    if (!isSeen(key, view) || !Number.isFinite(value)) return [];
    const offset = offsets[key];
    if (offset !== undefined) {
      const [kind, joint] = offset;
      return [{ key, kind, at: recorded(key, kind, value, joints[joint], { pose, hand }) }];
    }
    if (key === 'shaft_lean' || key === 'shaft_inclination') {
      return [{ key, kind: 'angle' as const, at: between(joints.grip, joints.clubHead) }];
    }
    const joint = angles[key as PoseKey];
    return joint === undefined ? [] : [{ key, kind: 'angle' as const, at: joints[joint] }];
  });
}

function recorded(
  key: PoseKey | StanceKey,
  kind: MarkKind,
  value: number,
  joint: Vector,
  { pose, hand }: Pick<Stand, 'pose' | 'hand'>,
): Vector {
  const side = hand === 'left' ? -1 : 1;
  if (kind === 'depth') return vector(joint.x, side * (pose.at.toeLine + value), joint.z);
  if (kind === 'height') return vector(joint.x, joint.y, pose.earAtAddress + value);
  return vector(key === 'lead_knee' ? pose.skeleton.joints.leadAnkle.x + value : value, joint.y, joint.z);
}

function between(a: Vector, b: Vector): Vector {
  return vector((a.x + b.x) / 2, (a.y + b.y) / 2, (a.z + b.z) / 2);
}
