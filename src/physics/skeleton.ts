// A figure of rigid segments: a few numbers that say how it stands, and where its joints are then; knows no entries and no checkpoint.
import type { BodyTableName } from './body-tables.ts';
import { segmentLengths, type SegmentLengths } from './body.ts';
import type { Freedoms } from './freedoms.ts';
import { footOn, limb, minus, squareTo, unit, type Foot } from './limbs.ts';
import { chestDepth, halfShoulders, trunkShares } from './trunk.ts';
import { add, cross, norm, scale, vector, type Vector } from './vector.ts';

export const jointNames = [
  'pelvis',
  'leadHip',
  'trailHip',
  'leadKnee',
  'trailKnee',
  'leadAnkle',
  'trailAnkle',
  'leadHeel',
  'trailHeel',
  'leadBall',
  'trailBall',
  'leadToe',
  'trailToe',
  'shoulders',
  'neck',
  'sternum',
  'leadShoulder',
  'trailShoulder',
  'leadElbow',
  'trailElbow',
  'leadWrist',
  'trailWrist',
  'leadHand',
  'trailHand',
  'head',
  'leadEar',
  'grip',
  'gripEnd',
  'clubHead',
] as const;
export type JointName = (typeof jointNames)[number];
export type Joints = Readonly<Record<JointName, Vector>>;

/** A part's own directions: to its lead side, out of its front, up along it. */
export interface Frame {
  readonly side: Vector;
  readonly front: Vector;
  readonly up: Vector;
}

export interface Skeleton {
  readonly joints: Joints;
  readonly pelvis: Frame;
  readonly chest: Frame;
  readonly head: Frame;
  /** From the heel of the club head to its toe. */
  readonly clubToe: Vector;
  /** How far the limbs fall short of what they reach for, m. */
  readonly short: {
    readonly leadLeg: number;
    readonly trailLeg: number;
    readonly leadArm: number;
    readonly trailArm: number;
  };
}

/** Lengths that never change. */
export interface Build {
  readonly lengths: SegmentLengths;
  readonly stature: number;
  readonly table: BodyTableName;
  /** Middle of the grip to the middle of the face, m. */
  readonly clubLever: number;
}

/** What is said of the stance and of the club's and the head's direction and does not take part in the fit. */
export interface Footing {
  readonly leadHeelX: number;
  readonly trailHeelX: number;
  /** Out positive, rad. */
  readonly leadFlare: number;
  readonly trailFlare: number;
  /** Of the line of the toes, to the right positive, rad. */
  readonly stanceDirection: number;
  readonly trailHeelLift: number;
  readonly trailFootTurn: number;
  /** Where the face looks, rad. */
  readonly gaze: number;
  /** Grip to head where nothing turns it, and heel to toe of the head. */
  readonly shaft: Vector;
  readonly toe: Vector;
}

/** Middle of the head above the base of the neck, and the base of the neck above the shoulders, over stature: ear canal at 0.936 (from
 * memory), shoulders at 0.818. The ear is half a head's breadth from the middle. Judgement. */
const above = { neck: 0.02, head: 0.098 };
const halfHead = 0.065;
/** Half a hand's breadth from the middle of the grip to the middle of each hand, m. Judgement, as in `armLength`. */
export const gripToHand = 0.045;
/** Half the hand, closed round the grip. */
const gripOfHand = 0.5;
/** Distance of the hip joints over the breadth of the hips, as in `centreOfMassAlongTarget`. */
const hipJoints = 0.5;

/** @returns undefined unless stature and lever are positive. */
export function buildOf(stature: number, table: BodyTableName, clubLever: number): Build | undefined {
  const lengths = segmentLengths(stature);
  return lengths && clubLever > 0 ? { lengths, stature, table, clubLever } : undefined;
}

export function armBones({ lengths }: Build): readonly [number, number] {
  return [lengths.upperArm, lengths.forearm + gripOfHand * lengths.hand];
}

export function legBones({ lengths }: Build): readonly [number, number] {
  return [lengths.thigh, lengths.shank];
}

/** From the line through the hips to that through the shoulders, along the trunk, m. */
export function trunkLength({ lengths }: Build): number {
  return lengths.shoulderHeight - lengths.hipHeight;
}

export function feetOn(
  build: Build,
  footing: Footing,
  toeLine: number,
): { readonly lead: Foot; readonly trail: Foot } {
  const { leadHeelX, trailHeelX, leadFlare, trailFlare, stanceDirection } = footing;
  const size = { length: build.lengths.foot, ankleHeight: build.lengths.ankleHeight };
  const middle = (leadHeelX + trailHeelX) / 2;
  const reach = 0.79 * size.length;
  const heelY = (x: number, flare: number, toeX: number): number =>
    toeLine - (x + toeX - middle) * Math.tan(stanceDirection) + reach * Math.cos(flare);
  return {
    lead: footOn(
      { x: leadHeelX, y: heelY(leadHeelX, leadFlare, reach * Math.sin(leadFlare)) },
      leadFlare,
      size,
      0,
      0,
    ),
    trail: footOn(
      { x: trailHeelX, y: heelY(trailHeelX, trailFlare, -reach * Math.sin(trailFlare)) },
      -trailFlare,
      size,
      footing.trailHeelLift,
      footing.trailFootTurn,
    ),
  };
}

/**
 * The joints. The trunk is a line from the middle of the hips to the base of the neck; face-on it stands at the spine's tilt and down
 * the line at its bend. Shoulders and hips turn about the vertical; the shoulders stand square to the spine but for their slant.
 * Legs and arms are limbs of two bones; knees bend toward the toes, elbows away from the front of the chest.
 */
