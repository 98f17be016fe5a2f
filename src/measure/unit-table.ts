// The units a coach may write, as data: name printed, other spellings, and what each is in the terms of mathjs; knows no conversion.
import type { Dimension } from './measure.ts';

export interface UnitRow {
  /** The spelling that is printed. */
  readonly name: string;
  readonly dimension: Dimension;
  readonly aliases: readonly string[];
  /** One of this unit, in units that mathjs knows; a plain number where the dimension has no unit. */
  readonly is: string | number;
  /** Only for scales whose zero is not zero: one degree of difference, in units that mathjs knows. */
  readonly difference?: string;
}

/** The unit that mathjs converts to, by dimension; empty where the number stands alone. */
export const siUnits: Readonly<Record<Dimension, string>> = {
  length: 'm',
  angle: 'rad',
  speed: 'm/s',
  rotation: 'rad/s',
  time: 's',
  mass: 'kg',
  inertia: 'kg m^2',
  temperature: 'K',
  pressure: 'Pa',
  fraction: '',
  ratio: '',
};

export const dimensions: readonly Dimension[] = Object.keys(siUnits) as Dimension[];

export function isDimension(word: string): word is Dimension {
  return Object.hasOwn(siUnits, word);
}

/** How each dimension is named in a message. */
export const dimensionTitles: Readonly<Record<Dimension, string>> = {
  length: 'length',
  angle: 'angle',
  speed: 'speed',
  rotation: 'turning speed',
  time: 'time',
  mass: 'mass',
  inertia: 'moment of inertia',
  temperature: 'temperature',
  pressure: 'pressure',
  fraction: 'percentage',
  ratio: 'ratio',
};

function spellings(mass: string): readonly string[] {
  const length = mass === 'g' ? 'cm' : 'm';
  const squares = ['²', '2', '^2'];
  return [' ', '·', '⋅', '*', ''].flatMap((sign) =>
    squares.map((square) => `${mass}${sign}${length}${square}`),
  );
}

/**
 * Within a dimension the order is that of the lists in messages.
 * The yard, foot, inch, pound, ounce, mile and (international) nautical mile are exact by agreement; mathjs knows the first
 * six. The conventional millimetre and inch of mercury are 13 595.1 kg/m³ × 9.806 65 m/s² × the length (NIST SP 811,
 * Appendix B.8: 133.3224 Pa and 3386.389 Pa); mathjs rounds the former to 133.322 Pa, so the product stands here.
 */
export const unitRows: readonly UnitRow[] = [
  {
    name: 'mm',
    dimension: 'length',
    aliases: ['millimetre', 'millimetres', 'millimeter', 'millimeters'],
    is: 'mm',
  },
  {
    name: 'cm',
    dimension: 'length',
    aliases: ['centimetre', 'centimetres', 'centimeter', 'centimeters'],
    is: 'cm',
  },
  { name: 'm', dimension: 'length', aliases: ['metre', 'metres', 'meter', 'meters'], is: 'm' },
  { name: 'in', dimension: 'length', aliases: ['inch', 'inches', 'ins', '"', '″'], is: 'inch' },
  { name: 'ft', dimension: 'length', aliases: ['foot', 'feet', "'", '′'], is: 'foot' },
  { name: 'yd', dimension: 'length', aliases: ['yds', 'yard', 'yards'], is: 'yard' },

  { name: 'deg', dimension: 'angle', aliases: ['°', 'º', 'degs', 'degree', 'degrees'], is: 'deg' },
  { name: 'rad', dimension: 'angle', aliases: ['radian', 'radians'], is: 'rad' },

  { name: 'm/s', dimension: 'speed', aliases: ['mps'], is: 'm/s' },
  { name: 'km/h', dimension: 'speed', aliases: ['kmh', 'kph'], is: 'km/h' },
  { name: 'mph', dimension: 'speed', aliases: ['mi/h'], is: 'mi/h' },
  { name: 'ft/s', dimension: 'speed', aliases: ['fps'], is: 'ft/s' },
  { name: 'kn', dimension: 'speed', aliases: ['kt', 'kts', 'knot', 'knots'], is: '1852 m/h' },

  { name: 'rpm', dimension: 'rotation', aliases: ['rev/min', 'r/min'], is: 'cycle/minute' },
  { name: 'rev/s', dimension: 'rotation', aliases: ['rps', 'r/s'], is: 'cycle/s' },
  { name: 'rad/s', dimension: 'rotation', aliases: [], is: 'rad/s' },
  { name: 'deg/s', dimension: 'rotation', aliases: ['°/s', 'dps'], is: 'deg/s' },

  { name: 's', dimension: 'time', aliases: ['sec', 'secs', 'second', 'seconds'], is: 's' },
  { name: 'ms', dimension: 'time', aliases: ['msec', 'millisecond', 'milliseconds'], is: 'ms' },

  { name: 'g', dimension: 'mass', aliases: ['gram', 'grams', 'gramme', 'grammes'], is: 'g' },
  { name: 'kg', dimension: 'mass', aliases: ['kilo', 'kilos', 'kilogram', 'kilograms'], is: 'kg' },
  { name: 'lb', dimension: 'mass', aliases: ['lbs', 'pound', 'pounds'], is: 'lbm' },
  { name: 'oz', dimension: 'mass', aliases: ['ounce', 'ounces'], is: 'oz' },

  { name: 'g cm²', dimension: 'inertia', aliases: spellings('g'), is: 'g cm^2' },
  { name: 'kg m²', dimension: 'inertia', aliases: spellings('kg'), is: 'kg m^2' },

  {
    name: '°C',
    dimension: 'temperature',
    aliases: ['ºC', 'C', 'degC', 'deg C', 'celsius'],
    is: 'degC',
    difference: 'K',
  },
  {
    name: '°F',
    dimension: 'temperature',
    aliases: ['ºF', 'F', 'degF', 'deg F', 'fahrenheit'],
    is: 'degF',
    difference: 'degR',
  },
  { name: 'K', dimension: 'temperature', aliases: ['kelvin'], is: 'K', difference: 'K' },

  { name: 'hPa', dimension: 'pressure', aliases: [], is: 'hPa' },
  { name: 'kPa', dimension: 'pressure', aliases: [], is: 'kPa' },
  { name: 'Pa', dimension: 'pressure', aliases: ['pascal', 'pascals'], is: 'Pa' },
  { name: 'mbar', dimension: 'pressure', aliases: ['mb', 'millibar', 'millibars'], is: 'mbar' },
  { name: 'inHg', dimension: 'pressure', aliases: ['in Hg', '"Hg'], is: '3386.388640341 Pa' },
  { name: 'mmHg', dimension: 'pressure', aliases: ['mm Hg'], is: '133.322387415 Pa' },

  { name: '%', dimension: 'fraction', aliases: ['percent', 'per cent', 'pct'], is: 0.01 },

  { name: '', dimension: 'ratio', aliases: ['x', '×'], is: 1 },
];
