// How the arc of the head cuts the ground, and where the low point was that left a divot; knows nothing of the face.
import { arcAtStrike, attackFromLowPoint, type Arc } from './arc.ts';

export interface GroundCut {
  /** Where the sole enters the ground, ahead of the ball along the arc's base line, m; behind negative. */
  readonly starts: number;
  /** Where it leaves the ground, ahead of the ball, m. */
  readonly ends: number;
  /** m, ≥ 0. */
  readonly length: number;
  /** At the low point, m, ≥ 0. */
  readonly depth: number;
  /** Direction of the line from entry to exit, rad, right positive. */
  readonly direction: number;
}

export interface LowPoint {
  /** Ahead of the ball along the arc's base line, m; behind negative. */
  readonly ahead: number;
  /** How far the sole passes below the ground there, m; above negative. */
  readonly depth: number;
}

/**
 * How a real divot differs from the cut of an undisturbed arc. All by judgement: no measured divot dimensions were found in print.
 * The turf brakes the head and pushes it up, so that it leaves the ground early; the entry is hardly changed.
 */
export const turfDiscrepancy = {
  /** Start of the divot less entry of the arc, m. */
  starts: { value: 0, u: 0.012, source: 'judgement: turf tears back from where the edge enters' },
  /** Length of the divot over length of the cut. */
  lengthShare: { value: 0.85, u: 0.15, source: 'judgement: drag lifts the head out early' },
  /** Depth of the divot over depth of the cut. */
  depthShare: {
    value: 0.9,
    u: 0.2,
    source: 'judgement: drag holds the head up; loose turf hides the bottom',
  },
  /** Direction of the divot less direction of the arc, rad. */
  direction: {
    value: 0,
    u: 0.035,
    source: 'judgement: 2°, for the edge drags on one side and the strike turns the head',
  },
} as const;

/**
 * The cut of the arc by level ground: the sole passes `depth` below the ground at the low point.
 *
 * With R the radius and i the inclination: R (1 − cos θ_d) sin i = depth; the cut runs from R sin θ_d behind the low point to as far
 * ahead of it. Entry and exit lie at one height, so the line through them runs along the base line exactly, whatever the path
 * at the ball was. Geometry of a circle in an inclined plane.
 *
 * @returns undefined where the arc stays above the ground (depth < 0), is half buried, or is degenerate.
 */
export function cutOfGround(arc: Arc, lowPoint: LowPoint): GroundCut | undefined {
  if (!isArc(arc) || !Number.isFinite(lowPoint.ahead)) return undefined;
  const versine = lowPoint.depth / (arc.radius * Math.sin(arc.inclination));
  if (!(versine >= 0 && versine < 1)) return undefined;
  const half = arc.radius * Math.sqrt(versine * (2 - versine));
  return {
    starts: lowPoint.ahead - half,
    ends: lowPoint.ahead + half,
    length: 2 * half,
    depth: lowPoint.depth,
    direction: arc.direction,
  };
}

/** Depth at the low point of a cut of that length, m: R sin i (1 − √(1 − (length/2R)²)). @returns undefined where none is. */
export function depthOfCut(arc: Pick<Arc, 'radius' | 'inclination'>, length: number): number | undefined {
  if (!isArc({ ...arc, direction: 0 }) || !(length >= 0)) return undefined;
  const sine = length / (2 * arc.radius);
  if (!(sine < 1)) return undefined;
  const square = sine * sine;
  // 1 − √(1 − s²) without its loss of digits for short cuts.
  return (arc.radius * Math.sin(arc.inclination) * square) / (1 + Math.sqrt(1 - square));
}

/**
 * Radius of the arc from the length and the depth of its cut, m: with q = depth/sin i, R = ((length/2)² + q²)/(2 q).
 *
 * @returns undefined unless length, depth and inclination are positive.
 */
export function radiusFromCut(length: number, depth: number, inclination: number): number | undefined {
  if (!(length > 0 && depth > 0 && inclination > 0 && inclination <= Math.PI / 2)) return undefined;
  const sagitta = depth / Math.sin(inclination);
  const radius = ((length * length) / 4 + sagitta * sagitta) / (2 * sagitta);
  // A sagitta beyond the radius would be an arc that is more than half buried.
  return Number.isFinite(radius) && sagitta < radius ? radius : undefined;
}

/**
 * Where the low point is expected from a divot, m ahead of the ball: start + length/(2 share).
 * The undisturbed arc would have been half-way through its own, longer cut.
 *
 * @param lengthShare length of the divot over that of the cut; `turfDiscrepancy` if left out; 1 for no drag.
 */
export function lowPointFromDivot(
  divot: { readonly starts: number; readonly length: number },
  lengthShare: number = turfDiscrepancy.lengthShare.value,
): number | undefined {
  const ahead = divot.starts + divot.length / (2 * lengthShare);
  return divot.length >= 0 && lengthShare > 0 && Number.isFinite(ahead) ? ahead : undefined;
}

/**
 * Height of the sole above the ground when the head is at the ball, m: R (1 − cos θ) sin i − depth, with
 * sin θ = −ahead/R; negative where it already is in the ground.
 */
export function soleHeightAtBall(
  arc: Pick<Arc, 'radius' | 'inclination'>,
  lowPoint: LowPoint,
): number | undefined {
  const attack = attackFromLowPoint(arc, lowPoint.ahead);
  if (attack === undefined || !Number.isFinite(lowPoint.depth)) return undefined;
  const drop = arcAtStrike({ ...arc, direction: 0 }, attack)?.lowPointDepth;
  return drop === undefined ? undefined : drop - lowPoint.depth;
}

function isArc(arc: Arc): boolean {
  return (
    arc.radius > 0 &&
    Number.isFinite(arc.radius) &&
    arc.inclination > 0 &&
    arc.inclination <= Math.PI / 2 &&
    Number.isFinite(arc.direction)
  );
}
