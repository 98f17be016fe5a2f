// Writes measures and windows in the notation, so that reading them gives the same; knows nothing of documents.
import type { DirectionWord, Measure, Notation, Window } from './measure.ts';
import { differenceFromSI, differenceToSI, findUnit, fromSI, toSI } from './units.ts';

/**
 * The canonical short form: "~9 cm ahead ± 2 cm by video". Reading it gives the same value (to the last bit if it came from
 * text, else to one unit in the last place), uncertainty, method, direction and estimate. A bare number gets the
 * quantity's unit and a signed one the direction word, where there is one.
 */
export function printMeasure(measure: Measure, notation: Notation): string {
  const unit = unitToPrint(measure.unit, notation);
  const direction = directionToPrint(measure.value, measure.direction, notation);
  const number = printNumber(measure.value, direction, unit);
  const stated =
    measure.stated === undefined ? '' : ` ± ${printDifference(measure.stated, unit)}${suffix(unit)}`;
  const method = measure.method === undefined ? '' : ` by ${measure.method}`;
  return `${measure.estimate ? '~' : ''}${number}${suffix(unit)}${suffix(direction?.word)}${stated}${method}`;
}

/** The canonical "2..5 deg left"; a window across zero has signed numbers and no direction word. Reading it gives the same window. */
export function printWindow(window: Window, notation: Notation): string {
  const unit = unitToPrint(window.unit, notation);
  const { from, to } = window;
  const across = from < 0 && to > 0;
  const direction = across ? undefined : directionToPrint(from === 0 ? to : from, window.direction, notation);
  const [first, second] = direction?.sign === -1 ? [to, from] : [from, to];
  const numbers = `${printNumber(first, direction, unit)}..${printNumber(second, direction, unit)}`;
  return `${numbers}${suffix(unit)}${suffix(direction?.word)}`;
}

function unitToPrint(written: string | undefined, notation: Notation): string {
  const unit = written === undefined ? undefined : findUnit(written);
  if (unit?.dimension === notation.dimension) return unit.name;
  return findUnit(notation.unit)?.name ?? notation.unit;
}

function directionToPrint(
  value: number,
  written: string | undefined,
  notation: Notation,
): DirectionWord | undefined {
  const own = notation.directions.find((direction) => direction.word === written);
  if (own !== undefined && (value === 0 || own.sign === Math.sign(value))) return own;
  // A bearing cannot be told from the sign.
  return notation.directions.find(
    (direction) => direction.bearing === undefined && direction.sign === Math.sign(value),
  );
}

function printNumber(si: number, direction: DirectionWord | undefined, unit: string): string {
  const sign = direction?.sign ?? 1;
  const isExact = (value: number): boolean => toSI(sign * value, unit) === si;
  return shortest(sign * fromSI(si, unit), isExact);
}

function printDifference(si: number, unit: string): string {
  return shortest(differenceFromSI(si, unit), (value) => differenceToSI(value, unit) === si);
}

/** The number with the fewest digits that reads back the same; all its digits where none does. */
function shortest(value: number, isExact: (value: number) => boolean): string {
  for (let digits = 1; digits <= 17; digits++) {
    const rounded = Number(value.toPrecision(digits));
    if (isExact(rounded)) return String(rounded + 0);
  }
  return String(value + 0);
}

function suffix(word: string | undefined): string {
  return word ? ` ${word}` : '';
}
