// The circular arc of the head through the strike; knows nothing of the body that swings it or of the ball's flight.

export interface Arc {
  /** Radius of the head's path near the strike, m, > 0. */
  readonly radius: number;
  /** Inclination of the arc's plane to the ground, rad, in (0, π/2]. */
  readonly inclination: number;
  /** Direction of the plane's base line, rad, right of the target line positive. */
  readonly direction: number;
}

export interface ArcAtStrike {
  /** Angle travelled past the low point when the head meets the ball, rad; negative before it. */
  readonly angle: number;
  /** Direction of the head in the horizontal plane, rad, right positive. */
  readonly path: number;
  /** Distance of the low point ahead of the ball along the base line, m; negative behind. */
  readonly lowPointAhead: number;
  /** How far the low point lies below the head at the ball, m, ≥ 0. */
  readonly lowPointDepth: number;
}

/**
 * Where on its arc the head meets the ball, from its attack.
 *
 * With θ the angle past the low point, i the inclination, φ the direction and R the radius:
 * sin(attack) = sin θ sin i; path = φ − atan(tan θ cos i); low point ahead = −R sin θ;
 * low point depth = R (1 − cos θ) sin i. Geometry of a circle in an inclined plane, exact for a circle.
 * Real paths near the strike fit an ellipse to about 1 mm (Morrison, McGrath & Wallace 2018, J. Sports Sci. 36:303).
 *
 * @param attack rad, up positive.
 * @returns undefined where no point of this arc has that attack, or the arc is degenerate.
 */
export function arcAtStrike(arc: Arc, attack: number): ArcAtStrike | undefined {
  if (!isArc(arc)) return undefined;
  const ratio = Math.sin(attack) / Math.sin(arc.inclination);
  // On the ratio 1 the head goes straight up or down in its plane and the path has no direction any more.
  if (!(Math.abs(attack) < Math.PI / 2 && Math.abs(ratio) < 1)) return undefined;
  return atAngle(arc, Math.asin(ratio));
}

/**
 * The attack that belongs to a low point so far ahead of the ball: sin θ = −ahead/R, sin(attack) = sin θ sin i.
 *
 * @param lowPointAhead m, negative behind.
 * @returns rad, up positive; undefined where the low point lies a radius or more away, or the arc is degenerate.
 */
export function attackFromLowPoint(
  arc: Pick<Arc, 'radius' | 'inclination'>,
  lowPointAhead: number,
): number | undefined {
  if (!isArc({ ...arc, direction: 0 })) return undefined;
  const sine = -lowPointAhead / arc.radius;
  if (!(Math.abs(sine) < 1)) return undefined;
  return Math.asin(sine * Math.sin(arc.inclination));
}

/** The direction of the arc whose path at the strike is `path`, rad; the inverse of `arcAtStrike` in its direction. */
export function directionFromPath(
  arc: Pick<Arc, 'radius' | 'inclination'>,
  attack: number,
  path: number,
): number | undefined {
  const level = arcAtStrike({ ...arc, direction: 0 }, attack);
  return level === undefined || !Number.isFinite(path) ? undefined : path - level.path;
}

function atAngle(arc: Arc, angle: number): ArcAtStrike {
  return {
    angle,
    path: arc.direction - Math.atan(Math.tan(angle) * Math.cos(arc.inclination)),
    lowPointAhead: -arc.radius * Math.sin(angle),
    lowPointDepth: arc.radius * (1 - Math.cos(angle)) * Math.sin(arc.inclination),
  };
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
