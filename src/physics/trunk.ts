// The trunk seen face-on as a line from the shoulders to the hips, and where breastbone and lead shoulder stand on it; knows nothing of mass.
import { lengthShares, type BodyTableName } from './body-tables.ts';

/**
 * Along the trunk's axis from the line through the shoulder joints (0) to that through the hip joints (1): its centre of mass, and the
 * middle of the breastbone. Winter's centre counts from the shoulder joint as given. The others are table 4 of de Leva 1996 for these
 * two ends (from memory; they fall on the same point as its rows from the top of the breastbone), the breastbone from the
 * lengths there: to the hips from the top of the breastbone 531.9 and from the shoulders 515.5 mm, breastbone 170.7 mm in men;
 * 529.3, 497.9, 142.5 mm in women (from memory). For Winter's table the breastbone is by judgement.
 */
export const trunkShares: Readonly<
  Record<BodyTableName, { readonly centre: number; readonly sternum: number }>
> = {
  female: { centre: 0.3782, sternum: 0.08 },
  male: { centre: 0.431, sternum: 0.134 },
  winter: { centre: 0.5, sternum: 0.1 },
};

/** Middle of the breastbone in front of the trunk's axis, m; a turned chest carries it sideways. */
export const chestDepth = {
  value: 0.09,
  u: 0.02,
  source: 'judgement: a chest some 20 to 24 cm deep, its axis nearer the back',
} as const;

/** What a chest that is only known from the lead shoulder is off by, m, and the other way round. */
export const shoulderToChestUncertainty = {
  value: 0.035,
  source: 'judgement: shoulder girdles move a few centimetres on the trunk and tilt out of level',
} as const;

/** The joints lie inside the points between which the breadth of the shoulders is measured. Judgement. */
const jointsOfBreadth = 0.87;

/**
 * Trunk's axis at the height of the breastbone, m: sternum + 0.09 sin(turn).
 *
 * @param sternum m, along the target line. @param turn of the shoulders away from the target, rad.
 */
export function chestFromSternum(sternum: number, turn: number): number {
  return sternum + chestDepth.value * Math.sin(turn);
}

/** Trunk's axis at the breastbone from the lead shoulder joint, m: the middle of the shoulders, then down the axis. */
export function chestFromLeadShoulder(
  table: BodyTableName,
  stature: number,
  at: { readonly leadShoulder: number; readonly pelvis: number; readonly turn: number },
): number {
  const middle = at.leadShoulder - halfShoulders(stature) * Math.cos(at.turn);
  return middle + trunkShares[table].sternum * (at.pelvis - middle);
}

/**
 * Lead shoulder joint along the target line from breastbone, pelvis and turn, m: the inverse of `chestFromLeadShoulder`.
 * Good to `shoulderToChestUncertainty`.
 *
 * @param stature m. @returns undefined unless all is finite and the stature positive.
 */
export function leadShoulderFrom(
  table: BodyTableName,
  stature: number,
  at: { readonly sternum: number; readonly pelvis: number; readonly turn: number },
): number | undefined {
  if (!(stature > 0)) return undefined;
  const share = trunkShares[table].sternum;
  const middle = (chestFromSternum(at.sternum, at.turn) - share * at.pelvis) / (1 - share);
  const place = middle + halfShoulders(stature) * Math.cos(at.turn);
  return Number.isFinite(place) ? place : undefined;
}

/** Half the distance of the shoulder joints, m. */
export function halfShoulders(stature: number): number {
  return 0.5 * jointsOfBreadth * lengthShares.shoulderBreadth * stature;
}
