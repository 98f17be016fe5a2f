// How good predictions have been over many lessons: the share that came inside their intervals, and where they lean; knows no file.
import { wilsonInterval, type ProportionInterval } from '../model/proportion.ts';
import { studentQuantile } from '../model/quantiles.ts';
import type { Quantity } from '../registry/quantity.ts';
import { grouped } from './grouped.ts';
import type { Followed, PredictionOrigin, PredictionOutcome } from './outcome.ts';

/** A prediction that was held against a later lesson, and where it came from. */
export interface Tested {
  readonly outcome: PredictionOutcome;
  /** The lesson in which it was written: those of one lesson go together. */
  readonly lesson: string;
  readonly hand: 'left' | 'right' | undefined;
  readonly followed: Followed;
}

/** `cannot tell`: with so few the share says nothing yet. */
export type Trust = 'cannot tell' | 'as good as said' | 'too sure' | 'too careful';

export interface Tally {
  readonly tested: number;
  readonly inside: number;
  /** Of lessons with such predictions. */
  readonly lessons: number;
  /** Of the probability to come inside, with 95 %; undefined where nothing was tested. */
  readonly interval: ProportionInterval | undefined;
  /** Root mean square of miss/u: 1 where intervals are as wide as they should be. */
  readonly spread: number | undefined;
  readonly trust: Trust;
}

export interface QuantityTally extends Tally {
  readonly quantity: Quantity;
  /** Mean of measured less predicted, SI. */
  readonly miss: number;
  /** Standard uncertainty of that mean, SI; undefined below two. */
  readonly u: number | undefined;
  readonly lean: 'none seen' | 'too high' | 'too low' | 'cannot tell';
  /** Whether left-handers were mirrored to lie with right-handers. */
  readonly isMirrored: boolean;
}

export interface PredictionRecord {
  readonly all: Tally;
  readonly byQuantity: readonly QuantityTally[];
  readonly byOrigin: ReadonlyMap<PredictionOrigin, Tally>;
  readonly byFollowed: ReadonlyMap<Followed, Tally>;
}

/** What intervals of ± 1.96 standard uncertainties promise. */
export const promised = 0.95;

/** With fewer nothing is said of how far to trust predictions, since those of one lesson go together (a judgement). */
export const fewestTested = 10;
export const fewestLessons = 3;

/** If this many were all inside, the interval of the share would begin at 0.84; with fewer, nobody can say that it is right. */
const fewestToPraise = 20;

/** With fewer, a mean miss says nothing of where predictions lean (a judgement). */
const fewestToLean = 5;

/** Those that are neither inside nor outside were not tested and do not count. */
export function assessPredictions(given: readonly Tested[]): PredictionRecord {
  const tested = given.filter(({ outcome: { state } }) => state === 'inside' || state === 'outside');
  const quantities = groupsOf(tested, ({ outcome }) => outcome.entry.quantity.id);
  return {
    all: tallyOf(tested),
    byQuantity: [...quantities.values()].map(quantityTally),
    byOrigin: talliesOf(groupsOf(tested, ({ outcome }) => outcome.origin)),
    byFollowed: talliesOf(groupsOf(tested, ({ followed }) => followed)),
  };
}

function groupsOf<Key extends string>(
  tested: readonly Tested[],
  keyOf: (one: Tested) => Key,
): ReadonlyMap<Key, readonly Tested[]> {
  return new Map([...grouped(tested, keyOf)].sort(([a], [b]) => (a < b ? -1 : 1)));
}

function talliesOf<Key>(groups: ReadonlyMap<Key, readonly Tested[]>): ReadonlyMap<Key, Tally> {
  return new Map([...groups].map(([key, group]) => [key, tallyOf(group)]));
}

function tallyOf(group: readonly Tested[]): Tally {
  const tested = group.length;
  const inside = group.filter(({ outcome }) => outcome.state === 'inside').length;
  const lessons = new Set(group.map(({ lesson }) => lesson)).size;
  const squares = group.reduce((sum, { outcome }) => sum + (outcome.miss! / outcome.u!) ** 2, 0);
  const interval = wilsonInterval(inside, tested);
  return {
    tested,
    inside,
    lessons,
    interval,
    spread: tested === 0 ? undefined : Math.sqrt(squares / tested),
    trust: trustIn(tested, lessons, interval),
  };
}

function trustIn(tested: number, lessons: number, interval: ProportionInterval | undefined): Trust {
  if (interval === undefined || tested < fewestTested || lessons < fewestLessons) return 'cannot tell';
  if (interval.max < promised) return 'too sure';
  if (interval.min > promised) return 'too careful';
  return tested < fewestToPraise ? 'cannot tell' : 'as good as said';
}

/**
 * A mean that differs from zero by more than t · s/√n, t the quantile of 97.5 % with n − 1 degrees of freedom, leans (Student
 * 1908). Where both hands play, what is left and right changes places for left-handers, as a habit of the coach would.
 */
function quantityTally(group: readonly Tested[]): QuantityTally {
  const { quantity } = group[0]!.outcome.entry;
  const isMirrored = quantity.lateral && new Set(group.map(({ hand }) => hand ?? 'right')).size > 1;
  const misses = group.map(({ outcome, hand }) =>
    isMirrored && hand === 'left' ? 0 - outcome.miss! : outcome.miss!,
  );
  const count = misses.length;
  const miss = misses.reduce((sum, one) => sum + one, 0) / count;
  const squares = misses.reduce((sum, one) => sum + (one - miss) ** 2, 0);
  const u = count > 1 ? Math.sqrt(squares / (count - 1) / count) : undefined;
  return { ...tallyOf(group), quantity, miss, u, lean: leanOf(count, miss, u), isMirrored };
}

function leanOf(count: number, miss: number, u: number | undefined): QuantityTally['lean'] {
  if (u === undefined || count < fewestToLean) return 'cannot tell';
  if (!(Math.abs(miss) > studentQuantile(0.975, count - 1) * u)) return 'none seen';
  return miss < 0 ? 'too high' : 'too low';
}
