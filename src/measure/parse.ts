// Reads one measurement or window written by a coach; knows nothing of YAML or of what is measured.
import type {
  DirectionWord,
  Measure,
  MeasureCode,
  Notation,
  Parsed,
  ParseOptions,
  Problem,
  Span,
} from './measure.ts';
import { expectMethod, readMethod } from './method.ts';
import { expectNumber, isProblem, outOfRange, readNumber } from './number.ts';
import { quote } from './quote.ts';
import {
  methodEnd,
  skipBy,
  skipRange,
  skipSpaces,
  skipUncertaintySign,
  trimEnd,
  wordsEnd,
  type NumberToken,
} from './scan.ts';
import { placeUncertainty, readUncertainty, type Uncertainty } from './uncertainty.ts';
import { toSI } from './units.ts';
import { directionWithSign, parseWindow } from './window.ts';
import { expectDirection, readWords, type Words } from './words.ts';

/**
 * Reads `["~"] NUMBER ["±" NUMBER] [UNIT] [DIRECTION] ["±" NUMBER [UNIT]] ["by" METHOD]`, or `A..B UNIT [DIRECTION]`
 * (also `A UNIT DIRECTION..B UNIT DIRECTION`); white space is free, direction words and methods may be written in any
 * letter case. No text makes it throw; a `notation.unit` that the unit table does not have throws RangeError. An empty
 * text has no value and no problem. Of a window's spans, `from` is that of the number which gives `from`.
 */
export function parseMeasure(text: string, notation: Notation, options: ParseOptions): Parsed {
  const start = skipSpaces(text, 0);
  const end = trimEnd(text, start, text.length);
  if (start === end) return { value: undefined, problems: [] };
  const estimate = text[start] === '~';
  const numberStart = estimate ? skipSpaces(text, start + 1) : start;
  const number = readNumber(text, numberStart, end, () => expectNumber(notation));
  if (isProblem(number)) return fail(number);

  const wordsStart = skipSpaces(text, number.end);
  const wordsStop = wordsEnd(text, wordsStart);
  const words = readWords(text, wordsStart, wordsStop, notation);
  const next = skipSpaces(text, Math.max(wordsStop, number.end));
  const afterDots = skipRange(text, next);
  if (afterDots > next) {
    const whole = { start, end };
    if (options.window === 'no')
      return fail(notAllowed('window-not-allowed', text, whole, `one number, not a window`));
    if (estimate) return fail(estimatedWindow(start));
    return parseWindow(text, { number, words }, next, afterDots, end, notation);
  }
  if (options.window === 'only') {
    return fail(notAllowed('measure-not-allowed', text, { start, end }, 'a window, as in `2..5`'));
  }
  const tail = readTail(text, next, end, notation, options.methods);
  return build(text, { estimate, number, words, tail }, notation);
}

interface Tail {
  readonly uncertainty?: Uncertainty;
  readonly method?: string;
  readonly methodSpan?: Span;
  /** Beside these the value may still be used. */
  readonly harmless: readonly Problem<MeasureCode>[];
  readonly fatal?: Problem<MeasureCode>;
}

interface Parts {
  readonly estimate: boolean;
  readonly number: NumberToken;
  readonly words: Words;
  readonly tail: Tail;
}

const noTail: Tail = { harmless: [] };

/** Reads "± NUMBER [UNIT] [DIRECTION]" and "by METHOD", each at most once, in either order. */
function readTail(
  text: string,
  at: number,
  end: number,
  notation: Notation,
  methods: readonly string[],
): Tail {
  if (at >= end) return noTail;
  let tail: Tail = noTail;
  while (at < end) {
    const afterSign = skipUncertaintySign(text, at);
    const afterBy = skipBy(text, at);
    if (afterSign > at && tail.uncertainty === undefined) {
      const uncertainty = readUncertainty(text, afterSign, end, notation, { start: at, end: afterSign });
      const harmless = uncertainty.problem ? [...tail.harmless, uncertainty.problem] : tail.harmless;
      tail = { ...tail, uncertainty, harmless };
      at = skipSpaces(text, uncertainty.end);
    } else if (afterBy > at && tail.methodSpan === undefined) {
      const methodSpan = {
        start: skipSpaces(text, afterBy),
        end: methodEnd(text, skipSpaces(text, afterBy)),
      };
      tail = {
        ...tail,
        ...placeMethod(text, { start: at, end: afterBy }, methodSpan, tail.harmless, methods),
      };
      at = skipSpaces(text, Math.max(methodSpan.end, afterBy));
    } else {
      return { ...tail, fatal: explainRest(text, at, end) };
    }
  }
  return tail;
}

