// How near a swing comes to what a goal asks for, where a chance alone would not say it; proposes nothing.
import { chanceIn, type Standing } from './goal-standing.ts';

export interface Near {
  /** SI; undefined where nobody could tell. */
  readonly value: number | undefined;
  /** 0..1, 1 in the middle of the window. */
  readonly near: number;
  /** More likely met than not, or as good as met as far as anybody could tell. */
  readonly stands: boolean;
}

/** So likely, and a goal counts as brought inside. */
export const enough = 0.5;
/** What it is worth to come all the way to the edge of a window, where a window is worth 1. */
const ofTheWay = 0.4;
/** So much less near, or so many standard uncertainties farther from its window, is a goal led away from. */
const mostLost = 0.1;
const mostFarther = 0.5;

/**
 * The chance of landing in a window over the best that anything could have that is known as well as this is now: 1 in the middle of it.
 * The chance alone would call a window hopeless that is narrower than what the record can tell. Part of the way there counts too.
 */
export function nearOf({ chance, value }: Pick<Standing, 'chance' | 'value'>, now: Standing): Near {
  const { min, max } = now.wanted;
  const best = chanceIn({ min, max }, (min + max) / 2, now.u ?? 0);
  const share = best > 0 ? Math.min(1, (chance ?? 0) / best) : 0;
  const isInside = value !== undefined && value >= min && value <= max;
  const before = outsideBy(now, now.value);
  const way = before > 0 && value !== undefined ? 1 - outsideBy(now, value) / before : 0;
  return { value, near: Math.max(share, ofTheWay * way), stands: isInside || (chance ?? 0) >= enough };
}

/** How far a value lies outside what is wanted, in standard uncertainties of now; 0 of none. */
export function outsideBy({ wanted: { min, max }, u }: Standing, value: number | undefined): number {
  return value === undefined ? 0 : Math.max(min - value, value - max, 0) / Math.max(u ?? 0, 1e-9);
}

/** A goal that stands must go on standing, and none may be led away from for another. */
export function isHarmed(now: Standing, then: Near): boolean {
  if (then.stands) return false;
  const before = nearOf(now, now);
  const isFarther = outsideBy(now, then.value) > outsideBy(now, now.value) + mostFarther;
  return before.stands || then.near < before.near - mostLost || isFarther;
}

/** How many goals that comes to: one that asks for several things, such as a shape, is as near as all of them together. */
export function goalsReached(reached: readonly Near[], now: readonly Standing[]): number {
  const goals = new Map<Standing['wanted']['span'], number>();
  now.forEach(({ wanted: { span } }, i) => goals.set(span, (goals.get(span) ?? 1) * reached[i]!.near));
  return [...goals.values()].reduce((sum, near) => sum + near, 0);
}
