// Finds numbers, signs, words and their ends in a measurement's text by position; knows no unit, direction or method.
import type { Span } from './measure.ts';

export interface NumberToken extends Span {
  readonly value: number;
  readonly negative: boolean;
  /** 'comma' for "3,5" or "2,500", 'points' for "1.2.3"; `value` means nothing then. */
  readonly flaw: 'comma' | 'points' | undefined;
}

/** The first position at or after `at` that is not white space. */
export function skipSpaces(text: string, at: number): number {
  while (at < text.length && isSpace(text.charCodeAt(at))) at++;
  return at;
}

/** The end of the last thing before `end` that is not white space, but not before `start`. */
export function trimEnd(text: string, start: number, end: number): number {
  while (end > start && isSpace(text.charCodeAt(end - 1))) end--;
  return end;
}

/** The end of the run without white space that starts at `at`. */
export function wordEnd(text: string, at: number, end: number): number {
  while (at < end && !isSpace(text.charCodeAt(at))) at++;
  return at;
}

/** The number that starts at `at`: a sign (also "−"), digits, a point, digits, an exponent. Undefined where none starts. */
export function scanNumber(text: string, at: number): NumberToken | undefined {
  const start = at;
  const first = text.charCodeAt(at);
  const negative = first === code.minus || first === code.typographicMinus;
  if (negative || first === code.plus) at++;
  const digits = at;
  at = skipDigits(text, at);
  let count = at - digits;
  if (text.charCodeAt(at) === code.point && text.charCodeAt(at + 1) !== code.point) {
    const after = skipDigits(text, at + 1);
    count += after - at - 1;
    if (count > 0) at = after;
  }
  if (count === 0) return undefined;
  const separator = text.charCodeAt(at);
  if ((separator === code.comma || separator === code.point) && isDigit(text.charCodeAt(at + 1))) {
    return {
      start,
      end: skipDigitGroups(text, at),
      value: 0,
      negative,
      flaw: separator === code.comma ? 'comma' : 'points',
    };
  }
  at = skipExponent(text, at);
  const size = Number(text.slice(digits, at));
  return { start, end: at, value: negative ? -size : size, negative, flaw: undefined };
}

/** The position after "±", "+-" or "+/-" at `at`, or `at` where none stands. */
export function skipUncertaintySign(text: string, at: number): number {
  const first = text.charCodeAt(at);
  if (first === code.plusMinus) return at + 1;
  if (first !== code.plus) return at;
  const slash = text.charCodeAt(at + 1) === code.slash ? 1 : 0;
  const last = text.charCodeAt(at + 1 + slash);
  return last === code.minus || last === code.typographicMinus ? at + 2 + slash : at;
}

/** The position after the word "by" at `at`, or `at` where it does not stand. */
export function skipBy(text: string, at: number): number {
  const b = text.charCodeAt(at) | 0x20;
  const y = text.charCodeAt(at + 1) | 0x20;
  if (b !== code.b || y !== code.y) return at;
  return at + 2 >= text.length || isSpace(text.charCodeAt(at + 2)) ? at + 2 : at;
}

/** The position after ".." at `at`, or `at` where it does not stand. */
export function skipRange(text: string, at: number): number {
  return text.charCodeAt(at) === code.point && text.charCodeAt(at + 1) === code.point ? at + 2 : at;
}

/** Where the unit and direction words that start at `at` end: before "±", "..", "by" or the end of the text. */
export function wordsEnd(text: string, at: number): number {
  const start = at;
  let wordMayStart = true;
  while (at < text.length) {
    if (skipUncertaintySign(text, at) > at || skipRange(text, at) > at) break;
    if (wordMayStart && skipBy(text, at) > at) break;
    wordMayStart = endsWord(text.charCodeAt(at));
    at++;
  }
  return trimEnd(text, start, at);
}

/** Where a method's words end: before "±" or the end of the text. */
export function methodEnd(text: string, at: number): number {
  const start = at;
  while (at < text.length && skipUncertaintySign(text, at) === at) at++;
  return trimEnd(text, start, at);
}

/** Whether a letter starts at `at`, of any alphabet. */
export function startsWithLetter(text: string, at: number): boolean {
  return /^\p{L}/u.test(text.slice(at, at + 2));
}

const code = {
  percent: 0x25,
  plus: 0x2b,
  comma: 0x2c,
  minus: 0x2d,
  point: 0x2e,
  slash: 0x2f,
  b: 0x62,
  e: 0x65,
  y: 0x79,
  degree: 0xb0,
  plusMinus: 0xb1,
  typographicMinus: 0x2212,
} as const;

function isDigit(unit: number): boolean {
  return unit >= 0x30 && unit <= 0x39;
}

/** The white space that people meet: ASCII's, the no-break and thin spaces of word processors, line ends. */
function isSpace(unit: number): boolean {
  if (unit <= 0x20) return unit === 0x20 || (unit >= 0x09 && unit <= 0x0d);
  if (unit < 0xa0) return false;
  return (
    unit === 0xa0 ||
    (unit >= 0x2000 && unit <= 0x200a) ||
    unit === 0x202f ||
    unit === 0x2028 ||
    unit === 0x2029
  );
}

/** "58%by eye": a sign is not part of the word that follows it. */
function endsWord(unit: number): boolean {
  return isSpace(unit) || unit === code.percent || unit === code.degree;
}

function skipDigits(text: string, at: number): number {
  while (isDigit(text.charCodeAt(at))) at++;
  return at;
}

function skipDigitGroups(text: string, at: number): number {
  for (;;) {
    const unit = text.charCodeAt(at);
    const separates = (unit === code.comma || unit === code.point) && isDigit(text.charCodeAt(at + 1));
    if (!separates) return at;
    at = skipDigits(text, at + 1);
  }
}

function skipExponent(text: string, at: number): number {
  if ((text.charCodeAt(at) | 0x20) !== code.e) return at;
  const sign = text.charCodeAt(at + 1);
  const digits = sign === code.plus || sign === code.minus ? at + 2 : at + 1;
  return isDigit(text.charCodeAt(digits)) ? skipDigits(text, digits) : at;
}
