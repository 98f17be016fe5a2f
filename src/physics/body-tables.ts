// Published tables of segment masses, centres of mass and lengths; knows nothing of posture or of golf.

export type BodyTableName = 'female' | 'male' | 'winter';
export type SegmentName = 'head' | 'trunk' | 'upperArm' | 'forearm' | 'hand' | 'thigh' | 'shank' | 'foot';

export interface SegmentRow {
  /** Mass of one such segment over the body's mass. */
  readonly mass: number;
  /** Where the centre of mass lies on the way from `proximal` (0) to `distal` (1). */
  readonly centre: number;
  /** The point from which the table counts. */
  readonly proximal: string;
  /** The point toward which the table counts. */
  readonly distal: string;
}

export interface BodyTable {
  readonly source: string;
  readonly segments: Readonly<Record<SegmentName, SegmentRow>>;
}

/** How many of each the body has. */
export const segmentCounts: Readonly<Record<SegmentName, 1 | 2>> = {
  head: 1,
  trunk: 1,
  upperArm: 2,
  forearm: 2,
  hand: 2,
  thigh: 2,
  shank: 2,
  foot: 2,
};

function row(mass: number, centre: number, proximal: string, distal: string): SegmentRow {
  return { mass, centre, proximal, distal };
}

/**
 * The tables by name. They differ by up to 48 % in the mass of the thigh (0.100 against 0.1478), so whoever shows a centre of mass
 * says which was taken. `head` and `trunk` are cut differently in the two sources: the ends are named in each row.
 */
export const bodyTables: Readonly<Record<BodyTableName, BodyTable>> = {
  female: {
    source: 'de Leva 1996, J. Biomech. 29:1223, table 4, women',
    segments: {
      head: row(0.0668, 0.5894, 'vertex', 'middle between the angles of the jaw'),
      trunk: row(0.4257, 0.4151, 'top of the breastbone', 'middle between the hip joints'),
      upperArm: row(0.0255, 0.5754, 'shoulder joint', 'elbow joint'),
      forearm: row(0.0138, 0.4559, 'elbow joint', 'wrist joint'),
      hand: row(0.0056, 0.7474, 'wrist joint', 'third knuckle'),
      thigh: row(0.1478, 0.3612, 'hip joint', 'knee joint'),
      shank: row(0.0481, 0.4416, 'knee joint', 'outer ankle'),
      foot: row(0.0129, 0.4014, 'heel', 'tip of the longest toe'),
    },
  },
  male: {
    source: 'de Leva 1996, J. Biomech. 29:1223, table 4, men',
    segments: {
      head: row(0.0694, 0.5976, 'vertex', 'middle between the angles of the jaw'),
      trunk: row(0.4346, 0.4486, 'top of the breastbone', 'middle between the hip joints'),
      upperArm: row(0.0271, 0.5772, 'shoulder joint', 'elbow joint'),
      forearm: row(0.0162, 0.4574, 'elbow joint', 'wrist joint'),
      hand: row(0.0061, 0.79, 'wrist joint', 'third knuckle'),
      thigh: row(0.1416, 0.4095, 'hip joint', 'knee joint'),
      shank: row(0.0433, 0.4459, 'knee joint', 'outer ankle'),
      foot: row(0.0137, 0.4415, 'heel', 'tip of the longest toe'),
    },
  },
  winter: {
    source: 'Winter, Biomechanics and Motor Control of Human Movement, table 4.1 (after Dempster)',
    segments: {
      head: row(0.081, 1, 'base of the neck', 'ear canal'),
      trunk: row(0.497, 0.5, 'hip, at the greater trochanter', 'shoulder joint'),
      upperArm: row(0.028, 0.436, 'shoulder joint', 'elbow joint'),
      forearm: row(0.016, 0.43, 'elbow joint', 'wrist joint'),
      hand: row(0.006, 0.506, 'wrist joint', 'second knuckle of the middle finger'),
      thigh: row(0.1, 0.433, 'hip, at the greater trochanter', 'knee joint'),
      shank: row(0.0465, 0.433, 'knee joint', 'inner ankle'),
      foot: row(0.0145, 0.5, 'outer ankle', 'head of the second metatarsal'),
    },
  },
};

/**
 * Lengths and heights over stature.
 * Source: Drillis & Contini 1966, as in Winter, Biomechanics and Motor Control of Human Movement, figure 4.1.
 */
export const lengthShares = {
  shoulderHeight: 0.818,
  hipHeight: 0.53,
  kneeHeight: 0.285,
  ankleHeight: 0.039,
  upperArm: 0.186,
  forearm: 0.146,
  /** Wrist to fingertip. */
  hand: 0.108,
  shoulderBreadth: 0.259,
  hipBreadth: 0.191,
  foot: 0.152,
  thigh: 0.245,
  shank: 0.246,
} as const;

export type LengthName = keyof typeof lengthShares;