function placeMethod(
  text: string,
  by: Span,
  methodSpan: Span,
  harmless: readonly Problem<MeasureCode>[],
  methods: readonly string[],
): Tail {
  if (methodSpan.start >= methodSpan.end) {
    const found = `nothing after ${quote('by')}`;
    const problem = { code: 'unknown-method', span: by, found, expected: expectMethod(methods) } as const;
    return { methodSpan: by, harmless: [...harmless, problem] };
  }
  const { name, problem } = readMethod(text, methodSpan, methods);
  if (name !== undefined) return { method: name, methodSpan, harmless };
  return { methodSpan, harmless: problem ? [...harmless, problem] : harmless };
}

function build(text: string, parts: Parts, notation: Notation): Parsed {
  const { number, words, tail } = parts;
  const { uncertainty } = tail;
  const extra = uncertainty?.words ?? {};
  const leads = uncertainty !== undefined && words.unit === undefined && words.direction === undefined;
  const unit = words.unit ?? (leads ? extra.unit : undefined);
  const unitSpan = words.unitSpan ?? (leads ? extra.unitSpan : undefined);
  const direction = words.direction ?? extra.direction;
  const directionSpan = words.directionSpan ?? extra.directionSpan;

  const fatal =
    words.problem ??
    tail.fatal ??
    findSecondDirection(text, words, extra) ??
    findSignProblem(text, parts, direction, notation);
  if (fatal !== undefined) return { value: undefined, problems: [...tail.harmless, fatal] };
  const problems = [...tail.harmless];
  if (extra.problem !== undefined) {
    problems.push(extra.problem);
    const certain =
      !leads &&
      (extra.problem.code === 'wrong-dimension' ||
        direction !== undefined ||
        notation.directions.length === 0);
    if (!certain) return { value: undefined, problems };
  }
  const unitName = unit?.name ?? notation.unit;
  const value = toSI((direction?.sign ?? 1) * number.value, unitName) + 0;
  if (!Number.isFinite(value)) return { value: undefined, problems: [...problems, outOfRange(text, number)] };

  const given = extra.problem === undefined ? uncertainty?.number : undefined;
  const placed =
    given &&
    placeUncertainty(text, given, leads ? undefined : extra.unitSpan?.end, extra.unit?.name ?? unitName);
  if (placed !== undefined && 'code' in placed) problems.push(placed);
  const stated = placed !== undefined && 'stated' in placed ? placed : undefined;
  const measure: Measure = {
    kind: 'measure',
    value,
    stated: stated?.stated,
    estimate: parts.estimate,
    method: tail.method,
    unit: unit?.name,
    direction: direction?.word,
    bearing: direction?.bearing,
    spans: {
      number: { start: number.start, end: number.end },
      ...(unitSpan && { unit: unitSpan }),
      ...(directionSpan && { direction: directionSpan }),
      ...(stated && { stated: stated.span }),
      ...(tail.method !== undefined && tail.methodSpan && { method: tail.methodSpan }),
    },
  };
  return { value: measure, problems };
}

function findSecondDirection(text: string, words: Words, extra: Words): Problem<MeasureCode> | undefined {
  if (words.direction === undefined || extra.directionSpan === undefined) return undefined;
  const span = extra.directionSpan;
  const found = `${quote(text.slice(span.start, span.end))}, a second direction`;
  return { code: 'unreadable-measure', span, found, expected: 'one direction' };
}

function findSignProblem(
  text: string,
  { number, words }: Parts,
  direction: DirectionWord | undefined,
  notation: Notation,
): Problem<MeasureCode> | undefined {
  if (direction !== undefined)
    return number.negative ? directionWithSign(text, number, direction.word) : undefined;
  if (number.value === 0 || !notation.directions.some((known) => known.bearing !== undefined))
    return undefined;
  const span = { start: number.start, end: words.unitSpan?.end ?? number.end };
  const found = `${quote(text.slice(span.start, span.end))} without a direction`;
  return { code: 'missing-direction', span, found, expected: expectDirection(notation) };
}

function explainRest(text: string, at: number, end: number): Problem<MeasureCode> {
  const span = { start: at, end };
  const found = quote(text.slice(at, end));
  const again = skipUncertaintySign(text, at) > at;
  return {
    code: 'unreadable-measure',
    span,
    found,
    expected: again ? 'only one `±`' : 'the end of the measurement',
  };
}

function notAllowed(code: MeasureCode, text: string, span: Span, expected: string): Problem<MeasureCode> {
  return { code, span, found: quote(text.slice(span.start, span.end)), expected };
}

function estimatedWindow(at: number): Problem<MeasureCode> {
  const span = { start: at, end: at + 1 };
  return { code: 'unreadable-measure', span, found: '`~` before a window', expected: 'a window without `~`' };
}

function fail(problem: Problem<MeasureCode>): Parsed {
  return { value: undefined, problems: [problem] };
}
