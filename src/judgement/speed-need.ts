// Which club speed a wanted distance or ball speed needs, where a plan does not reach it, and what the fastest players make of it; knows no file.
import { intervene, type Effect } from '../model/intervention.ts';
import { practiceWith } from '../registry/registry.ts';
import { changesOf, type Foreseer, type Made } from './foreseer.ts';
import type { Standing, Wanted } from './goal-standing.ts';

export interface SpeedNeed {
  readonly kind: 'speed';
  /** SI; undefined where no club speed that is possible at all gives as much. */
  readonly speed: number | undefined;
  /** How well the model knows that speed: what is not known of the distance, over how far each unit of speed carries. Undefined with `speed`. */
  readonly uSpeed: number | undefined;
  readonly planned: number;
  readonly uPlanned: number;
  /** The fastest that is seen with this kind of club, SI, and what it gives of the wanted quantity; undefined where the need lies below it. */
  readonly fastest:
    { readonly speed: number; readonly gives: number; readonly clubKind: string | undefined } | undefined;
}

const speedId = 'delivery.club_speed';
/** What grows with club speed. */
const ofSpeed: ReadonlySet<string> = new Set(['flight.carry', 'flight.total', 'flight.ball_speed']);
/** Out of reach is what so little chance is left of, and whose speed lies so many standard uncertainties off; judgement. */
export const leastChance = 0.05;
const farOff = 2;
/** Halvings and secants until the speed stands to less than is shown. */
const closeEnough = 0.05;
const mostRounds = 30;

/** All else as planned. Undefined where the goal is in reach, is no matter of speed, or the record says too little. */
export function speedNeeded(
  { quantity, min, max }: Wanted,
  then: Standing,
  made: readonly Made[],
  { account, registry }: Foreseer,
): SpeedNeed | undefined {
  const speedQuantity = registry.find(speedId);
  if (!ofSpeed.has(quantity.id) || speedQuantity === undefined) return undefined;
  if (then.value === undefined || (then.chance ?? 1) >= leastChance || then.value > max) return undefined;
  const changes = changesOf(made, account);
  const now = account.derivation.values.get(speedId);
  const own = changes.find(({ id }) => id === speedId);
  const planned = own?.amount ?? now?.value;
  const uPlanned = own?.u ?? now?.u ?? undefined;
  if (planned === undefined || uPlanned === undefined) return undefined;
  const others = changes.filter(({ id }) => id !== speedId);
  const effectOf = (speed: number): Effect | undefined => {
    const set = { id: speedId, kind: 'to', amount: speed, u: 0 } as const;
    return intervene(account, [...others, set])?.effects.get(quantity.id);
  };
  const givenBy = (speed: number): number | undefined => effectOf(speed)?.value ?? undefined;
  const most = speedQuantity.bounds.max;
  const middle = (min + max) / 2;
  if (planned >= most) return undefined;
  const { clubKind } = account.situation;
  const seen = practiceWith(speedQuantity, clubKind)?.max ?? most;
  const gives = planned < seen ? givenBy(seen) : undefined;
  // Few need more than is seen, and between near ends the speed is found sooner.
  const isSeen = gives !== undefined && gives >= middle;
  const end = isSeen ? seen : most;
  const atEnd = isSeen ? gives : givenBy(most);
  if (atEnd === undefined) return undefined;
  const start: Point = isSeen || gives === undefined ? [planned, then.value] : [seen, gives];
  const speed = atEnd < middle ? undefined : speedFor(middle, start, [end, atEnd], givenBy);
  if (speed !== undefined && speed - planned <= farOff * uPlanned) return undefined;
  const uThere = speed === undefined ? undefined : effectOf(speed)?.u;
  const uSpeed = uThere && (uThere * (speed! - planned)) / (middle - then.value);
  const need = { kind: 'speed', speed, uSpeed: uSpeed ?? undefined, planned, uPlanned } as const;
  if (speed !== undefined && speed <= seen) return { ...need, fastest: undefined };
  const fastest = gives ?? givenBy(seen);
  if (fastest === undefined) return undefined;
  return { ...need, fastest: { speed: seen, gives: fastest, clubKind } };
}

type Point = readonly [speed: number, given: number];

/** By the Illinois form of false position, which keeps the root between its ends (Dowell & Jarratt 1971, from memory). */
function speedFor(
  wanted: number,
  [a, atA]: Point,
  [b, atB]: Point,
  givenBy: (speed: number) => number | undefined,
): number | undefined {
  let [low, fLow, high, fHigh] = [a, atA - wanted, b, atB - wanted];
  let side = 0;
  let at = high;
  for (let round = 0; round < mostRounds; round++) {
    const before = at;
    at = (low * fHigh - high * fLow) / (fHigh - fLow);
    const given = givenBy(at);
    if (given === undefined || !Number.isFinite(at)) return undefined;
    const f = given - wanted;
    if (f === 0 || Math.abs(at - before) < closeEnough) return at;
    if (f > 0) {
      [high, fHigh] = [at, f];
      if (side > 0) fLow /= 2;
      side = 1;
    } else {
      [low, fLow] = [at, f];
      if (side < 0) fHigh /= 2;
      side = -1;
    }
  }
  return at;
}
