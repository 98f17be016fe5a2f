// Where the centre of mass lies along the target line, from what a lesson record holds; knows nothing of pressure.
import { balancePriors, type SwingCheckpoint } from './balance-priors.ts';
import { bodyTables, lengthShares, type BodyTableName } from './body-tables.ts';
import type { Feet } from './feet.ts';
import {
  chestDepth,
  chestFromLeadShoulder,
  chestFromSternum,
  halfShoulders,
  shoulderToChestUncertainty,
  trunkShares,
} from './trunk.ts';

/** Places along the target line from the ball, m, ahead positive, but for the knee and the turn. */
export interface Landmarks {
  /** Middle between the hip joints. */
  readonly pelvis?: number | undefined;
  /** Middle of the breastbone. */
  readonly sternum?: number | undefined;
  /** Lead ear. */
  readonly head?: number | undefined;
  readonly leadShoulder?: number | undefined;
  /** Middle of the grip between the hands. */
  readonly hands?: number | undefined;
  /** From the lead ankle. */
  readonly leadKnee?: number | undefined;
  /** Turn of the shoulders away from the target, rad. */
  readonly shoulderTurn?: number | undefined;
}

export type LandmarkName = keyof Landmarks;

export interface CentreOfMass {
  /** Ahead of the ball along the target line, m. */
  readonly value: number;
  /** Standard uncertainty of what was assumed and of the model, m; that of the landmarks themselves is the caller's. */
  readonly u: number;
  /** What no record said, so that a regression or a prior stands for it. */
  readonly assumed: readonly LandmarkName[];
}

/** Share of each point in the body's centre of mass; they sum to 1, since moving all of them moves it as far. */
export interface CentreWeights {
  readonly head: number;
  /** Trunk's axis at the height of the middle of the breastbone. */
  readonly chest: number;
  readonly pelvis: number;
  readonly hands: number;
  /** Each knee. */
  readonly knee: number;
  /** Each ankle, with its foot. */
  readonly ankle: number;
}

/** Lead ear ahead of the middle of the head that looks at the ball: half a head's breadth. Judgement, m. */
const earAhead = { value: 0.065, u: 0.02 };
/**
 * How far the head lies beyond the chest, as a share of the way from pelvis to chest: ear canal at 0.936 H (from memory), hips at
 * 0.530 H, middle of the breastbone 0.26 H above them: 0.406/0.26 − 1. The neck bends, hence u, in m.
 */
const headBeyondChest = { share: 0.56, u: 0.05 };
/** Distance of the hip joints over the breadth of the hips, which is measured outside the thighs. Judgement. */
const jointsOfBreadth = 0.5;
/** How far along the way from hip to ankle the knee is: Drillis & Contini. */
const kneeAlongLeg = lengthShares.thigh / (lengthShares.thigh + lengthShares.shank);

/** The shares by table; of the body alone, without the club (0.5 % of the mass). */
export const centreWeights: Readonly<Record<BodyTableName, CentreWeights>> = {
  female: weightsFrom('female'),
  male: weightsFrom('male'),
  winter: weightsFrom('winter'),
};

/** Those without which no centre of mass is given: the pelvis, and the chest or the lead shoulder. */
export function missingForCentreOfMass(landmarks: Landmarks): readonly LandmarkName[] {
  const missing: LandmarkName[] = [];
  if (landmarks.pelvis === undefined) missing.push('pelvis');
  if (landmarks.sternum === undefined && landmarks.leadShoulder === undefined) missing.push('sternum');
  return missing;
}

/**
 * Centre of mass along the target line: Σ wᵢ xᵢ with the weights of the table.
 *
 * Arms: both run from the shoulder line to the hands along a chord, elbows and wrists at their share of the way; both
 * hands are where the grip is. The two shoulders cancel to the middle of the trunk's axis. Legs: hips to knees to ankles,
 * ankles over the heels. Trunk: along the line from chest to pelvis, the breastbone brought back to the axis by
 * chestDepth · sin(turn). Head: half a head behind the lead ear.
 *
 * Where the record has no chest, the lead shoulder stands for it; where it has no head, it goes on along the trunk's line;
 * hands, turn and knees come from the prior of the checkpoint. Each of these is named in `assumed` and counted in `u`.
 *
 * @param stature m. @param feet where the heels stand.
 * @returns undefined where `missingForCentreOfMass` is not empty or a number is not finite.
 */
