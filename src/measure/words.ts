// Tells unit and direction in the words after a number, and what is wrong with those that are neither; knows no numbers.
import type { Dimension, DirectionWord, MeasureCode, Notation, Problem, Span } from './measure.ts';
import { findNearest } from './nearest.ts';
import { collapseSpaces, quote, quoteList } from './quote.ts';
import { skipSpaces, startsWithLetter, trimEnd, wordEnd } from './scan.ts';
import { dimensionTitles } from './unit-table.ts';
import { findUnit, unitsOf, type Unit } from './units.ts';

export interface Words {
  readonly unit?: Unit;
  readonly unitSpan?: Span;
  readonly direction?: DirectionWord;
  readonly directionSpan?: Span;
  /** Set where a word is neither, or is a unit of something else. */
  readonly problem?: Problem<MeasureCode>;
}

const none: Words = {};

/** Reads `[UNIT] [DIRECTION]` from `start` to `end`, which are not at white space. */
export function readWords(text: string, start: number, end: number, notation: Notation): Words {
  if (start >= end) return none;
  const whole = findDirection(text.slice(start, end), notation.directions);
  if (whole !== undefined) return { direction: whole, directionSpan: { start, end } };
  const placed = findLongestUnit(text, start, end);
  if (placed === undefined) return { problem: explainFirstWord(text, start, end, notation) };

  const { unit, end: unitEnd } = placed;
  const unitSpan = { start, end: unitEnd };
  if (unit.dimension !== notation.dimension)
    return { problem: wrongDimension(text, unitSpan, unit, notation) };
  const rest = skipSpaces(text, unitEnd);
  if (rest >= end) return { unit, unitSpan };
  const direction = findDirection(text.slice(rest, end), notation.directions);
  const directionSpan = { start: rest, end };
  if (direction !== undefined) return { unit, unitSpan, direction, directionSpan };
  return { unit, unitSpan, problem: explainRest(text, directionSpan, notation) };
}

/** "a unit of length (mm, cm, m, in, ft, yd)". */
export function expectUnit(notation: Notation): string {
  if (notation.dimension === 'ratio') return 'no unit';
  return `${nameUnitOf(notation.dimension)} (${unitsOf(notation.dimension)
    .map((unit) => unit.name)
    .join(', ')})`;
}

/** "a direction (`ahead` or `behind`)". */
export function expectDirection(notation: Notation): string {
  return `a direction (${quoteList(notation.directions.map((direction) => direction.word))})`;
}

function findDirection(text: string, directions: readonly DirectionWord[]): DirectionWord | undefined {
  if (directions.length === 0) return undefined;
  for (const direction of directions) if (direction.word === text) return direction;
  const words = phrase(text).toLowerCase();
  return directions.find((direction) => direction.word.toLowerCase() === words);
}

interface PlacedUnit {
  readonly unit: Unit;
  readonly end: number;
}

/** The longest unit that starts at `start`, of at most two words ("g cm²"). */
function findLongestUnit(text: string, start: number, end: number): PlacedUnit | undefined {
  const first = wordEnd(text, start, end);
  const next = skipSpaces(text, first);
  if (next < end) {
    const second = wordEnd(text, next, end);
    const unit = findUnit(phrase(text.slice(start, second)));
    if (unit !== undefined) return { unit, end: second };
  }
  const unit = findUnit(text.slice(start, first));
  if (unit !== undefined) return { unit, end: first };
  // "7°right": a sign is not part of the word that follows it.
  const sign = text[start] === '°' || text[start] === '%' ? findUnit(text[start]) : undefined;
  return sign && { unit: sign, end: start + 1 };
}

/** Only texts with unusual white space are copied. */
function phrase(text: string): string {
  return /[^\S ]|\s\s/.test(text) ? collapseSpaces(text) : text;
}

