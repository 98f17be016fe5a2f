// Segment lengths, masses and centres of mass of a player, and how long arm and club are; knows nothing of motion.
import {
  bodyTables,
  lengthShares,
  type BodyTableName,
  type LengthName,
  type SegmentName,
} from './body-tables.ts';
import { add, scale, vector, type Vector } from './vector.ts';

export type SegmentLengths = Readonly<Record<LengthName, number>>;

/** A segment as it lies in space; the ends are those that the table's row names. */
export interface PlacedSegment {
  readonly segment: SegmentName;
  readonly proximal: Vector;
  readonly distal: Vector;
}

export interface BodyCentre {
  /** m */
  readonly centre: Vector;
  /** Mass of the segments that were given over the body's mass: 1 for a whole body. */
  readonly share: number;
}

/** How far from the end of the grip the middle of the grip between the hands lies, m, and how little that is known. */
export const midGripFromEnd = {
  value: 0.1,
  u: 0.015,
  source:
    'judgement: the lead hand starts about 1 cm from the end, both hands overlapping take up some 18 cm of the grip',
} as const;

/** Standard uncertainty of an arm's length that was only taken from the stature, m. */
export const armLengthUncertainty = {
  value: 0.03,
  source: 'judgement: arms of one stature differ by 3 to 4 %, and where the hands lie on the grip by 1 cm',
} as const;

/**
 * Segment lengths and joint heights from stature, m. Source: Drillis & Contini 1966, as in Winter, figure 4.1.
 * Means of adults; one person's segment differs by some 4 % (judgement).
 *
 * @param stature m. @returns undefined unless it is a positive number.
 */
export function segmentLengths(stature: number): SegmentLengths | undefined {
  if (!isSize(stature)) return undefined;
  return {
    shoulderHeight: lengthShares.shoulderHeight * stature,
    hipHeight: lengthShares.hipHeight * stature,
    kneeHeight: lengthShares.kneeHeight * stature,
    ankleHeight: lengthShares.ankleHeight * stature,
    upperArm: lengthShares.upperArm * stature,
    forearm: lengthShares.forearm * stature,
    hand: lengthShares.hand * stature,
    shoulderBreadth: lengthShares.shoulderBreadth * stature,
    hipBreadth: lengthShares.hipBreadth * stature,
    foot: lengthShares.foot * stature,
    thigh: lengthShares.thigh * stature,
    shank: lengthShares.shank * stature,
  };
}

/** Mass of one such segment, kg. @param mass of the body, kg. @returns undefined unless that is a positive number. */
export function segmentMass(table: BodyTableName, segment: SegmentName, mass: number): number | undefined {
  return isSize(mass) ? bodyTables[table].segments[segment].mass * mass : undefined;
}

/**
 * Centre of mass of a segment: the point at the table's share of the way from its proximal to its distal end, m.
 * The ends must be those that the table's row names.
 */
export function segmentCentre(
  table: BodyTableName,
  segment: SegmentName,
  proximal: Vector,
  distal: Vector,
): Vector | undefined {
  const share = bodyTables[table].segments[segment].centre;
  const centre = add(scale(proximal, 1 - share), scale(distal, share));
  return isPlace(centre) ? centre : undefined;
}

/**
 * Centre of mass of the given segments: Σ m r / Σ m. Segments that are not given are left out, not guessed; `share` says how
 * much of the body was given.
 *
 * @returns undefined without segments, or where an end is not a place.
 */
export function wholeBodyCentre(
  table: BodyTableName,
  segments: readonly PlacedSegment[],
): BodyCentre | undefined {
  let moment = vector(0, 0, 0);
  let share = 0;
  for (const { segment, proximal, distal } of segments) {
    const centre = segmentCentre(table, segment, proximal, distal);
    if (centre === undefined) return undefined;
    const mass = bodyTables[table].segments[segment].mass;
    moment = add(moment, scale(centre, mass));
    share += mass;
  }
  if (!(share > 0)) return undefined;
  const centre = scale(moment, 1 / share);
  return isPlace(centre) ? { centre, share } : undefined;
}

/** The lead hand closes round the grip half-way between wrist and fingertips: judgement. */
const gripOfHand = 0.5;
/** From the middle of the lead hand down the shaft to the middle between both hands, m: half a hand's breadth; judgement. */
const fromLeadHand = 0.045;
/** Angle between the line of the lead arm and that of the shaft near the strike, rad: judgement, 30° give or take 10°. */
const armToShaft = Math.PI / 6;

/**
 * From the lead shoulder joint to the middle of the grip between the hands, m: the arm's lever in a two-lever linkage.
 *
 * Two hands on one grip close a loop of arms, but near the strike the lead arm is the one that is nearly straight, and the
 * trail arm, bent, adjusts to it; so the lever is the lead arm alone. Upper arm and forearm (Drillis & Contini) with half of
 * the hand reach the middle of the lead hand's grip; from there to the middle between the hands it goes half a hand's breadth on
 * along the shaft, which stands at about 30° to the arm. A bent elbow shortens the chord by the law of cosines.
 * Good to `armLengthUncertainty`; a measured arm is better.
 *
 * @param stature m. @param elbowBend rad from straight, 0 if left out.
 * @returns undefined unless the stature is a positive number and the bend within (−π, π).
 */
export function armLength(stature: number, elbowBend = 0): number | undefined {
  if (!isSize(stature) || !(Math.abs(elbowBend) < Math.PI)) return undefined;
  const upper = lengthShares.upperArm * stature;
  const lower = (lengthShares.forearm + gripOfHand * lengthShares.hand) * stature;
  return side(side(upper, lower, elbowBend), fromLeadHand, armToShaft);
}

/**
 * From the middle of the grip between the hands to the middle of the face, m: club length − 0.10 m.
 * A club's length runs along the shaft to the ground at the heel. The middle of the face lies some 4.5 cm outward of that point and
 * 2 cm above it, which at a lie of 60° lengthens the lever by 0.5 cm and by 0.15 cm again for lying beside the shaft's line: within
 * the uncertainty of where the hands are (`midGripFromEnd`), so it is left out.
 *
 * @param clubLength m. @returns undefined for a club no longer than that.
 */
export function midGripToHead(clubLength: number): number | undefined {
  const length = clubLength - midGripFromEnd.value;
  return isSize(length) ? length : undefined;
}

/** The far side of a chain of two links that is bent by an angle from straight. */
function side(first: number, second: number, bend: number): number {
  return Math.sqrt(first * first + second * second + 2 * first * second * Math.cos(bend));
}

function isSize(value: number): boolean {
  return value > 0 && Number.isFinite(value * value);
}

function isPlace(place: Vector): boolean {
  return Number.isFinite(place.x) && Number.isFinite(place.y) && Number.isFinite(place.z);
}
