// How high on the face the ball is met, and the word for it; knows nothing of how the head came there.
import type { HeadKind } from './heads.ts';

export interface Face {
  /** Middle of the face above the leading edge, along the face, m. */
  readonly centreHeight: number;
  /** How far the leading edge stands above the lowest point of the sole at the strike, m. */
  readonly edgeAboveSole: number;
  /** Standard uncertainty of the two together, m. */
  readonly u: number;
  readonly source: string;
}

const judgement = 'judgement: common sizes of such faces, no measured head behind it';

/** Representative faces by kind of club. */
export const faces: Readonly<Record<HeadKind, Face>> = {
  driver: { centreHeight: 0.029, edgeAboveSole: 0.003, u: 0.003, source: judgement },
  fairway: { centreHeight: 0.019, edgeAboveSole: 0.002, u: 0.003, source: judgement },
  hybrid: { centreHeight: 0.018, edgeAboveSole: 0.002, u: 0.003, source: judgement },
  iron: { centreHeight: 0.019, edgeAboveSole: 0.002, u: 0.003, source: judgement },
  wedge: { centreHeight: 0.021, edgeAboveSole: 0.003, u: 0.004, source: judgement },
};

export interface EdgeAtBall {
  /** Height of the leading edge above the lowest point of the ball, m; negative where it is below. */
  readonly edgeHeight: number;
  /** Elevation of the face normal at the strike, rad. */
  readonly loft: number;
  /** m */
  readonly ballRadius: number;
}

/**
 * Where a flat face meets the ball, from the leading edge along the face, m: (r (1 − sin λ) − h)/cos λ.
 * The ball is touched r sin λ below its middle; from the edge the face climbs by cos λ for each unit of its own length. Plane
 * geometry, exact for a flat face; a roll of 0.3 m changes it by less than 1 mm. Negative where the edge
 * comes in above the point of contact: the ball is topped.
 *
 * @returns undefined for a loft outside ±85°, where nothing is met, or a radius that is not positive.
 */
export function strikeFromEdge({ edgeHeight, loft, ballRadius }: EdgeAtBall): number | undefined {
  if (!(Math.abs(loft) < (85 / 180) * Math.PI && ballRadius > 0)) return undefined;
  const along = (ballRadius * (1 - Math.sin(loft)) - edgeHeight) / Math.cos(loft);
  return Number.isFinite(along) ? along : undefined;
}

/**
 * The strike above the middle of the face, m, low negative: its distance from the leading edge less that of the middle.
 *
 * @param soleHeight of the lowest point of the sole above the ground at the ball, m. @param ballHeight of the lowest point
 * of the ball above the ground, m: 0 off the turf, the height of the tee else.
 */
export function strikeHeight(
  at: { readonly soleHeight: number; readonly ballHeight: number } & Pick<EdgeAtBall, 'loft' | 'ballRadius'>,
  face: Pick<Face, 'centreHeight' | 'edgeAboveSole'>,
): number | undefined {
  const edgeHeight = at.soleHeight + face.edgeAboveSole - at.ballHeight;
  const along = strikeFromEdge({ edgeHeight, loft: at.loft, ballRadius: at.ballRadius });
  if (along === undefined) return undefined;
  const height = along - face.centreHeight;
  return Number.isFinite(height) ? height : undefined;
}

/** Height of the sole that gives such a strike, m; the inverse of `strikeHeight`. */
export function soleHeightFromStrike(
  at: { readonly height: number; readonly ballHeight: number } & Pick<EdgeAtBall, 'loft' | 'ballRadius'>,
  face: Pick<Face, 'centreHeight' | 'edgeAboveSole'>,
): number | undefined {
  const level = { soleHeight: 0, ballHeight: at.ballHeight, loft: at.loft, ballRadius: at.ballRadius };
  const withSoleOnGround = strikeHeight(level, face);
  if (withSoleOnGround === undefined) return undefined;
  const height = (withSoleOnGround - at.height) * Math.cos(at.loft);
  return Number.isFinite(height) ? height : undefined;
}

export type StrikeWord = 'thin' | 'heavy' | 'centred' | 'high';

/** From where on a strike gets its word, m. All common practice, no source. */
export const strikeThresholds = {
  /** Ground taken this far behind the ball is heavy: turf gets between face and ball. */
  heavyEntryBehind: 0.03,
  /** A strike this far below the middle of the face is thin. */
  thinBelow: 0.008,
  /** A strike this far above the middle of the face is high. */
  highAbove: 0.01,
} as const;

/**
 * The word for a strike. Heavy goes before all else, since the turf was there first.
 *
 * @param height of the strike above the middle of the face, m. @param entry where the sole enters the ground ahead of
 * the ball, m, behind negative; undefined where it stays above.
 */
export function wordForStrike(height: number, entry: number | undefined): StrikeWord | undefined {
  if (!Number.isFinite(height)) return undefined;
  if (entry !== undefined && entry < -strikeThresholds.heavyEntryBehind) return 'heavy';
  if (height < -strikeThresholds.thinBelow) return 'thin';
  return height > strikeThresholds.highAbove ? 'high' : 'centred';
}
