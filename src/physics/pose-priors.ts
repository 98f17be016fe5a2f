// What a posture usually looks like at each checkpoint, for the parts of a figure that nobody recorded: common practice, no source.
import { balancePriors, type SwingCheckpoint } from './balance-priors.ts';
import { vector, type Vector } from './vector.ts';

/** As for a right-handed player: x toward the target, y away from the ball, z up. Angles in rad, places over stature. */
export interface PosePrior {
  /** Middle of the hips from the middle of the heels, as a share of the stance width, toward the target. */
  readonly pelvisShift: number;
  /** Middle of the hips inside the toe line. */
  readonly pelvisDepth: number;
  /** Closed positive. */
  readonly pelvisTurn: number;
  /** Lead hip higher positive. */
  readonly pelvisList: number;
  /** Away from the target positive. */
  readonly spineTilt: number;
  readonly forwardBend: number;
  /** Closed positive; that of `balancePriors`. */
  readonly shoulderTurn: number;
  /** The shoulders off the square to the spine, lead shoulder higher positive. */
  readonly shoulderSlant: number;
  /** The neck off the spine's line: toward the target, and forward. */
  readonly neckTilt: number;
  readonly neckBend: number;
  /** Where the face looks, as shoulders turn: 0 across the target line, closed positive. */
  readonly gaze: number;
  /** Middle of the grip from the middle between the shoulders. */
  readonly hands: Vector;
  readonly leadElbowBend: number;
  readonly trailElbowBend: number;
  readonly leadKneeBend: number;
  readonly trailKneeBend: number;
  /** From the grip to the head; undefined where the head is at the ball and the lie of the club says it. */
  readonly shaft: Vector | undefined;
  /** From heel to toe of the club head. */
  readonly toe: Vector;
  /** The trail foot's sole off the ground, and how far that foot has turned toward the target on its ball. */
  readonly trailHeelLift: number;
  readonly trailFootTurn: number;
}

/** How far a posture may well be from these: standard deviations, places over stature. Judgement. */
export const poseSpread = {
  pelvisShift: 0.02,
  pelvisDepth: 0.025,
  turn: 0.2,
  list: 0.07,
  tilt: 0.1,
  slant: 0.1,
  neck: 0.12,
  hands: 0.055,
  elbow: 0.12,
  trailElbow: 0.35,
  knee: 0.14,
  shaft: 0.2,
  swivel: 0.3,
  girdle: 0.01,
  /** Hands outside the toe line at address. */
  handDepth: 0.05,
} as const;

/** Middle of the grip outside the toe line at address, over stature. Common practice, no source. */
export const handsOutsideToes = 0.07;

/** The leaning of the shaft where the head is at the ball, rad; its slope is the lie of the club less some. Common practice, no source. */
export const shaftAtBall = {
  address: { lean: 0.05, belowLie: 0.07 },
  impact: { lean: 0.09, belowLie: 0 },
} as const;

const degree = Math.PI / 180;

