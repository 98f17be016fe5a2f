// Reads one number of a measurement or says what is wrong with it, and brings it to SI; knows no words.
import type { MeasureCode, Notation, Problem, Span } from './measure.ts';
import { quote } from './quote.ts';
import { scanNumber, wordEnd, type NumberToken } from './scan.ts';
import { findUnit } from './units.ts';

/** The finite number that starts at `at`; a number too large is a problem, and so is one with a comma. */
export function readNumber(
  text: string,
  at: number,
  end: number,
  expected: () => string,
): NumberToken | Problem<MeasureCode> {
  const number = scanNumber(text, at);
  if (number === undefined) return explainMissing(text, at, end, expected());
  if (number.flaw !== undefined) return explainFlaw(text, number);
  return Number.isFinite(number.value) ? number : outOfRange(text, number);
}

export function isProblem(read: NumberToken | Problem<MeasureCode>): read is Problem<MeasureCode> {
  return 'code' in read;
}

/** "a number, as in `7 cm`". */
export function expectNumber(notation: Notation): string {
  const unit = findUnit(notation.unit)?.name ?? notation.unit;
  return `a number, as in ${quote(`7 ${unit}`)}`;
}

export function outOfRange(text: string, span: Span): Problem<MeasureCode> {
  const { start, end } = span;
  return {
    code: 'number-out-of-range',
    span: { start, end },
    found: quote(text.slice(start, end)),
    expected: 'a number of ordinary size',
  };
}

function explainMissing(text: string, at: number, end: number, expected: string): Problem<MeasureCode> {
  if (at >= end) {
    return {
      code: 'unreadable-measure',
      span: { start: 0, end },
      found: `${quote(text.slice(0, end))}, with no number`,
      expected,
    };
  }
  const span = { start: at, end: wordEnd(text, at, end) };
  const word = text.slice(span.start, span.end);
  if (infinities.has(word.toLowerCase())) return outOfRange(text, span);
  return { code: 'unreadable-measure', span, found: quote(word), expected };
}

/** JavaScript's, YAML's and people's ways to write it. */
const infinities: ReadonlySet<string> = new Set([
  'infinity',
  '-infinity',
  '.inf',
  '-.inf',
  '+.inf',
  'inf',
  '-inf',
  '∞',
  '-∞',
]);

function explainFlaw(text: string, number: NumberToken): Problem<MeasureCode> {
  const span = { start: number.start, end: number.end };
  const word = text.slice(span.start, span.end);
  const code = 'unreadable-measure';
  if (number.flaw === 'points')
    return { code, span, found: quote(word), expected: 'a number with one decimal point' };

  const comma = word.indexOf(',');
  const single = comma === word.lastIndexOf(',') && !word.includes('.');
  const found = `${quote(word)}, a number with a comma`;
  // "2,500" is a decimal fraction to some and a thousand to others, so neither is proposed before the other.
  if (!single || word.length - comma === 4) {
    return { code, span, found, expected: 'a decimal point, and no sign between thousands' };
  }
  const nearest = word.replace(',', '.');
  return { code, span, found, expected: `a decimal point, as in ${quote(nearest)}`, nearest };
}
