// Limbs of two bones that reach for a place and bend to the side where a joint can bend, and feet on the ground; knows nothing of a swing.
import { add, cross, dot, norm, scale, vector, type Vector } from './vector.ts';

export interface Limb {
  /** Knee or elbow. */
  readonly middle: Vector;
  /** Where the limb ends: at the place reached for, or as near as its bones allow. */
  readonly end: Vector;
  /** How far the place reached for lies beyond that, m; 0 where it is reached. */
  readonly short: number;
}

/** A limb is never quite straight, so that the side to which it bends is always told, m. */
const leastBend = 2e-5;

/**
 * Two bones from `from` toward `to`: the law of cosines, with the middle joint on the side of `pole`, turned about the line between
 * both ends by `swivel`. Bones keep their length, whatever is asked.
 *
 * @param pole any direction; only its part square to the limb counts. @param swivel rad.
 */
export function limb(
  from: Vector,
  to: Vector,
  bones: readonly [number, number],
  pole: Vector,
  swivel: number,
): Limb {
  const [upper, lower] = bones;
  const way = minus(to, from);
  const length = norm(way);
  const along = length > 1e-9 ? scale(way, 1 / length) : vector(0, 0, -1);
  const [least, most] = reachOf(bones);
  const reach = Math.min(most, Math.max(least, length));
  const share = (upper * upper - lower * lower + reach * reach) / (2 * reach);
  const off = Math.sqrt(Math.max(0, upper * upper - share * share));
  const side = squareTo(pole, along);
  const turned = add(scale(side, Math.cos(swivel)), scale(cross(along, side), Math.sin(swivel)));
  return {
    middle: add(from, add(scale(along, share), scale(turned, off))),
    end: add(from, scale(along, reach)),
    short: length - reach,
  };
}

/** How near and how far two bones reach, m. */
export function reachOf([upper, lower]: readonly [number, number]): readonly [number, number] {
  return [Math.abs(upper - lower) + leastBend, upper + lower - leastBend];
}

/** Distance of the ends of two bones that are bent by an angle from straight, m. */
export function chordOf([upper, lower]: readonly [number, number], bend: number): number {
  return Math.sqrt(upper * upper + lower * lower + 2 * upper * lower * Math.cos(bend));
}

/** How far a chain of three places is bent from straight, rad. */
export function bendOf(from: Vector, middle: Vector, end: Vector): number {
  return angleBetween(minus(middle, from), minus(end, middle));
}

export function angleBetween(a: Vector, b: Vector): number {
  return Math.atan2(norm(cross(a, b)), dot(a, b));
}

export function minus(a: Vector, b: Vector): Vector {
  return { x: a.x - b.x, y: a.y - b.y, z: a.z - b.z };
}

export function unit(a: Vector): Vector {
  const size = norm(a);
  return size > 1e-12 ? scale(a, 1 / size) : vector(0, 0, 1);
}

/** The part of a direction that is square to another one, as a unit vector; any such where they are parallel. */
export function squareTo(direction: Vector, along: Vector): Vector {
  const part = minus(direction, scale(along, dot(direction, along)));
  if (norm(part) > 1e-6 * (1 + norm(direction))) return unit(part);
  return unit(cross(along, Math.abs(along.x) < 0.7 ? vector(1, 0, 0) : vector(0, 1, 0)));
}

export interface Foot {
  readonly ankle: Vector;
  readonly heel: Vector;
  /** Under the ball of the foot, which stays on the ground where the heel lifts. */
  readonly ball: Vector;
  readonly toe: Vector;
}

/** Of a foot's length: from the ankle joint forward to the tip of the toes, back to the heel, and forward to the ball. Judgement. */
const footShares = { toe: 0.79, heel: 0.21, ball: 0.52 };

/**
 * A foot on the ground, or up on its ball.
 *
 * @param heel where the middle of the heel stands before it lifts. @param heading of the toes: 0 away from the body across the target
 * line, rad, toward the target positive. @param lift of the sole off the ground, rad. @param turn toward the target on the ball, rad.
 */
export function footOn(
  heel: { readonly x: number; readonly y: number },
  heading: number,
  { length, ankleHeight }: { readonly length: number; readonly ankleHeight: number },
  lift: number,
  turn: number,
): Foot {
  const before = level(heading);
  const ball = add(vector(heel.x, heel.y, 0), scale(before, footShares.ball * length));
  const ahead = level(heading + turn);
  const behind = (back: number, up: number): Vector => {
    const away = -back * Math.cos(lift) + up * Math.sin(lift);
    return add(ball, add(scale(ahead, away), vector(0, 0, back * Math.sin(lift) + up * Math.cos(lift))));
  };
  return {
    ankle: behind(footShares.ball * length, ankleHeight),
    heel: behind((footShares.ball + footShares.heel) * length, 0),
    ball,
    toe: add(ball, scale(ahead, (footShares.toe - footShares.ball) * length)),
  };
}

function level(heading: number): Vector {
  return vector(Math.sin(heading), -Math.cos(heading), 0);
}
