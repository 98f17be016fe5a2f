// The blow of a rigid head against the ball, as one 3×3 solve; knows nothing of the arc before or the air after.
import { ballInertia, ruleBall, type Ball } from './ball.ts';
import type { Head } from './heads.ts';
import { add, cross, directionOf, dot, norm, scale, solve, vector, type Vector } from './vector.ts';

export interface Delivery {
  /** Speed of the head, m/s. */
  readonly speed: number;
  /** Direction of the head in the horizontal plane, rad, right positive. */
  readonly path: number;
  /** rad, up positive. */
  readonly attack: number;
  /** Direction of the normal at the centre of the face, rad, right positive. */
  readonly face: number;
  /** Elevation of the normal at the centre of the face, rad. */
  readonly loft: number;
  /** Place of the strike on the face from its centre, m, toward the toe positive; 0 if left out. */
  readonly across?: number;
  /** Place of the strike on the face from its centre, m, up positive; 0 if left out. */
  readonly height?: number;
}

export interface Contact {
  /** Normal restitution; if left out the head's own, else `pennerRestitution`. */
  readonly restitution?: number;
  /** Tangential restitution: 0 leaves rolling without slip (Penner 2001), 1 reverses the slip; 0 if left out. */
  readonly tangentialRestitution?: number;
  /** Coefficient of friction; `softCoverFriction` if left out. */
  readonly friction?: number;
}

export interface Launch {
  /** m/s */
  readonly ballSpeed: number;
  /** rad above the horizontal. */
  readonly launchAngle: number;
  /** Direction in which the ball starts, rad, right positive. */
  readonly start: number;
  /** Magnitude of the spin, rad/s. */
  readonly spin: number;
  /** Tilt of the spin axis from level, rad; positive curves the ball to the right; beyond ±π/2 with top spin. */
  readonly spinTilt: number;
  /** Ball speed / club speed. */
  readonly speedRatio: number;
  /** Whether the ball still slid on the face when it left it. */
  readonly sliding: boolean;
}

/**
 * Normal restitution at a normal approach speed (m/s): 0.86 − 0.0029 V cos Φ.
 * Source: Penner 2001, Am. J. Phys. 69:563. Range about 20–55 m/s; held to [0, 0.86] outside.
 */
export function pennerRestitution(normalSpeed: number): number {
  return Math.min(0.86, Math.max(0, 0.86 - 0.0029 * normalSpeed));
}

/**
 * Friction of a soft cover on the face at a tangential approach speed (m/s): 0.38 at 12.8 falling to 0.29 at 26 m/s,
 * held outside. Source: measurements quoted in Penner 2003, Rep. Prog. Phys. 66:131; the line between them is ours.
 */
export function softCoverFriction(tangentialSpeed: number): number {
  const share = (tangentialSpeed - 12.8) / (26 - 12.8);
  return 0.38 - 0.09 * Math.min(1, Math.max(0, share));
}

/**
 * Ball's launch from the head's delivery: rigid bodies, one impulse J at one point.
 *
 * The relative velocity of the two contact points changes by K J, with
 * K = (1/m + 1/M) 1 − [r_b] I_b⁻¹ [r_b] − [r_h] I_h⁻¹ [r_h]; along the normal it leaves at −e times what it came
 * with, across it at −e_t times; if that needs more than the friction cone gives, the ball slides and the impulse
 * lies on the cone's edge in the direction in which gripping would have wanted it.
 * Standard rigid-body impact with friction (e.g. Stronge, Impact Mechanics, 2000); for a head that cannot turn it
 * reduces to v_n = (1 + e) V cos Φ/(1 + m/M), v_t = V sin Φ/(1 + m/M + 5/2) of Jorgensen and Penner 2001.
 *
 * Left out: the rotation of the head before the strike, and the pull of the shaft during it (0.5 ms).
 *
 * @returns undefined where the face does not close on the ball, or an input is not a finite number.
 */
export function strike(
  delivery: Delivery,
  head: Head,
  contact: Contact = {},
  ball: Ball = ruleBall,
): Launch | undefined {
  const across = delivery.across ?? 0;
  const height = delivery.height ?? 0;
  if (!isStrikeable(delivery, head, ball)) return undefined;

  const face = delivery.face + turnedBy(across, head.bulge);
  const loft = delivery.loft + turnedBy(height, head.roll);
  const normal = directionOf(face, loft);
  const approach = scale(directionOf(delivery.path, delivery.attack), -delivery.speed);
  const normalSpeed = -dot(approach, normal);
  if (!(normalSpeed > 0)) return undefined;

  const bodies = contactBodies(delivery, head, ball, normal);
  const tangential = add(approach, scale(normal, normalSpeed));
  const restitution = contact.restitution ?? restitutionOf(head, normalSpeed);
  const friction = contact.friction ?? softCoverFriction(norm(tangential));
  const leaving = scale(normal, (1 + restitution) * normalSpeed);
  const gripped = impulseFor(
    bodies,
    add(leaving, scale(tangential, -(1 + (contact.tangentialRestitution ?? 0)))),
  );
  if (gripped === undefined) return undefined;

  const press = dot(gripped, normal);
  const drag = add(gripped, scale(normal, -press));
  const slid =
    norm(drag) > friction * press
      ? slidImpulse(bodies, normal, scale(drag, 1 / norm(drag)), friction, dot(leaving, normal))
      : undefined;
  const launch = launchOf(slid ?? gripped, delivery, bodies, ball, slid !== undefined);
  return Number.isFinite(launch.ballSpeed + launch.spin) ? launch : undefined;
}

