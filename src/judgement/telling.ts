// Says whether an equation between quantities can tell anything within what is possible of them; knows no record.
import type { Quantity } from '../registry/quantity.ts';

export type Telling = 'tells' | 'always holds' | 'never holds' | 'gives no number';

/** An equation is far from true where its sides are so many of its standard uncertainties apart. */
const far = 4;

/** A difference of two sides, over quantities in this order. */
export interface Difference {
  readonly quantities: readonly Quantity[];
  readonly compute: (values: readonly number[]) => number;
  readonly isLinear: boolean;
}

/**
 * A linear difference is largest and smallest in corners of what is possible, which its slopes name. Any other one is only
 * looked at where it is a constant: at so many points that chance does not make it one.
 */
export function tellingOf({ quantities, compute, isLinear }: Difference, u: number): Telling {
  const [least, most] = isLinear ? cornersOf(quantities, compute) : seenOf(quantities, compute);
  if (!Number.isFinite(least) || !Number.isFinite(most)) return 'gives no number';
  const isConstant = most - least <= 1e-9 * Math.max(u, Math.abs(most));
  const isAlways = least >= -u && most <= u;
  if (isConstant) return isAlways ? 'always holds' : 'never holds';
  if (!isLinear) return 'tells';
  if (least > far * u || most < -far * u) return 'never holds';
  return isAlways ? 'always holds' : 'tells';
}

/** A relation tighter than this share of what its quantities are read to tells nothing more, and would only cost the fit digits. */
const finest = 1e-3;

/** The smallest standard uncertainty worth having, from how far each quantity's own moves the difference in the middle of what is possible. */
export function finestOf({ quantities, compute }: Difference): number {
  const middle = quantities.map(({ bounds: { min, max } }) => (min + max) / 2);
  const base = compute(middle);
  const moves = quantities
    .map(({ uncertainty }, place) =>
      Math.abs(compute(middle.with(place, middle[place]! + uncertainty.otherwise)) - base),
    )
    .filter((move) => move > 0 && move < Infinity);
  return moves.length === 0 ? 0 : finest * Math.min(...moves);
}

/** Whether a number follows from any values that are possible: the root of what is always negative never has one. */
export function isEverNumber(quantities: readonly Quantity[], compute: Difference['compute']): boolean {
  return Number.isFinite(seenOf(quantities, compute)[0]);
}

type Ends = readonly [number, number];

function cornersOf(quantities: readonly Quantity[], compute: Difference['compute']): Ends {
  const low = quantities.map(({ bounds }) => bounds.min);
  const base = compute(low);
  const rises = quantities.map(({ bounds }, place) => compute(low.with(place, bounds.max)) - base);
  const sum = (part: (rise: number) => number): number =>
    rises.reduce((total, rise) => total + part(rise), base);
  return [sum((rise) => Math.min(0, rise)), sum((rise) => Math.max(0, rise))];
}

/**
 * A judgement: enough that an equation which is no constant is not taken for one, unless it moves in no more than a few hundredths of
 * what is possible, and few enough that each keystroke in a workspace file can afford them.
 */
const points = 24;

/** Each quantity goes round its window at a pace of its own (Weyl's sequence with square roots of primes). */
function seenOf(quantities: readonly Quantity[], compute: Difference['compute']): Ends {
  const paces = quantities.map((_, place) => Math.sqrt(primes[place % primes.length]!) + place);
  const seen = Array.from({ length: points }, (_, k) =>
    compute(quantities.map(({ bounds: { min, max } }, i) => min + (max - min) * (((k + 1) * paces[i]!) % 1))),
  ).filter(Number.isFinite);
  return seen.length === 0 ? [NaN, NaN] : [Math.min(...seen), Math.max(...seen)];
}

const primes = [2, 3, 5, 7, 11, 13, 17, 19] as const;
