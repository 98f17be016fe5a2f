// Reads the number after "±" with the words that follow it; knows nothing of the value that it belongs to.
import type { MeasureCode, Notation, Problem, Span } from './measure.ts';
import { isProblem, outOfRange, readNumber } from './number.ts';
import { quote } from './quote.ts';
import { skipSpaces, wordsEnd, type NumberToken } from './scan.ts';
import { differenceToSI } from './units.ts';
import { readWords, type Words } from './words.ts';

export interface Uncertainty {
  /** Undefined where no positive number can be made out. */
  readonly number: NumberToken | undefined;
  readonly words: Words;
  readonly end: number;
  readonly problem?: Problem<MeasureCode>;
}

/** Reads `NUMBER [UNIT] [DIRECTION]` at `at`; `sign` is the "±" before it, where there is one. */
export function readUncertainty(
  text: string,
  at: number,
  end: number,
  notation: Notation,
  sign: Span | undefined,
): Uncertainty {
  const start = skipSpaces(text, at);
  if (start >= end && sign !== undefined) {
    const found = `nothing after ${quote(text.slice(sign.start, sign.end))}`;
    const problem = { code: 'unreadable-measure', span: sign, found, expected } as const;
    return { number: undefined, words: {}, end, problem };
  }
  const number = readNumber(text, start, end, () => expected);
  if (isProblem(number)) {
    return {
      number: undefined,
      words: {},
      end: Math.max(wordsEnd(text, start), number.span.end),
      problem: number,
    };
  }
  const wordsStart = skipSpaces(text, number.end);
  const wordsStop = wordsEnd(text, wordsStart);
  const words = readWords(text, wordsStart, wordsStop, notation);
  const stop = wordsStop > wordsStart ? wordsStop : number.end;
  if (number.value > 0) return { number, words, end: stop };
  const span = { start: number.start, end: words.unitSpan?.end ?? number.end };
  const found = quote(text.slice(span.start, span.end));
  return {
    number: undefined,
    words,
    end: stop,
    problem: { code: 'uncertainty-not-positive', span, found, expected },
  };
}

/** The stated uncertainty in SI, with where it stands, or a problem where it is too large or too small to compute with. */
export function placeUncertainty(
  text: string,
  number: NumberToken,
  unitEnd: number | undefined,
  unit: string,
): { readonly stated: number; readonly span: Span } | Problem<MeasureCode> {
  const stated = differenceToSI(number.value, unit);
  const span = { start: number.start, end: unitEnd ?? number.end };
  return Number.isFinite(stated) && stated > 0 ? { stated, span } : outOfRange(text, span);
}

const expected = 'a number above zero after `±`';