export function skeletonOf(build: Build, footing: Footing, at: Freedoms): Skeleton {
  const { stature, lengths } = build;
  const pelvis = vector(at.pelvisX, at.pelvisY, at.pelvisZ);
  const hipSide = sideways(at.pelvisTurn, at.pelvisList);
  const hips = lengths.hipBreadth * hipJoints * 0.5;
  const up = leaning(at.spineTilt, at.forwardBend);
  const shoulderSide = sideways(at.shoulderTurn, squareSlant(up, at.shoulderTurn) + at.shoulderSlant);
  const chest = frameOf(shoulderSide, up);
  const shoulders = add(add(pelvis, scale(up, trunkLength(build))), scale(shoulderSide, at.girdle));
  const neck = add(pelvis, scale(up, trunkLength(build) + above.neck * stature));
  const half = halfShoulders(stature);
  const leadShoulder = add(shoulders, scale(shoulderSide, half));
  const trailShoulder = add(shoulders, scale(shoulderSide, -half));
  const sternum = add(
    add(pelvis, scale(up, trunkLength(build) * (1 - trunkShares[build.table].sternum))),
    scale(chest.front, chestDepth.value),
  );
  const headUp = leaning(at.spineTilt - at.neckTilt, at.forwardBend + at.neckBend);
  const headFrame = frameOf(squareTo(sideways(footing.gaze, 0), headUp), headUp);
  const head = add(neck, scale(headUp, above.head * stature));

  const feet = feetOn(build, footing, at.toeLine);
  const facing = vector(-Math.sin(at.pelvisTurn), -Math.cos(at.pelvisTurn), 0);
  const leg = (hip: Vector, foot: Foot, out: number) =>
    limb(
      hip,
      foot.ankle,
      legBones(build),
      add(scale(unit(minus(foot.toe, foot.heel)), 0.7), scale(facing, 0.3)),
      out,
    );
  const leadHip = add(pelvis, scale(hipSide, hips));
  const trailHip = add(pelvis, scale(hipSide, -hips));
  const leadLeg = leg(leadHip, feet.lead, at.leadKneeOut);
  const trailLeg = leg(trailHip, feet.trail, at.trailKneeOut);

  const grip = vector(at.handsX, at.handsY, at.handsZ);
  const shaft = turnedOff(unit(footing.shaft), at.shaftAside, at.shaftAcross);
  const arm = (shoulder: Vector, along: number, outward: number, out: number) => {
    const pole = add(add(scale(chest.front, -0.5), scale(shoulderSide, outward)), scale(up, -0.8));
    return limb(shoulder, add(grip, scale(shaft, along)), armBones(build), pole, out);
  };
  const leadArm = arm(leadShoulder, -gripToHand, 0.5, at.leadElbowOut);
  const trailArm = arm(trailShoulder, gripToHand, -0.5, at.trailElbowOut);
  const wrist = (elbow: Vector, hand: Vector) => add(elbow, scale(unit(minus(hand, elbow)), lengths.forearm));

  return {
    joints: {
      pelvis,
      leadHip,
      trailHip,
      leadKnee: leadLeg.middle,
      trailKnee: trailLeg.middle,
      leadAnkle: leadLeg.end,
      trailAnkle: trailLeg.end,
      leadHeel: feet.lead.heel,
      trailHeel: feet.trail.heel,
      leadBall: feet.lead.ball,
      trailBall: feet.trail.ball,
      leadToe: feet.lead.toe,
      trailToe: feet.trail.toe,
      shoulders,
      neck,
      sternum,
      leadShoulder,
      trailShoulder,
      leadElbow: leadArm.middle,
      trailElbow: trailArm.middle,
      leadWrist: wrist(leadArm.middle, leadArm.end),
      trailWrist: wrist(trailArm.middle, trailArm.end),
      leadHand: leadArm.end,
      trailHand: trailArm.end,
      head,
      leadEar: add(head, scale(headFrame.side, halfHead)),
      grip,
      gripEnd: add(grip, scale(shaft, -0.1)),
      clubHead: add(grip, scale(shaft, build.clubLever)),
    },
    pelvis: frameOf(hipSide, up),
    chest,
    head: headFrame,
    clubToe: squareTo(footing.toe, shaft),
    short: {
      leadLeg: leadLeg.short,
      trailLeg: trailLeg.short,
      leadArm: leadArm.short,
      trailArm: trailArm.short,
    },
  };
}

/** Up along a line that leans away from the target by `tilt` face-on and forward by `bend` down the line. */
function leaning(tilt: number, bend: number): Vector {
  return unit(vector(-Math.tan(tilt) * Math.cos(bend), -Math.sin(bend), Math.cos(bend)));
}

/** Toward the lead side: turned about the vertical, then raised. */
function sideways(turn: number, rise: number): Vector {
  return vector(Math.cos(rise) * Math.cos(turn), -Math.cos(rise) * Math.sin(turn), Math.sin(rise));
}

/** How much a line of that turn rises when it is square to the spine, rad. */
function squareSlant(up: Vector, turn: number): number {
  return Math.atan2(up.y * Math.sin(turn) - up.x * Math.cos(turn), Math.max(0.05, up.z));
}

function frameOf(side: Vector, along: Vector): Frame {
  const front = unit(cross(side, along));
  return { side, front, up: unit(cross(front, side)) };
}

/** A direction turned off by an angle whose two parts are square to it: any direction can be reached. */
function turnedOff(direction: Vector, aside: number, across: number): Vector {
  const angle = Math.hypot(aside, across);
  if (angle < 1e-12) return direction;
  const one = squareTo(vector(0, 1, 0), direction);
  const other = cross(direction, one);
  const off = scale(add(scale(one, aside), scale(other, across)), 1 / angle);
  const turned = add(scale(direction, Math.cos(angle)), scale(off, Math.sin(angle)));
  return scale(turned, 1 / norm(turned));
}