function wrongDimension(text: string, span: Span, unit: Unit, notation: Notation): Problem<MeasureCode> {
  const found = text.slice(span.start, span.end);
  const nearest = nearestUnit(phrase(found), notation);
  const problem = {
    span,
    found: `${quote(found)}, ${nameUnitOf(unit.dimension)}`,
    expected: expectUnit(notation),
  };
  return withNearest({ code: 'wrong-dimension', ...problem }, nearest);
}

/** The first word is no unit and the words are no direction: which of the two did it try to be? */
function explainFirstWord(
  text: string,
  start: number,
  end: number,
  notation: Notation,
): Problem<MeasureCode> {
  const firstEnd = wordEnd(text, start, end);
  const first = { start, end: firstEnd };
  const found = quote(text.slice(start, firstEnd));
  if (!startsWithLetter(text, start))
    return { code: 'unreadable-measure', span: first, found, expected: expectNext(notation) };

  const whole = phrase(text.slice(start, end));
  const meant = nearestDirection(whole, notation);
  const unit = nearestUnit(text.slice(start, firstEnd), notation);
  const rest = skipSpaces(text, firstEnd);
  const restIsDirection =
    rest < end && findDirection(text.slice(rest, end), notation.directions) !== undefined;
  const asUnit =
    restIsDirection ||
    meant === undefined ||
    (unit !== undefined && rest >= end && isNearer(unit, meant, whole));
  if (!asUnit) {
    const span = { start, end: trimEnd(text, start, end) };
    const problem = { span, found: quote(whole), expected: expectDirection(notation) };
    return withNearest({ code: 'unknown-direction', ...problem }, meant);
  }
  const directionMayStand = notation.directions.length > 0 && rest >= end;
  const expected = directionMayStand
    ? `${expectUnit(notation)} or ${expectDirection(notation)}`
    : expectUnit(notation);
  return withNearest({ code: 'unknown-unit', span: first, found, expected }, unit);
}

function explainRest(text: string, span: Span, notation: Notation): Problem<MeasureCode> {
  const words = phrase(text.slice(span.start, span.end));
  const found = quote(words);
  if (!startsWithLetter(text, span.start))
    return { code: 'unreadable-measure', span, found, expected: expectNext(notation) };
  if (notation.directions.length === 0) {
    return {
      code: 'unknown-direction',
      span,
      found,
      expected: '`±` or `by` and a method, for there is no direction here',
    };
  }
  const problem = { span, found, expected: expectDirection(notation) };
  return withNearest({ code: 'unknown-direction', ...problem }, nearestDirection(words, notation));
}

function expectNext(notation: Notation): string {
  const unit = notation.dimension === 'ratio' ? '' : 'a unit, ';
  return `${unit}${notation.directions.length > 0 ? 'a direction, ' : ''}\`±\` or \`by\` and a method`;
}

/** A direction that has the word in it ("heel" in "toward heel") is near, however long it is. */
function nearestDirection(words: string, notation: Notation): string | undefined {
  const known = notation.directions.map((direction) => direction.word);
  const lower = words.toLowerCase();
  return findNearest(words, known) ?? known.find((word) => word.toLowerCase().split(' ').includes(lower));
}

function isNearer(a: string, b: string, to: string): boolean {
  return findNearest(to, [a, b]) === a;
}

/** As the unit is spelled; who leaves letters out gets its short name. */
function nearestUnit(word: string, notation: Notation): string | undefined {
  const spelling = findNearest(word, spellings(notation));
  const isShorter = spelling !== undefined && word.length + 1 < spelling.length;
  return isShorter ? findUnit(spelling)?.name : spelling;
}

function nameUnitOf(dimension: Dimension): string {
  if (dimension === 'ratio') return 'a ratio';
  return dimension === 'fraction' ? 'a percentage' : `a unit of ${dimensionTitles[dimension]}`;
}

function spellings(notation: Notation): readonly string[] {
  return unitsOf(notation.dimension)
    .flatMap((unit) => [unit.name, ...unit.aliases])
    .filter((spelling) => spelling !== '');
}

function withNearest(problem: Problem<MeasureCode>, nearest: string | undefined): Problem<MeasureCode> {
  return nearest === undefined ? problem : { ...problem, nearest };
}
