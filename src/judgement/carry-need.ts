// Which club speed a wanted carry needs, where a plan does not reach it; knows no file.
import { intervene } from '../model/intervention.ts';
import { changesOf, type Foreseer, type Made } from './foreseer.ts';
import type { Standing, Wanted } from './goal-standing.ts';

export interface Need {
  /** SI. */
  readonly speed: number;
  readonly planned: number;
  readonly uPlanned: number;
}

const speedId = 'delivery.club_speed';
/** A carry is out of reach where so little chance is left of it, and the speed that it needs lies so many standard uncertainties off. */
const leastChance = 0.05;
const farOff = 2;

/** Secant steps on club speed, all else as planned. Undefined where the carry is in reach or the record says too little. */
export function carryNeeds(
  { min, max }: Wanted,
  then: Standing,
  made: readonly Made[],
  { account, hand }: Foreseer,
): Need | undefined {
  if (then.value === undefined || (then.chance ?? 1) >= leastChance || then.value > max) return undefined;
  const changes = changesOf(made);
  const now = account.derivation.values.get(speedId);
  const own = changes.find(({ id }) => id === speedId);
  const planned = own?.amount ?? now?.value;
  const uPlanned = own?.u ?? now?.u ?? undefined;
  if (planned === undefined || uPlanned === undefined || hand === undefined) return undefined;
  const others = changes.filter(({ id }) => id !== speedId);
  const carryAt = (speed: number): number | undefined => {
    const set = { id: speedId, kind: 'to', amount: speed, u: 0 } as const;
    return intervene(account, [...others, set])?.effects.get('flight.carry')?.value ?? undefined;
  };
  const middle = (min + max) / 2;
  let [a, fa] = [planned, then.value - middle];
  let b = planned * (middle / then.value);
  for (let round = 0; round < 8; round++) {
    const carry = carryAt(b);
    if (carry === undefined) return undefined;
    const fb = carry - middle;
    if (Math.abs(fb) < 0.05) break;
    const next = b - (fb * (b - a)) / (fb - fa);
    if (!Number.isFinite(next) || next <= 0 || next > 3 * planned) return undefined;
    [a, fa, b] = [b, fb, next];
  }
  return b - planned > farOff * uPlanned ? { speed: b, planned, uPlanned } : undefined;
}