export const posePriors: Readonly<Record<SwingCheckpoint, PosePrior>> = {
  address: row('address', {
    pelvis: [0.02, 0.145, 0, 0],
    spine: [7, 35, 4],
    head: [1, 12, 0],
    hands: [0.01, -0.13, -0.32],
    bends: [8, 16, 22, 22],
    shaft: undefined,
    toe: [0, -1, 0.4],
    trailFoot: [0, 0],
  }),
  takeaway: row('takeaway', {
    pelvis: [0, 0.147, 12, -2],
    spine: [6, 35, 4],
    head: [2, 12, 4],
    hands: [-0.17, -0.11, -0.28],
    bends: [6, 22, 25, 21],
    shaft: [-1, 0.04, 0],
    toe: [0, -0.2, 1],
    trailFoot: [0, 0],
  }),
  lead_arm_parallel_back: row('lead_arm_parallel_back', {
    pelvis: [-0.03, 0.15, 34, -6],
    spine: [4, 34, 4],
    head: [4, 12, 9],
    hands: [-0.33, 0.02, -0.05],
    bends: [8, 68, 31, 17],
    shaft: [-0.12, 0.42, 0.9],
    toe: [1, 0, 0],
    trailFoot: [0, 0],
  }),
  top: row('top', {
    pelvis: [-0.02, 0.15, 46, -8],
    spine: [3, 32, 4],
    head: [4, 12, 16],
    hands: [-0.19, 0.16, 0.16],
    bends: [12, 96, 34, 15],
    shaft: [0.93, 0.1, 0.27],
    toe: [0.2, -0.3, -1],
    trailFoot: [0, 0],
  }),
  lead_arm_parallel_down: row('lead_arm_parallel_down', {
    pelvis: [0.14, 0.14, 14, 0],
    spine: [11, 33, 2],
    head: [2, 12, 8],
    hands: [-0.29, 0.05, -0.03],
    bends: [8, 88, 32, 30],
    shaft: [0.12, 0.52, 0.85],
    toe: [0.8, -0.2, 0],
    trailFoot: [0, 0],
  }),
  shaft_parallel_down: row('shaft_parallel_down', {
    pelvis: [0.22, 0.13, -14, 5],
    spine: [16, 31, 0],
    head: [0, 12, 4],
    hands: [-0.1, -0.07, -0.29],
    bends: [8, 58, 24, 34],
    shaft: [-1, 0.06, 0],
    toe: [0, -0.35, 1],
    trailFoot: [6, 0],
  }),
  impact: row('impact', {
    pelvis: [0.29, 0.12, -38, 8],
    spine: [20, 28, 2],
    head: [-2, 14, 2],
    hands: [0.09, -0.13, -0.3],
    bends: [6, 34, 12, 38],
    shaft: undefined,
    toe: [0, -1, 0.4],
    trailFoot: [16, 8],
  }),
  shaft_parallel_through: row('shaft_parallel_through', {
    pelvis: [0.36, 0.11, -62, 8],
    spine: [22, 22, 0],
    head: [-4, 12, -28],
    hands: [0.26, -0.05, -0.24],
    bends: [12, 10, 6, 42],
    shaft: [1, 0.06, 0],
    toe: [0, -0.2, 1],
    trailFoot: [34, 28],
  }),
  finish: row('finish', {
    pelvis: [0.46, 0.1, -96, 0],
    spine: [4, -4, 0],
    head: [0, 0, -92],
    hands: [0.06, 0.13, 0.13],
    bends: [95, 80, 4, 52],
    shaft: [-0.5, -0.55, -0.55],
    toe: [-0.4, 0, -1],
    trailFoot: [72, 74],
  }),
};

type Three = readonly [number, number, number];

interface Row {
  /** Shift, depth, turn and list. */
  readonly pelvis: readonly [number, number, number, number];
  /** Tilt, bend, and the shoulders' slant. */
  readonly spine: Three;
  /** Tilt and bend of the neck, and the gaze. */
  readonly head: Three;
  readonly hands: Three;
  /** Lead and trail elbow, lead and trail knee. */
  readonly bends: readonly [number, number, number, number];
  readonly shaft: Three | undefined;
  readonly toe: Three;
  /** Lift and turn. */
  readonly trailFoot: readonly [number, number];
}

function row(
  at: SwingCheckpoint,
  { pelvis, spine, head, hands, bends, shaft, toe, trailFoot }: Row,
): PosePrior {
  return {
    pelvisShift: pelvis[0],
    pelvisDepth: pelvis[1],
    pelvisTurn: pelvis[2] * degree,
    pelvisList: pelvis[3] * degree,
    spineTilt: spine[0] * degree,
    forwardBend: spine[1] * degree,
    shoulderTurn: balancePriors[at].shoulderTurn.value,
    shoulderSlant: spine[2] * degree,
    neckTilt: head[0] * degree,
    neckBend: head[1] * degree,
    gaze: head[2] * degree,
    hands: vector(...hands),
    leadElbowBend: bends[0] * degree,
    trailElbowBend: bends[1] * degree,
    leadKneeBend: bends[2] * degree,
    trailKneeBend: bends[3] * degree,
    shaft: shaft && vector(...shaft),
    toe: vector(...toe),
    trailHeelLift: trailFoot[0] * degree,
    trailFootTurn: trailFoot[1] * degree,
  };
}
