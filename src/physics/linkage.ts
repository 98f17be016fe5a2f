// Arm and club as two levers in the plane of the arc near the strike, seen face-on; knows nothing of face or ball.

export interface Linkage {
  /** Lead shoulder joint ahead of the ball along the base line of the arc's plane, m; behind negative. */
  readonly shoulderAhead: number;
  /** Lean of the shaft from the vertical seen face-on when the head is at the ball, rad, forward positive. */
  readonly shaftLean: number;
  /** Inclination of the arc's plane to the ground, rad, in (0, π/2]. */
  readonly inclination: number;
  /** Lead shoulder to the middle of the grip, m. */
  readonly armLength: number;
  /** Middle of the grip to the middle of the face, m. */
  readonly shaftLength: number;
  /** Speed of the head at the ball, m/s. */
  readonly clubSpeed: number;
  /** Rate of the shaft's turning over that of the arm, ≥ 0: about 2 for a dragged handle, above 3 for a thrown club. */
  readonly releaseRatio: number;
  /** Velocity of the lead shoulder in the plane, m/s; at rest if left out. */
  readonly hub?: HubVelocity;
}

export interface HubVelocity {
  /** Along the base line, toward the target positive. */
  readonly along: number;
  /** Up the plane. */
  readonly up: number;
}

export interface LinkageAtStrike {
  /** rad, up positive. */
  readonly attack: number;
  /** Direction of the head in the plane, from the base line, rad, up positive: sin(attack) = sin(angle) sin i. */
  readonly angle: number;
  /** The rolled-out low point ahead of the ball along the base line, m; behind negative. */
  readonly lowPointAhead: number;
  /** How far the rolled-out low point lies below the head at the ball, m, ≥ 0. */
  readonly lowPointDepth: number;
  /** Radius of curvature of the head's path at the ball, m. */
  readonly radius: number;
  /** Middle of the grip ahead of the ball, m. */
  readonly handsAhead: number;
  /** Angle of the lead arm in the plane past hanging straight down the plane, rad; negative where the hands are behind. */
  readonly armAngle: number;
  /** rad/s */
  readonly armRate: number;
  /** rad/s */
  readonly shaftRate: number;
  /** Time from the strike to the low point, s; negative where it lies before. */
  readonly timeToLowPoint: number;
}

/**
 * Attack, low point and radius that arm and shaft give when the head is at the ball.
 *
 * In the plane, u along the base line and w up the plane, the ball at the origin: the shaft's lean is
 * tan β' = tan β sin i (a face-on picture shortens w by sin i), so the hands are L_c sin β' ahead; the arm's angle is
 * sin φ = (x_H − x_S)/L_a. Both turn at constant rates ω_a and κ ω_a about the shoulder and the hands:
 * v_u = ω_a (L_a cos φ + κ L_c cos β') + h_u, v_w = ω_a (L_a sin φ − κ L_c sin β') + h_w; ω_a follows from |v|.
 * Then tan θ = v_w/v_u, sin(attack) = sin θ sin i, radius = |v|³/|v × a|. The low point is where v_w vanishes as the
 * linkage is rolled on: while arm and shaft are within a right angle of hanging down, v_w grows steadily, so there is one root.
 * Own derivation of plane kinematics; the linkage is the double pendulum of Jorgensen, The Physics of Golf, with rates held constant.
 *
 * Range: the few hundredths of a second about the strike; whatever makes the rates change there is model discrepancy.
 *
 * @returns undefined where the arm does not reach, the head does not move toward the target along a path that bends upward, or no low
 * point exists with arm and shaft below level.
 */