export function centreOfMassAlongTarget(
  landmarks: Landmarks,
  feet: Pick<Feet, 'leadHeel' | 'trailHeel'>,
  table: BodyTableName,
  stature: number,
  checkpoint: SwingCheckpoint,
): CentreOfMass | undefined {
  const { pelvis, sternum, leadShoulder } = landmarks;
  if (pelvis === undefined || !(stature > 0)) return undefined;
  const weights = centreWeights[table];
  const priors = balancePriors[checkpoint];
  const assumed: LandmarkName[] = [];
  let variance = priors.discrepancy * priors.discrepancy;
  const take = (name: LandmarkName, weight: number, value: number, u: number) => {
    assumed.push(name);
    variance += weight * weight * u * u;
    return value;
  };

  // A head that is assumed goes on from the chest, and moves further than it.
  const chestWeight =
    weights.chest + (landmarks.head === undefined ? weights.head * (1 + headBeyondChest.share) : 0);
  const turn = landmarks.shoulderTurn ?? priors.shoulderTurn.value;
  let chest: number;
  let chestPerTurn: number;
  if (sternum !== undefined) {
    chest = chestFromSternum(sternum, turn);
    chestPerTurn = chestDepth.value * Math.cos(turn);
    variance += (chestWeight * Math.sin(turn) * chestDepth.u) ** 2;
  } else if (leadShoulder !== undefined) {
    const place = chestFromLeadShoulder(table, stature, { leadShoulder, pelvis, turn });
    chest = take('sternum', chestWeight, place, shoulderToChestUncertainty.value);
    chestPerTurn = (1 - trunkShares[table].sternum) * halfShoulders(stature) * Math.sin(turn);
  } else return undefined;
  if (landmarks.shoulderTurn === undefined) {
    take('shoulderTurn', chestWeight * chestPerTurn, turn, priors.shoulderTurn.u);
  }

  let head: number;
  if (landmarks.head === undefined) {
    head = take('head', weights.head, chest + headBeyondChest.share * (chest - pelvis), headBeyondChest.u);
  } else {
    head = landmarks.head - earAhead.value;
    variance += (weights.head * earAhead.u) ** 2;
  }
  const hands = landmarks.hands ?? take('hands', weights.hands, priors.hands.value, priors.hands.u);

  const hip = 0.5 * jointsOfBreadth * lengthShares.hipBreadth * stature;
  const { leadHeel, trailHeel } = feet;
  const leadKnee =
    landmarks.leadKnee === undefined
      ? take(
          'leadKnee',
          weights.knee,
          alongLeg(pelvis + hip, leadHeel) + priors.leadKnee.value,
          priors.leadKnee.u,
        )
      : leadHeel + landmarks.leadKnee;
  // No record has a place for the trail knee, so it is part of the model and not named as missing.
  const trailKnee = alongLeg(pelvis - hip, trailHeel) + priors.trailKnee.value;
  variance += (weights.knee * priors.trailKnee.u) ** 2;

  const value =
    weights.head * head +
    weights.chest * chest +
    weights.pelvis * pelvis +
    weights.hands * hands +
    weights.knee * (leadKnee + trailKnee) +
    weights.ankle * (leadHeel + trailHeel);
  const u = Math.sqrt(variance);
  return Number.isFinite(value) && Number.isFinite(u) ? { value, u, assumed } : undefined;
}

function alongLeg(hip: number, ankle: number): number {
  return hip + kneeAlongLeg * (ankle - hip);
}

function weightsFrom(table: BodyTableName): CentreWeights {
  const { segments } = bodyTables[table];
  const trunk = trunkShares[table];
  const chord = lengthShares.upperArm + lengthShares.forearm + 0.5 * lengthShares.hand;
  const elbow = lengthShares.upperArm / chord;
  const wrist = (lengthShares.upperArm + lengthShares.forearm) / chord;
  const { upperArm, forearm, hand, thigh, shank, foot } = segments;
  const alongArm =
    upperArm.mass * upperArm.centre * elbow +
    forearm.mass * (elbow + forearm.centre * (wrist - elbow)) +
    hand.mass;
  const arms = 2 * (upperArm.mass + forearm.mass + hand.mass);
  const hands = 2 * alongArm;
  const shoulders = arms - hands;
  // A point at s along the trunk's axis, written as a mixture of chest and pelvis.
  const chestShare = (s: number) => (1 - s) / (1 - trunk.sternum);
  const chest = segments.trunk.mass * chestShare(trunk.centre) + shoulders * chestShare(0);
  const pelvis =
    segments.trunk.mass * (1 - chestShare(trunk.centre)) +
    shoulders * (1 - chestShare(0)) +
    2 * thigh.mass * (1 - thigh.centre);
  const knee = thigh.mass * thigh.centre + shank.mass * (1 - shank.centre);
  const ankle = shank.mass * shank.centre + foot.mass;
  const sum = segments.head.mass + chest + pelvis + hands + 2 * (knee + ankle);
  return {
    head: segments.head.mass / sum,
    chest: chest / sum,
    pelvis: pelvis / sum,
    hands: hands / sum,
    knee: knee / sum,
    ankle: ankle / sum,
  };
}
