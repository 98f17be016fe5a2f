// Finds units by any spelling and converts to SI and back by plain factors; knows nothing of quantities or directions.
import { createFractionClass, createUnitClass } from 'mathjs';
import type { Dimension } from './measure.ts';
import { dimensions, siUnits, unitRows, type UnitRow } from './unit-table.ts';

// mathjs exports its factories at run time and documents them, but its type file leaves them out.
declare module 'mathjs' {
  interface ConvertibleUnit {
    toNumber(unit: string): number;
  }
  interface UnitClass {
    new (value: number, unit: string): ConvertibleUnit;
    parse(text: string): ConvertibleUnit;
  }
  export const createFractionClass: (
    scope: object,
  ) => new (value: number) => { readonly n: bigint; readonly d: bigint };
  export const createUnitClass: (scope: object) => UnitClass;
}

export interface Unit {
  /** The canonical spelling, which is printed. */
  readonly name: string;
  readonly dimension: Dimension;
  readonly aliases: readonly string[];
}

/** SI = value × times ÷ over + zero; both whole numbers where the factor is a fraction, so that 7 in is 0.1778 m to the last bit. */
interface Scale {
  readonly times: number;
  readonly over: number;
  readonly zero: number;
}

interface ScaledUnit extends Unit {
  readonly scale: Scale;
}

/** The unit with this name or other spelling; case matters only where two units would be confused. */
export function findUnit(text: string): Unit | undefined {
  return lookUp(text);
}

/** The units of a dimension, in the order that messages list them. */
export function unitsOf(dimension: Dimension): readonly Unit[] {
  return byDimension.get(dimension) ?? [];
}

/** The value in SI (m, rad, m/s, rad/s, s, kg, kg m², K, Pa; shares and ratios plain). Throws RangeError on a name that `findUnit` does not know. */
export function toSI(value: number, unitName: string): number {
  const { times, over, zero } = scaleOf(unitName);
  return (value * times) / over + zero;
}

/** The opposite of `toSI`. Throws RangeError on a name that `findUnit` does not know. */
export function fromSI(si: number, unitName: string): number {
  const { times, over, zero } = scaleOf(unitName);
  return ((si - zero) * over) / times;
}

/** A difference or an uncertainty in SI: a temperature's zero has no part in it. Throws RangeError as `toSI`. */
export function differenceToSI(value: number, unitName: string): number {
  const { times, over } = scaleOf(unitName);
  return (value * times) / over;
}

/** The opposite of `differenceToSI`. Throws RangeError as `toSI`. */
export function differenceFromSI(si: number, unitName: string): number {
  const { times, over } = scaleOf(unitName);
  return (si * over) / times;
}

function scaleOf(unitName: string): Scale {
  const unit = lookUp(unitName);
  if (unit === undefined) throw new RangeError(`No unit is called "${unitName}".`);
  return unit.scale;
}

function lookUp(text: string): ScaledUnit | undefined {
  return bySpelling.get(text) ?? byLowerCase.get(text.toLowerCase());
}

const Fraction = createFractionClass({});

/**
 * The unit class of mathjs over plain numbers only: none of its typed functions, matrices or big numbers, which would be
 * four times the size. It is frozen, for its `createUnit` would otherwise change the table for the whole process.
 */
const MathUnit = Object.freeze(
  createUnitClass({
    on: undefined,
    config: { number: 'number', predictable: false },
    addScalar: (a: number, b: number) => a + b,
    subtractScalar: (a: number, b: number) => a - b,
    multiplyScalar: (a: number, b: number) => a * b,
    divideScalar: (a: number, b: number) => a / b,
    pow: Math.pow,
    abs: Math.abs,
    fix: Math.trunc,
    round: Math.round,
    equal: (a: unknown, b: unknown) => a === b,
    isNumeric: (value: unknown) => typeof value === 'number',
    format: String,
    number: Number,
    Complex: {},
    BigNumber: null,
    Fraction,
  }),
);

function scale(row: UnitRow): Scale {
  if (typeof row.is === 'number') return ratioScale(row.is, 0);
  const si = siUnits[row.dimension];
  if (row.difference === undefined) return ratioScale(MathUnit.parse(row.is).toNumber(si), 0);
  return ratioScale(MathUnit.parse(row.difference).toNumber(si), new MathUnit(0, row.is).toNumber(si));
}

function ratioScale(factor: number, zero: number): Scale {
  const fraction = new Fraction(factor);
  const [times, over] = [Number(fraction.n), Number(fraction.d)];
  // Within two units in the last place: the factors of angles are no fractions, and any found for them is off by more.
  const isExact = Math.abs(times / over / factor - 1) < 4.5e-16;
  return isExact ? { times, over, zero } : { times: factor, over: 1, zero };
}

const units: readonly ScaledUnit[] = unitRows.map((row) =>
  Object.freeze({ name: row.name, dimension: row.dimension, aliases: row.aliases, scale: scale(row) }),
);

const spelled: readonly (readonly [string, ScaledUnit])[] = units.flatMap((unit) =>
  [unit.name, ...unit.aliases].map((spelling) => [spelling, unit] as const),
);
const bySpelling: ReadonlyMap<string, ScaledUnit> = new Map(spelled);
const byLowerCase: ReadonlyMap<string, ScaledUnit> = new Map(
  spelled.map(([spelling, unit]) => [spelling.toLowerCase(), unit]),
);
const byDimension: ReadonlyMap<Dimension, readonly ScaledUnit[]> = new Map(
  dimensions.map((dimension) => [dimension, units.filter((unit) => unit.dimension === dimension)]),
);
