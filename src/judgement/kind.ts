// What sort of number an expression gives: its dimension as powers of five bases; knows no quantity and no syntax.
import type { Dimension } from '../measure/measure.ts';
import { dimensionTitles } from '../measure/unit-table.ts';

/** Powers of length, angle, time, mass and temperature. Angles are a base of their own, so that `5 cm + 2 deg` is a slip. */
export type Powers = readonly [number, number, number, number, number];

export interface Kind {
  readonly powers: Powers;
  /** A share of a whole, in per cent: without dimension, but 60 is no share. */
  readonly isShare: boolean;
  /** The unit of the quantity that it came from, for proposals. */
  readonly unit: string | undefined;
}

const powersOf: Readonly<Record<Dimension, Powers>> = {
  length: [1, 0, 0, 0, 0],
  angle: [0, 1, 0, 0, 0],
  speed: [1, 0, -1, 0, 0],
  rotation: [0, 1, -1, 0, 0],
  time: [0, 0, 1, 0, 0],
  mass: [0, 0, 0, 1, 0],
  inertia: [2, 0, 0, 1, 0],
  temperature: [0, 0, 0, 0, 1],
  pressure: [-1, 0, -2, 1, 0],
  fraction: [0, 0, 0, 0, 0],
  ratio: [0, 0, 0, 0, 0],
};

export const plain: Kind = { powers: powersOf.ratio, isShare: false, unit: undefined };
export const angle: Kind = { powers: powersOf.angle, isShare: false, unit: 'deg' };

export function kindOf(dimension: Dimension, unit: string): Kind {
  return {
    powers: powersOf[dimension],
    isShare: dimension === 'fraction',
    unit: dimension === 'ratio' ? undefined : unit,
  };
}

export function isSame(a: Kind, b: Kind): boolean {
  return a.isShare === b.isShare && samePowers(a.powers, b.powers);
}

/** Without any dimension; a share counts too. */
export function isDimensionless({ powers }: Kind): boolean {
  return samePowers(powers, plain.powers);
}

export function isPlain(kind: Kind): boolean {
  return isDimensionless(kind) && !kind.isShare;
}

export function isAngle({ powers }: Kind): boolean {
  return samePowers(powers, angle.powers);
}

export function isTemperature({ powers }: Kind): boolean {
  return samePowers(powers, powersOf.temperature);
}

/** A share of something is of that thing's kind; a share of a share is a share; a share over a share is a plain number. */
export function product(a: Kind, b: Kind, sign: 1 | -1): Kind {
  const powers = a.powers.map((power, i) => power + sign * b.powers[i]!) as unknown as Powers;
  const isBare = samePowers(powers, plain.powers);
  const bothBare = isDimensionless(a) && isDimensionless(b);
  const isShare = isBare && bothBare && (sign === 1 ? a.isShare || b.isShare : a.isShare && !b.isShare);
  const unit = isDimensionless(b) ? a.unit : sign === 1 && isDimensionless(a) ? b.unit : undefined;
  return { powers, isShare, unit: isBare && !isShare ? undefined : unit };
}

export function power(base: Kind, exponent: number): Kind {
  const powers = base.powers.map((one) => one * exponent) as unknown as Powers;
  return { powers, isShare: base.isShare && exponent === 1, unit: exponent === 1 ? base.unit : undefined };
}

/** "a length", "an angle", "a plain number"; "length² · time⁻¹" for what has no name. */
export function nameOf(kind: Kind): string {
  if (kind.isShare) return 'a percentage';
  if (isPlain(kind)) return 'a plain number';
  const known = (Object.keys(powersOf) as Dimension[]).find((dimension) =>
    samePowers(powersOf[dimension], kind.powers),
  );
  if (known !== undefined) {
    const title = dimensionTitles[known];
    return `${/^[aeiou]/.test(title) ? 'an' : 'a'} ${title}`;
  }
  const bases = ['length', 'angle', 'time', 'mass', 'temperature'];
  return kind.powers.flatMap((power, i) => (power === 0 ? [] : [`${bases[i]}${raised(power)}`])).join(' · ');
}

function raised(power: number): string {
  return power === 1 ? '' : `^${power}`;
}

function samePowers(a: Powers, b: Powers): boolean {
  return a.every((power, i) => Math.abs(power - b[i]!) < 1e-9);
}
