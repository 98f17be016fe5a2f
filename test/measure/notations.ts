// The notations that the tests of this folder read and print with; knows nothing of the registry's own.
import type { DirectionWord, Measure, Notation, ParseOptions, Window } from '../../src/measure/measure.ts';
import { parseMeasure } from '../../src/measure/parse.ts';

const words = (positive: string, negative: string): readonly DirectionWord[] => [
  { word: positive, sign: 1 },
  { word: negative, sign: -1 },
];

const quarterTurn = Math.PI / 2;

export const offset: Notation = {
  dimension: 'length',
  unit: 'cm',
  directions: words('ahead', 'behind'),
  decimals: 1,
};
export const width: Notation = { dimension: 'length', unit: 'cm', directions: [], decimals: 1 };
export const strike: Notation = {
  dimension: 'length',
  unit: 'mm',
  directions: words('toward heel', 'toward toe'),
  decimals: 0,
};
export const side: Notation = {
  dimension: 'length',
  unit: 'yd',
  directions: words('right', 'left'),
  decimals: 0,
};
export const angle: Notation = {
  dimension: 'angle',
  unit: 'deg',
  directions: words('right', 'left'),
  decimals: 1,
};
export const speed: Notation = { dimension: 'speed', unit: 'm/s', directions: [], decimals: 1 };
export const wind: Notation = {
  dimension: 'speed',
  unit: 'm/s',
  directions: [
    { word: 'from left', sign: 1, bearing: quarterTurn },
    { word: 'from right', sign: 1, bearing: -quarterTurn },
    { word: 'from ahead left', sign: 1, bearing: quarterTurn / 2 },
  ],
  decimals: 1,
};
export const spin: Notation = { dimension: 'rotation', unit: 'rpm', directions: [], decimals: 0 };
export const time: Notation = { dimension: 'time', unit: 'ms', directions: [], decimals: 0 };
export const mass: Notation = { dimension: 'mass', unit: 'g', directions: [], decimals: 0 };
export const inertia: Notation = { dimension: 'inertia', unit: 'g cm²', directions: [], decimals: 0 };
export const temperature: Notation = { dimension: 'temperature', unit: '°C', directions: [], decimals: 0 };
export const pressure: Notation = { dimension: 'pressure', unit: 'hPa', directions: [], decimals: 0 };
export const share: Notation = { dimension: 'fraction', unit: '%', directions: [], decimals: 0 };
export const ratio: Notation = { dimension: 'ratio', unit: '', directions: [], decimals: 2 };

/** At least one notation of each dimension, with and without directions. */
export const notations: readonly Notation[] = [
  offset,
  width,
  strike,
  side,
  angle,
  speed,
  wind,
  spin,
  time,
  mass,
  inertia,
  temperature,
  pressure,
  share,
  ratio,
];

export const methods = ['eye', 'video', 'tape', 'radar', 'pressure mat', 'motion capture'];

export const single: ParseOptions = { window: 'no', methods };
export const either: ParseOptions = { window: 'also', methods };
export const windowOnly: ParseOptions = { window: 'only', methods };

/** The measure that a text without problems gives. */
export function readMeasure(text: string, notation: Notation): Measure {
  const { value, problems } = parseMeasure(text, notation, single);
  if (value?.kind !== 'measure' || problems.length > 0)
    throw new Error(`${text}: ${JSON.stringify(problems)}`);
  return value;
}

/** The window that a text without problems gives. */
export function readWindow(text: string, notation: Notation): Window {
  const { value, problems } = parseMeasure(text, notation, windowOnly);
  if (value?.kind !== 'window' || problems.length > 0)
    throw new Error(`${text}: ${JSON.stringify(problems)}`);
  return value;
}

/** The problems of a text as "code at `exact characters`", with the nearest known word where there is one. */
export function readProblems(
  text: string,
  notation: Notation,
  options: ParseOptions = single,
): readonly string[] {
  return parseMeasure(text, notation, options).problems.map(({ code, span, nearest }) => {
    const place = `${code} at \`${text.slice(span.start, span.end)}\``;
    return nearest === undefined ? place : `${place}, near ${nearest}`;
  });
}

/** Equal but for the rounding of a few floating-point operations, or both too small to have all their digits. */
export function isClose(a: number, b: number): boolean {
  return Math.abs(a - b) <= 1e-300 + 4 * Number.EPSILON * Math.max(Math.abs(a), Math.abs(b));
}