export function linkageAtStrike(linkage: Linkage): LinkageAtStrike | undefined {
  const { shoulderAhead, armLength, shaftLength, releaseRatio } = linkage;
  if (!isLinkage(linkage)) return undefined;
  const rise = Math.sin(linkage.inclination);
  const lean = Math.atan(Math.tan(linkage.shaftLean) * rise);
  const handsAhead = shaftLength * Math.sin(lean);
  const reach = (handsAhead - shoulderAhead) / armLength;
  if (!(Math.abs(reach) < 1)) return undefined;
  const armAngle = Math.asin(reach);

  // Velocity and acceleration of the head for an arm that turns at 1 rad/s about a shoulder at rest.
  const u = armLength * Math.cos(armAngle) + releaseRatio * shaftLength * Math.cos(lean);
  const w = armLength * reach - releaseRatio * handsAhead;
  const bendU = -armLength * reach + releaseRatio * releaseRatio * handsAhead;
  const bendW = armLength * Math.cos(armAngle) + releaseRatio * releaseRatio * shaftLength * Math.cos(lean);

  const hub = linkage.hub ?? atRest;
  const armRate = rateFor(linkage.clubSpeed, u, w, hub);
  if (armRate === undefined) return undefined;
  const velocityU = armRate * u + hub.along;
  const velocityW = armRate * w + hub.up;
  const turning = armRate * armRate * (velocityU * bendW - velocityW * bendU);
  if (!(velocityU > 0 && turning > 0)) return undefined;

  const turn = turnToLowPoint(linkage, armAngle, lean, hub.up / armRate);
  if (turn === undefined) return undefined;
  const arm = armAngle + turn;
  const shaft = releaseRatio * turn - lean;
  const time = turn / armRate;
  const angle = Math.atan(velocityW / velocityU);
  const drop =
    armLength * (Math.cos(arm) - Math.cos(armAngle)) +
    shaftLength * (Math.cos(shaft) - Math.cos(lean)) -
    hub.up * time;
  const strike = {
    attack: Math.asin(Math.sin(angle) * rise),
    angle,
    lowPointAhead:
      shoulderAhead + armLength * Math.sin(arm) + shaftLength * Math.sin(shaft) + hub.along * time,
    // Rounding alone could bring it below zero where the ball lies at the low point.
    lowPointDepth: Math.max(0, drop) * rise,
    radius: linkage.clubSpeed ** 3 / turning,
    handsAhead,
    armAngle,
    armRate,
    shaftRate: releaseRatio * armRate,
    timeToLowPoint: time,
  };
  return Object.values(strike).every(Number.isFinite) ? strike : undefined;
}

/**
 * Where the club's instantaneous centre stands ahead of the ball, m: x_H − (x_H − x_S)/κ, for a shoulder at rest.
 * A rule of thumb for the low point: the rolled-out one lies some 15–20 % further from the ball.
 *
 * @returns undefined for a ratio that is not positive.
 */
export function instantaneousCentreAhead(
  handsAhead: number,
  shoulderAhead: number,
  releaseRatio: number,
): number | undefined {
  const ahead = handsAhead - (handsAhead - shoulderAhead) / releaseRatio;
  return releaseRatio > 0 && Number.isFinite(ahead) ? ahead : undefined;
}

const atRest: HubVelocity = { along: 0, up: 0 };

/** The positive rate ω with |ω (u, w) + hub| = speed. */
function rateFor(speed: number, u: number, w: number, hub: HubVelocity): number | undefined {
  const square = u * u + w * w;
  const half = u * hub.along + w * hub.up;
  const rest = speed * speed - hub.along * hub.along - hub.up * hub.up;
  if (!(rest > 0)) return undefined;
  const rate = (Math.sqrt(half * half + square * rest) - half) / square;
  return rate > 0 && Number.isFinite(rate) ? rate : undefined;
}

/**
 * The arm's turn τ from the strike to the low point, rad: L_a sin(φ + τ) + κ L_c sin(κ τ − β') + h_w/ω_a = 0, by Newton's steps
 * that are replaced by halving where they leave the bracket.
 */
function turnToLowPoint(
  { armLength, shaftLength, releaseRatio }: Linkage,
  armAngle: number,
  lean: number,
  drift: number,
): number | undefined {
  const club = releaseRatio * shaftLength;
  const climb = (turn: number) =>
    armLength * Math.sin(armAngle + turn) + club * Math.sin(releaseRatio * turn - lean) + drift;
  const quarter = Math.PI / 2;
  let low = Math.max(-quarter - armAngle, (lean - quarter) / releaseRatio);
  let high = Math.min(quarter - armAngle, (lean + quarter) / releaseRatio);
  if (!(climb(low) < 0 && climb(high) > 0)) return undefined;
  let turn = 0;
  for (let i = 0; i < 100; i++) {
    const value = climb(turn);
    if (value > 0) high = turn;
    else low = turn;
    const slope =
      armLength * Math.cos(armAngle + turn) + releaseRatio * club * Math.cos(releaseRatio * turn - lean);
    const newton = turn - value / slope;
    const next = newton >= low && newton <= high ? newton : (low + high) / 2;
    if (Math.abs(next - turn) <= 1e-14) return next;
    turn = next;
  }
  return turn;
}

function isLinkage(linkage: Linkage): boolean {
  return (
    linkage.armLength > 0 &&
    linkage.shaftLength > 0 &&
    linkage.clubSpeed > 0 &&
    linkage.releaseRatio >= 0 &&
    Math.abs(linkage.shaftLean) < Math.PI / 2 &&
    linkage.inclination > 0 &&
    linkage.inclination <= Math.PI / 2
  );
}
