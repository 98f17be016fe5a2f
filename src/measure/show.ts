// Shows computed values as people read them, rounded to what is known of them; its text need not be read back.
import { decimalsOf } from './digits.ts';
import type { DirectionWord, Notation } from './measure.ts';
import { differenceFromSI, differenceToSI, findUnit, fromSI } from './units.ts';

const noValue = 'no value';
/** An uncertainty whose first digit stands further behind than this, counted from the notation's last decimal, is shown as none. */
const mostFurtherDecimals = 2;

/**
 * "2.3 deg right ± 0.4 deg"; `value` and the standard uncertainty `u` in SI, `unit` instead of the quantity's own. The
 * value has the decimals of `u`, or the notation's where `u` is missing, not positive or too small for anybody to care.
 * "no value" where the value is not finite. Throws RangeError only if `notation.unit` is not in the unit table.
 */
export function showValue(notation: Notation, value: number, u?: number | null, unit?: string): string {
  const shown = unitToShow(unit, notation);
  const usual = usualDecimals(notation, shown);
  const spread = u === undefined || u === null ? NaN : differenceFromSI(u, shown);
  const decimals = Math.min(decimalsOf(spread) ?? usual, 15);
  const isExact = decimals > usual + mostFurtherDecimals;
  if (isExact) return showValue(notation, value, undefined, unit);
  const side = showSide(notation, fromSI(value, shown), decimals);
  if (side === undefined) return noValue;
  const spreadText = fixed(spread, decimals);
  const isKnown = Number(spreadText) > 0 && Number.isFinite(Number(spreadText));
  const number = isKnown || Number(side.number) !== 0 ? side.number : '0';
  const text = `${number}${suffix(shown)}${suffix(side.word)}`;
  return isKnown ? `${text} ± ${spreadText}${suffix(shown)}` : text;
}

/** "2..5 deg left", "0..5 yd left", and across zero "1 deg left..2 deg right"; `from` ≤ `to` in SI. Errors as `showValue`. */
export function showWindow(notation: Notation, from: number, to: number, unit?: string): string {
  const shown = unitToShow(unit, notation);
  const [low, high] = [fromSI(from, shown), fromSI(to, shown)];
  const decimals = windowDecimals(low, high, usualDecimals(notation, shown));
  const first = showSide(notation, low, decimals);
  const second = showSide(notation, high, decimals);
  if (first === undefined || second === undefined) return noValue;
  const word = first.word ?? second.word;
  if (first.word !== undefined && second.word !== undefined && first.word !== second.word) {
    return `${plain(first)}${suffix(shown)}${suffix(first.word)}..${plain(second)}${suffix(shown)}${suffix(second.word)}`;
  }
  const turned = word !== undefined && low < 0;
  const numbers = turned ? `${plain(second)}..${plain(first)}` : `${plain(first)}..${plain(second)}`;
  return `${numbers}${suffix(shown)}${suffix(word)}`;
}

/** "0.4 deg": an uncertainty alone, in the quantity's own unit, with the digits that `showValue` would give it. */
export function showSpread(notation: Notation, u: number): string {
  const shown = unitToShow(undefined, notation);
  const spread = differenceFromSI(u, shown);
  const decimals = Math.min(decimalsOf(spread) ?? usualDecimals(notation, shown), 15);
  return Number.isFinite(spread) ? `${fixed(spread, decimals)}${suffix(shown)}` : noValue;
}

/** "7.0 cm", "15 points": how large a difference is, in the unit shown, with the decimals of its standard uncertainty `u`; the zero of a temperature has no part in it. */
export function showSize(notation: Notation, difference: number, u?: number): string {
  const shown = unitToShow(undefined, notation);
  const usual = usualDecimals(notation, shown);
  const spread = u === undefined ? NaN : differenceFromSI(u, shown);
  const size = Math.abs(differenceFromSI(difference, shown));
  if (!Number.isFinite(size)) return noValue;
  return inPoints(`${fixed(size, Math.min(decimalsOf(spread) ?? usual, usual + 3, 15))}${suffix(shown)}`);
}

/** "15 points", "1 point": what lies between two shares, since 15 % more of 52 % is another number than 67 %. */
export function inPoints(difference: string): string {
  return difference.replaceAll(/(?<=\d) %/g, ' points').replaceAll(/(?<![\d.,])1 points/g, '1 point');
}

/** The other unit that a hover shows beside the quantity's own, if there is a sensible one. */
export function secondUnit(notation: Notation): string | undefined {
  return counterparts[findUnit(notation.shown ?? notation.unit)?.name ?? ''];
}

/** The unit that coaches used to the other system would say. */
const counterparts: Readonly<Record<string, string>> = {
  mm: 'in',
  cm: 'in',
  m: 'yd',
  in: 'cm',
  ft: 'm',
  yd: 'm',
  rad: 'deg',
  'm/s': 'mph',
  'km/h': 'mph',
  mph: 'm/s',
  'ft/s': 'm/s',
  kn: 'm/s',
  'rad/s': 'rpm',
  'rev/s': 'rpm',
  g: 'oz',
  kg: 'lb',
  lb: 'kg',
  oz: 'g',
  '°C': '°F',
  '°F': '°C',
  K: '°C',
  hPa: 'inHg',
  kPa: 'inHg',
  Pa: 'hPa',
  mbar: 'inHg',
  inHg: 'hPa',
  mmHg: 'hPa',
};

interface Side {
  readonly number: string;
  readonly word: string | undefined;
}

/** The rounded number with its direction word; a minus only where no word says it, neither for what rounds to zero, nothing for what is not finite. */
function showSide(notation: Notation, value: number, decimals: number): Side | undefined {
  const size = fixed(Math.abs(value), decimals);
  if (!Number.isFinite(Number(size))) return undefined;
  if (Number(size) === 0) return { number: size, word: undefined };
  const word = signWord(notation, value)?.word;
  return { number: word === undefined && value < 0 ? `-${size}` : size, word };
}

/** The word for the sign of a value, or for 1 or -1; a bearing cannot be told from a sign, so its words are not used. */
export function signWord(notation: Notation, value: number): DirectionWord | undefined {
  return notation.directions.find(
    (direction) => direction.bearing === undefined && direction.sign === Math.sign(value),
  );
}

function unitToShow(unit: string | undefined, notation: Notation): string {
  const wanted = unit === undefined ? undefined : findUnit(unit);
  if (wanted?.dimension === notation.dimension) return wanted.name;
  return notation.shown ?? findUnit(notation.unit)?.name ?? notation.unit;
}

/** The notation's decimals, moved by the powers of ten between its own unit and the one shown. */
function usualDecimals(notation: Notation, shown: string): number {
  const ratio = differenceToSI(1, shown) / differenceToSI(1, notation.unit);
  return Math.max(0, notation.decimals + Math.round(Math.log10(ratio)));
}

/** More decimals where the usual ones would make both ends of a window the same. */
function windowDecimals(low: number, high: number, usual: number): number {
  let decimals = usual;
  while (decimals < usual + 3 && low !== high && fixed(low, decimals) === fixed(high, decimals)) decimals++;
  return decimals;
}

function fixed(value: number, decimals: number): string {
  if (decimals >= 0) return value.toFixed(decimals);
  const step = 10 ** -decimals;
  return String(Math.round(value / step) * step);
}

/** A window's number without the zeros that say nothing: "2", "2.5". */
function plain(side: Side): string {
  return String(Number(side.number));
}

function suffix(word: string | undefined): string {
  return word ? ` ${word}` : '';
}