interface Bodies {
  /** From the ball's centre to the contact. */
  readonly ballArm: Vector;
  /** From the head's centre of mass to the contact. */
  readonly headArm: Vector;
  readonly inverseMass: number;
  readonly inverseBallInertia: number;
  /** Applies the head's inverse inertia. */
  readonly turn: (torque: Vector) => Vector;
}

function contactBodies(delivery: Delivery, head: Head, ball: Ball, normal: Vector): Bodies {
  const across = delivery.across ?? 0;
  const height = delivery.height ?? 0;
  const centreNormal = directionOf(delivery.face, delivery.loft);
  const toe = vector(-Math.sin(delivery.face), -Math.cos(delivery.face), 0);
  const up = cross(toe, centreNormal);
  const front = vector(Math.cos(delivery.face), -Math.sin(delivery.face), 0);
  const recess = recessOf(across, head.bulge) + recessOf(height, head.roll);
  const inverse = {
    toe: 1 / head.inertia.heelToe,
    front: 1 / head.inertia.frontBack,
    vertical: 1 / head.inertia.vertical,
  };
  return {
    ballArm: scale(normal, -ball.radius),
    headArm: add(
      scale(centreNormal, head.depth - recess),
      add(scale(toe, across - (head.foot?.across ?? 0)), scale(up, height - (head.foot?.height ?? 0))),
    ),
    inverseMass: 1 / ball.mass + 1 / head.mass,
    inverseBallInertia: 1 / ballInertia(ball),
    turn: (torque) =>
      add(
        add(scale(toe, dot(torque, toe) * inverse.toe), scale(front, dot(torque, front) * inverse.front)),
        vector(0, 0, torque.z * inverse.vertical),
      ),
  };
}

/** K J: how the relative velocity of the contact points changes under the impulse J. */
function change(bodies: Bodies, impulse: Vector): Vector {
  const ballTurn = cross(scale(cross(bodies.ballArm, impulse), bodies.inverseBallInertia), bodies.ballArm);
  const headTurn = cross(bodies.turn(cross(bodies.headArm, impulse)), bodies.headArm);
  return add(add(scale(impulse, bodies.inverseMass), ballTurn), headTurn);
}

function impulseFor(bodies: Bodies, wanted: Vector): Vector | undefined {
  return solve(
    [change(bodies, vector(1, 0, 0)), change(bodies, vector(0, 1, 0)), change(bodies, vector(0, 0, 1))],
    wanted,
  );
}

/** The impulse on the edge of the friction cone that still gives the wanted normal speed; undefined where it jams. */
function slidImpulse(
  bodies: Bodies,
  normal: Vector,
  along: Vector,
  friction: number,
  wanted: number,
): Vector | undefined {
  const edge = add(normal, scale(along, friction));
  const yielding = dot(change(bodies, edge), normal);
  return yielding > 0 ? scale(edge, wanted / yielding) : undefined;
}

function launchOf(impulse: Vector, delivery: Delivery, bodies: Bodies, ball: Ball, sliding: boolean): Launch {
  const velocity = scale(impulse, 1 / ball.mass);
  const spin = scale(cross(bodies.ballArm, impulse), bodies.inverseBallInertia);
  const ballSpeed = norm(velocity);
  const start = Math.atan2(-velocity.y, velocity.x);
  return {
    ballSpeed,
    launchAngle: Math.atan2(velocity.z, Math.hypot(velocity.x, velocity.y)),
    start,
    spin: norm(spin),
    spinTilt: tiltOf(spin, start),
    speedRatio: ballSpeed / delivery.speed,
    sliding,
  };
}

/** Elevation of the spin axis from level; beyond a right angle where the ball has top spin. */
function tiltOf(spin: Vector, start: number): number {
  const back = -(spin.x * Math.sin(start) + spin.y * Math.cos(start));
  const level = Math.hypot(spin.x, spin.y);
  return norm(spin) > 0 ? Math.atan2(0 - spin.z, back < 0 ? -level : level) : 0;
}

function restitutionOf(head: Head, normalSpeed: number): number {
  const own = head.restitution;
  if (own === undefined) return pennerRestitution(normalSpeed);
  return Math.min(1, Math.max(0, own.atRest - own.perSpeed * normalSpeed));
}

/** Turn of the normal at a distance from the centre of a face of that radius, rad. */
function turnedBy(distance: number, radius: number): number {
  return Math.asin(Math.max(-1, Math.min(1, distance / radius)));
}

/** How far a curved face falls back at that distance, m. */
function recessOf(distance: number, radius: number): number {
  return Number.isFinite(radius) ? radius * (1 - Math.cos(turnedBy(distance, radius))) : 0;
}

function isStrikeable(delivery: Delivery, head: Head, ball: Ball): boolean {
  const numbers = [delivery.speed, delivery.path, delivery.attack, delivery.face, delivery.loft];
  const places = [delivery.across ?? 0, delivery.height ?? 0, head.depth];
  const bodies = [head.mass, head.inertia.vertical, head.inertia.heelToe, head.inertia.frontBack];
  return (
    delivery.speed > 0 &&
    [...numbers, ...places].every(Number.isFinite) &&
    [...bodies, head.bulge, head.roll, ball.mass, ball.radius].every((size) => size > 0)
  );
}
