// The readings of a situation as measurements of their own, in order, with doubt and limits applied; knows no steps.
import { builtIn } from '../registry/registry.ts';
import { enteredBehind } from './entered-behind.ts';
import { doubtfulFactor, type WeighedReading } from './combine.ts';
import { isOfUnknownHand } from './mirror.ts';
import { scaleOf } from './scales.ts';
import type { Situation } from './value.ts';

export interface Reading {
  readonly id: string;
  readonly reading: number;
  readonly value: number;
  /** Widened where doubtful. */
  readonly u: number;
  /** `idle` where it cannot take part: no finite value, no uncertainty, a wind without direction, a heel without hand. */
  readonly use: 'measured' | 'idle';
  /** What the quantity is usually read to. */
  readonly scale: number;
}

/** Nothing is taken as sharper than this share of what the quantity is usually read to, so that no entry outweighs arithmetic. */
const sharpest = 1e-3;
const bluntest = 1e6;

/** Every reading, id by id in the order of the observations and then of the readings alone. */
export function readingsOf(situation: Situation): readonly Reading[] {
  const { registry = builtIn } = situation;
  const ids = new Set([...situation.observations.keys(), ...(situation.readings?.keys() ?? [])]);
  const entered = [...ids].flatMap((id) => {
    const several = situation.readings?.get(id) ?? [];
    const observation = situation.observations.get(id);
    const list: readonly WeighedReading[] =
      several.length > 0 || !observation ? several : [{ ...observation, doubtful: false }];
    const scale = scaleOf(id, registry);
    return list.map((one, reading): Reading => {
      const u = one.doubtful ? one.u * doubtfulFactor : one.u;
      const use = isMeasured(id, one, situation) ? 'measured' : 'idle';
      return { id, reading, value: one.value, u, use, scale };
    });
  });
  return [...entered, ...relationsAmong(ids, situation)];
}

/** A relation that no entry stands behind would but tie windows to one another. */
function relationsAmong(ids: ReadonlySet<string>, { own }: Situation): readonly Reading[] {
  const relations = own?.relations ?? [];
  const isEntered = (id: string): boolean => ids.has(id);
  return relations
    .filter(({ rule }) => rule.inputs.some((id) => enteredBehind(id, isEntered, own).length > 0))
    .map(({ id, u }) => ({ id, reading: 0, value: 0, u, use: 'measured', scale: u }));
}

/** The standard uncertainty to weigh a reading by. */
export function weighedUncertainty({ u, scale }: Reading): number {
  return Math.min(bluntest * scale, Math.max(sharpest * scale, u));
}

/** The inverse-variance weighted mean of the measured readings of each id: where a fit begins. */
export function centresOf(readings: readonly Reading[]): ReadonlyMap<string, number> {
  const sums = new Map<string, { weight: number; sum: number }>();
  for (const reading of readings) {
    if (reading.use === 'idle') continue;
    const total = sums.get(reading.id) ?? { weight: 0, sum: 0 };
    const weight = (reading.scale / weighedUncertainty(reading)) ** 2;
    sums.set(reading.id, { weight: total.weight + weight, sum: total.sum + weight * reading.value });
  }
  return new Map([...sums].map(([id, { weight, sum }]) => [id, sum / weight]));
}

function isMeasured(id: string, { value, u }: WeighedReading, situation: Situation): boolean {
  if (!Number.isFinite(value) || !Number.isFinite(u) || !(u > 0)) return false;
  if (isOfUnknownHand(id, situation)) return false;
  return id !== 'conditions.wind' || value === 0 || situation.windBearing !== undefined;
}
