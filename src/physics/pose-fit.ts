// What a figure is fitted to: recorded landmarks sharply, usual postures loosely, and what the checkpoint is by definition; knows no record.
import type { Residuals } from './damped-fit.ts';
import { chordOf, minus, unit } from './limbs.ts';
import type { Known, Posture } from './pose.ts';
import { handsOutsideToes, posePriors, poseSpread } from './pose-priors.ts';
import { differenceOf, isLength, readingOf, rise, type PoseKey } from './pose-readings.ts';
import { freedoms, freedomsOf, type Freedom, type Freedoms } from './freedoms.ts';
import {
  armBones,
  legBones,
  skeletonOf,
  trunkLength,
  type Build,
  type Footing,
  type Skeleton,
} from './skeleton.ts';
import { norm, type Vector } from './vector.ts';

export interface PoseProblem {
  readonly build: Build;
  readonly footing: Footing;
  readonly posture: Posture;
  readonly followed: ReadonlyMap<PoseKey, Known>;
}

/** As if what was recorded were known to this share of its uncertainty; what the model expects, five times less. */
const sharpness = 0.01;
const expectedOver = 5;
/** Of what holds by definition: the head at the ball, m, a level arm or shaft, rad. */
const definition = { ball: 0.012, level: 0.03 };
/** Middle of the face behind the middle of the ball and as high. */
const faceAtBall: Vector = { x: -0.012, y: 0, z: 0.02 };
/** Of a limb that is too short for what it should reach, m. */
const overreach = 0.001;

const widest: Readonly<Partial<Record<Freedom, readonly [number, number]>>> = {
  pelvisZ: [0.15, 3],
  pelvisTurn: [-4, 3.2],
  pelvisList: [-0.5, 0.5],
  spineTilt: [-1.2, 1.2],
  forwardBend: [-0.9, 1.9],
  shoulderTurn: [-4.8, 3.6],
  shoulderSlant: [-0.7, 0.7],
  girdle: [-0.05, 0.05],
  neckTilt: [-0.7, 0.7],
  neckBend: [-0.7, 0.8],
  shaftAside: [-3.1, 3.1],
  shaftAcross: [-3.1, 3.1],
  leadKneeOut: [-1.2, 1.2],
  trailKneeOut: [-1.2, 1.2],
  leadElbowOut: [-1.2, 1.2],
  trailElbowOut: [-1.2, 1.2],
};

export function limitsOf({ posture }: PoseProblem): readonly (readonly [number, number])[] {
  const toeLine = posture.address?.at.toeLine;
  return freedoms.map((name) => {
    if (name === 'toeLine' && toeLine !== undefined) return [toeLine, toeLine];
    return widest[name] ?? [-3, 3];
  });
}

/** m or rad; within bounds in which it neither counts for nothing nor for all. */
export function uncertaintyOf(key: PoseKey, { u }: Known): number {
  const [least, usual, most] = isLength(key) ? [0.005, 0.02, 0.05] : [0.02, 0.06, 0.17];
  return u !== undefined && u > 0 ? Math.min(most, Math.max(least, u)) : usual;
}

/** The usual posture, over where the feet are. */
export function startOf({ build, footing, posture }: PoseProblem): Float64Array {
  const { stature } = build;
  const prior = posePriors[posture.checkpoint];
  const toeLine = posture.address?.at.toeLine ?? 0.3 * stature;
  const pelvis = { x: usualPelvisX(footing, prior.pelvisShift), y: toeLine + prior.pelvisDepth * stature };
  const reach = trunkLength(build);
  const height = 0.51 * stature + reach * Math.cos(prior.forwardBend);
  const start: Freedoms = {
    pelvisX: pelvis.x,
    pelvisY: pelvis.y,
    pelvisZ: 0.51 * stature,
    pelvisTurn: prior.pelvisTurn,
    pelvisList: prior.pelvisList,
    spineTilt: prior.spineTilt,
    forwardBend: prior.forwardBend,
    shoulderTurn: prior.shoulderTurn,
    shoulderSlant: prior.shoulderSlant,
    girdle: 0,
    neckTilt: prior.neckTilt,
    neckBend: prior.neckBend,
    handsX: pelvis.x - reach * Math.sin(prior.spineTilt) + prior.hands.x * stature,
    handsY: pelvis.y - reach * Math.sin(prior.forwardBend) + prior.hands.y * stature,
    handsZ: height + prior.hands.z * stature,
    shaftAside: 0,
    shaftAcross: 0,
    leadKneeOut: 0,
    trailKneeOut: 0,
    leadElbowOut: 0,
    trailElbowOut: 0,
    toeLine,
  };
  return Float64Array.from(freedoms, (name) => start[name]);
}

/** @param softly how many times less sharp than it is meant. */
export function residualsOf(problem: PoseProblem, softly: number): Residuals {
  const { build, footing, posture, followed } = problem;
  const asked = [...followed];
  return (numbers) => {
    const at = freedomsOf(numbers);
    const skeleton = skeletonOf(build, footing, at);
    const earAtAddress = posture.address?.earAtAddress ?? skeleton.joints.leadEar.z;
    const seen = { skeleton, at, earAtAddress, isTop: posture.checkpoint === 'top' };
    const { leadLeg, trailLeg, leadArm, trailArm } = skeleton.short;
    // Thousands of times for one figure: `from` would walk the list by its iterator, which takes longer than the figure.
    return new Float64Array(
      asked
        .map(([key, known]) => recorded(build, key, known, seen) / softly)
        .concat(
          usual(problem, at, skeleton),
          byDefinition(posture, skeleton),
          [leadLeg, trailLeg, leadArm, trailArm].map((short) => Math.abs(short) / (overreach * softly)),
        ),
    );
  };
}

