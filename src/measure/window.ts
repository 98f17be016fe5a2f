// Reads what follows the ".." of a window and builds the window; knows nothing of single measurements.
import type { MeasureCode, Notation, Parsed, Problem, Window } from './measure.ts';
import { expectNumber, isProblem, outOfRange, readNumber } from './number.ts';
import { quote } from './quote.ts';
import { skipSpaces, wordsEnd, type NumberToken } from './scan.ts';
import { toSI } from './units.ts';
import { expectDirection, readWords, type Words } from './words.ts';

/** One side of a window: "2", "2 deg" or "2 deg left". */
export interface Bound {
  readonly number: NumberToken;
  readonly words: Words;
}

/** Reads `B UNIT [DIRECTION]` after the ".." from `dots` to `afterDots`; `first` is what stands before it. */
export function parseWindow(
  text: string,
  first: Bound,
  dots: number,
  afterDots: number,
  end: number,
  notation: Notation,
): Parsed {
  const at = skipSpaces(text, afterDots);
  const range = text.slice(dots, afterDots);
  if (at >= end) {
    const found = `nothing after ${quote(range)}`;
    return fail({
      code: 'unreadable-measure',
      span: { start: dots, end: afterDots },
      found,
      expected: 'the larger number',
    });
  }
  if (text[afterDots] === '.') {
    const span = { start: dots, end: afterDots + 1 };
    return fail({
      code: 'unreadable-measure',
      span,
      found: quote('...'),
      expected: quote('..'),
      nearest: '..',
    });
  }
  const number = readNumber(text, at, end, () => expectNumber(notation));
  if (isProblem(number)) return fail(number);
  const wordsStart = skipSpaces(text, number.end);
  const wordsStop = wordsEnd(text, wordsStart);
  const second: Bound = { number, words: readWords(text, wordsStart, wordsStop, notation) };
  const wrong = first.words.problem ?? second.words.problem ?? findSignProblem(text, first, second, notation);
  if (wrong !== undefined) return fail(wrong);
  const rest = skipSpaces(text, Math.max(wordsStop, number.end));
  if (rest < end) {
    const span = { start: rest, end };
    return fail({
      code: 'unreadable-measure',
      span,
      found: quote(text.slice(rest, end)),
      expected: 'nothing after a window',
    });
  }
  return build(text, first, second, notation);
}

function findSignProblem(
  text: string,
  first: Bound,
  second: Bound,
  notation: Notation,
): Problem<MeasureCode> | undefined {
  const { direction } = second.words;
  if (direction === undefined) {
    if (first.words.direction === undefined) return undefined;
    if (isZeroAlone(second) && !first.number.negative) return undefined;
    const span = { start: second.number.start, end: second.words.unitSpan?.end ?? second.number.end };
    const found = `${quote(text.slice(span.start, span.end))} without a direction`;
    return { code: 'missing-direction', span, found, expected: expectDirection(notation) };
  }
  const negative = [first, second].find((bound) => bound.number.negative);
  return negative && directionWithSign(text, negative.number, (negative.words.direction ?? direction).word);
}

/** Zero has no side: "2 deg left..0 deg" says all that there is to say. */
function isZeroAlone({ number, words }: Bound): boolean {
  return number.value === 0 && words.direction === undefined;
}

/** "`-5` before `left`": the sign and the word would each turn the number round. */
export function directionWithSign(text: string, number: NumberToken, word: string): Problem<MeasureCode> {
  return {
    code: 'direction-with-sign',
    span: { start: number.start, end: number.end },
    found: `${quote(text.slice(number.start, number.end))} before ${quote(word)}`,
    expected: 'a number without a sign before a direction',
  };
}

function build(text: string, first: Bound, second: Bound, notation: Notation): Parsed {
  const unit = second.words.unit ?? first.words.unit;
  const firstSign = (first.words.direction ?? second.words.direction)?.sign ?? 1;
  const isToZero = first.words.direction !== undefined && isZeroAlone(second);
  const secondSign = second.words.direction?.sign ?? (isToZero ? firstSign : 1);
  const a = boundInSI(first, firstSign, unit?.name ?? notation.unit);
  const b = boundInSI(second, secondSign, unit?.name ?? notation.unit);
  if (!Number.isFinite(a)) return fail(outOfRange(text, first.number));
  if (!Number.isFinite(b)) return fail(outOfRange(text, second.number));
  const oneSide = firstSign === secondSign;
  // Where the first bound names its side too, as in "15 m left..5 m left", either order can be read in one way only.
  const isTurned = first.words.direction === undefined && a * firstSign > b * firstSign;
  if (oneSide && isTurned) return fail(reversed(text, first, second));

  const [from, to] = a <= b ? [first, second] : [second, first];
  const { unitSpan = first.words.unitSpan } = second.words;
  const told = isToZero ? first.words : second.words;
  const { directionSpan } = told;
  const window: Window = {
    kind: 'window',
    from: Math.min(a, b),
    to: Math.max(a, b),
    unit: unit?.name,
    direction: oneSide ? told.direction?.word : undefined,
    spans: {
      from: { start: from.number.start, end: from.number.end },
      to: { start: to.number.start, end: to.number.end },
      ...(unitSpan && { unit: unitSpan }),
      ...(directionSpan && { direction: directionSpan }),
    },
  };
  return { value: window, problems: [] };
}

function boundInSI(bound: Bound, sign: 1 | -1, unit: string): number {
  return toSI(sign * bound.number.value, bound.words.unit?.name ?? unit) + 0;
}

function reversed(text: string, first: Bound, second: Bound): Problem<MeasureCode> {
  const span = { start: first.number.start, end: second.number.end };
  const smaller = text.slice(second.number.start, second.number.end);
  const larger = text.slice(first.number.start, first.number.end);
  const found = quote(text.slice(span.start, span.end));
  const problem = { code: 'window-reversed', span, found } as const;
  // With a unit on both sides the exchange of the numbers alone may be wrong.
  if (first.words.unit !== undefined) return { ...problem, expected: 'the smaller number first' };
  const nearest = `${smaller}..${larger}`;
  return { ...problem, expected: `the smaller number first, as in ${quote(nearest)}`, nearest };
}

function fail(problem: Problem<MeasureCode>): Parsed {
  return { value: undefined, problems: [problem] };
}