function recorded(build: Build, key: PoseKey, known: Known, seen: Parameters<typeof readingOf>[1]): number {
  const { value, kind } = known;
  const spread = uncertaintyOf(key, known) * sharpness * (kind === 'entered' ? 1 : expectedOver);
  const { joints, short } = seen.skeleton;
  // Near a straight arm the bend goes as the root of the chord; the chord itself is smooth. What the arm lacks to reach the grip
  // counts with it: beyond its reach an arm is as long however far the grip is.
  if (key === 'lead_elbow_bend' || key === 'trail_elbow_bend') {
    const [shoulder, hand, lacking] =
      key === 'lead_elbow_bend'
        ? [joints.leadShoulder, joints.leadHand, short.leadArm]
        : [joints.trailShoulder, joints.trailHand, short.trailArm];
    const bend = Math.min(2.9, Math.max(0.02, value));
    return (norm(minus(hand, shoulder)) + lacking - chordOf(armBones(build), bend)) / (0.1 * spread);
  }
  const held = isLength(key) ? Math.min(3, Math.max(-3, value)) : value;
  const off = differenceOf(key, readingOf(key, seen), held);
  return off / spread;
}

/** The body as it usually is; a bend of a limb by the distance of its ends. */
function usual(
  { build, footing, posture }: PoseProblem,
  at: Freedoms,
  { joints }: Skeleton,
): readonly number[] {
  const prior = posePriors[posture.checkpoint];
  const { stature } = build;
  const spread = poseSpread;
  const hands = minus(joints.grip, joints.shoulders);
  const ofStature = (off: number, share: number): number => off / (share * stature);
  return [
    ofStature(at.pelvisX - usualPelvisX(footing, prior.pelvisShift), spread.pelvisShift),
    ofStature(at.pelvisY - at.toeLine - prior.pelvisDepth * stature, spread.pelvisDepth),
    (at.pelvisTurn - prior.pelvisTurn) / spread.turn,
    (at.pelvisList - prior.pelvisList) / spread.list,
    (at.spineTilt - prior.spineTilt) / spread.tilt,
    (at.forwardBend - prior.forwardBend) / spread.tilt,
    (at.shoulderTurn - prior.shoulderTurn) / spread.turn,
    (at.shoulderSlant - prior.shoulderSlant) / spread.slant,
    ofStature(at.girdle, spread.girdle),
    (at.neckTilt - prior.neckTilt) / spread.neck,
    (at.neckBend - prior.neckBend) / spread.neck,
    ofStature(hands.x - prior.hands.x * stature, spread.hands),
    ofStature(hands.y - prior.hands.y * stature, spread.hands),
    ofStature(hands.z - prior.hands.z * stature, spread.hands),
    at.shaftAside / spread.shaft,
    at.shaftAcross / spread.shaft,
    at.leadKneeOut / spread.swivel,
    at.trailKneeOut / spread.swivel,
    at.leadElbowOut / spread.swivel,
    at.trailElbowOut / spread.swivel,
    posture.address
      ? 0
      : ofStature(at.toeLine - joints.grip.y - handsOutsideToes * stature, spread.handDepth),
    chordOff(armBones(build), joints.leadShoulder, joints.leadHand, prior.leadElbowBend, spread.elbow),
    chordOff(
      armBones(build),
      joints.trailShoulder,
      joints.trailHand,
      prior.trailElbowBend,
      spread.trailElbow,
    ),
    chordOff(legBones(build), joints.leadHip, joints.leadAnkle, prior.leadKneeBend, spread.knee),
    chordOff(legBones(build), joints.trailHip, joints.trailAnkle, prior.trailKneeBend, spread.knee),
  ];
}

function chordOff(
  bones: readonly [number, number],
  from: Vector,
  to: Vector,
  bend: number,
  spread: number,
): number {
  const chord = chordOf(bones, bend);
  const slope = (bones[0] * bones[1] * Math.sin(bend)) / chord;
  return (norm(minus(to, from)) - chord) / Math.max(0.003, slope * spread);
}

function byDefinition({ checkpoint }: Posture, { joints }: Skeleton): readonly number[] {
  const shaft = unit(minus(joints.clubHead, joints.grip));
  switch (checkpoint) {
    case 'address':
    case 'impact': {
      const off = minus(joints.clubHead, faceAtBall);
      return [off.x / definition.ball, off.y / definition.ball, off.z / definition.ball];
    }
    case 'takeaway':
    case 'shaft_parallel_down':
    case 'shaft_parallel_through':
      return [shaft.z / definition.level];
    case 'lead_arm_parallel_back':
    case 'lead_arm_parallel_down':
      return [rise(minus(joints.grip, joints.leadShoulder)) / definition.level];
    case 'top':
    case 'finish':
      return [];
  }
}

function usualPelvisX({ leadHeelX, trailHeelX }: Footing, shift: number): number {
  return (leadHeelX + trailHeelX) / 2 + shift * (leadHeelX - trailHeelX);
}
