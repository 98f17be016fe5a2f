// Reads how large a believed effect is ("1 deg per 5 %") and how far a change goes ("5 cm narrower"); knows no fault.
import type { DirectionWord, Measure, Problem, Span } from '../measure/measure.ts';
import { findNearest } from '../measure/nearest.ts';
import { isProblem, readNumber } from '../measure/number.ts';
import { parseMeasure } from '../measure/parse.ts';
import { collapseSpaces, quote, quoteList } from '../measure/quote.ts';
import { skipSpaces, skipUncertaintySign, trimEnd } from '../measure/scan.ts';
import { unitRows } from '../measure/unit-table.ts';
import { differenceToSI, findUnit, toSI } from '../measure/units.ts';
import type { Quantity } from '../registry/quantity.ts';
import { changeWords } from '../registry/registry.ts';
import type { BelievedSize, SizePer, Step } from './document.ts';
import { spanMover, type Reader } from './entry.ts';
import { isEmpty, type ScalarTree, type Tree } from './tree.ts';

/**
 * Reads `NUMBER [UNIT] [± NUMBER UNIT] ["per" [NUMBER] UNIT] [± NUMBER UNIT]`. A size has no sign and no direction word:
 * the direction of the effect stands beside it.
 */
export function readSize(
  tree: Tree | undefined,
  quantity: Quantity,
  reader: Reader,
): BelievedSize | undefined {
  if (tree?.kind !== 'scalar' || isEmpty(tree) || typeof tree.plain === 'boolean') return undefined;
  const text = tree.source;
  const place = placer(tree, reader);
  const per = findPer(text);
  const measure = measureIn(
    per === undefined ? text : without(text, per),
    { ...quantity, directions: [] },
    {
      place,
      reader,
    },
  );
  const cause = per && readPer(text, per);
  if (cause !== undefined && 'code' in cause) place(cause);
  if (measure === undefined || (cause !== undefined && 'code' in cause)) return undefined;
  const amount = differenceOf(measure, quantity);
  if (!(amount > 0)) {
    const span = measure.spans.number;
    const expected = 'a number above zero, for `direction` says which way it goes';
    place({ code: 'unreadable-measure', span, found: quote(text.slice(span.start, span.end)), expected });
    return undefined;
  }
  const move = spanMover(tree);
  const placed = cause && { ...cause, span: move(cause.span) };
  return { amount, stated: measure.stated, per: placed, span: tree.span };
}

/** Reads `NUMBER UNIT WORD`, the word one of the directions of the quantity, a comparative, `more` or `less`; or a signed number. */
export function readStep(tree: Tree | undefined, quantity: Quantity, reader: Reader): Step | undefined {
  if (tree?.kind !== 'scalar' || isEmpty(tree) || typeof tree.plain === 'boolean') return undefined;
  const text = tree.source;
  const place = placer(tree, reader);
  const words = changeWords(quantity);
  const placeWord = (problem: Problem): void => {
    const expected = `a word that says which way (${shortWords(words)})`;
    place(problem.code === 'unknown-direction' ? { ...problem, expected } : problem);
  };
  const measure = measureIn(text, { ...quantity, directions: words }, { place: placeWord, reader });
  if (measure === undefined) return undefined;
  const { number, direction, unit } = measure.spans;
  if (direction === undefined && !/[+−-]/.test(text.charAt(number.start))) {
    const span = { start: number.start, end: unit?.end ?? number.end };
    const found = `${quote(text.slice(span.start, span.end))} without a direction`;
    place({ code: 'missing-direction', span, found, expected: shortWords(words) });
    return undefined;
  }
  return { difference: differenceOf(measure, quantity), stated: measure.stated, span: tree.span };
}

interface Placing {
  readonly place: (problem: Problem) => void;
  readonly reader: Reader;
}

function measureIn(text: string, notation: Quantity, { place, reader }: Placing): Measure | undefined {
  const { value, problems } = parseMeasure(text, notation, {
    window: 'no',
    methods: reader.registry.methodNames,
  });
  problems.forEach(place);
  if (value?.kind !== 'measure') return undefined;
  if (value.unit === undefined && notation.dimension !== 'ratio')
    place({
      code: 'bare-number',
      span: value.spans.number,
      found: `no unit; read as ${quote(notation.unit)}`,
      expected: quote(notation.unit),
    });
  return value;
}

/** A problem in the scalar's own text goes to its place in the document. */
function placer(tree: ScalarTree, reader: Reader): (problem: Problem) => void {
  const move = spanMover(tree);
  return (problem) => reader.problems.push({ ...problem, span: move(problem.span) });
}

/** Of a scale whose zero is not zero only the difference counts. */
function differenceOf({ value, unit }: Measure, quantity: Quantity): number {
  return quantity.dimension === 'temperature' ? value - toSI(0, unit ?? quantity.unit) : value;
}

/** The word "per" with all up to "±" or the end; "per cent" is a unit. */
function findPer(text: string): Span | undefined {
  const word = /(?<=\s|^)per(?=\s|$)(?!\s+cent(?:\s|$))/i.exec(text);
  if (word === null) return undefined;
  let end = word.index;
  while (end < text.length && skipUncertaintySign(text, end) === end) end++;
  return { start: word.index, end: trimEnd(text, word.index, end) };
}

/** As long as before, so that every place stays the same. */
function without(text: string, { start, end }: Span): string {
  return text.slice(0, start) + ' '.repeat(end - start) + text.slice(end);
}

function readPer(text: string, { start, end }: Span): SizePer | Problem {
  const at = skipSpaces(text, start + 3);
  const span = { start, end };
  const found = quote(text.slice(start, end));
  const expected = 'so much of the cause, as in `per 5 cm`';
  if (at >= end) return { code: 'unreadable-measure', span, found, expected };
  const number = /^[-+−.\d]/.test(text.slice(at, end))
    ? readNumber(text, at, end, () => expected)
    : undefined;
  if (number !== undefined && isProblem(number)) return number;
  const value = number?.value ?? 1;
  if (!(value > 0))
    return { code: 'unreadable-measure', span, found, expected: `${expected}, with a number above zero` };
  const unitStart = skipSpaces(text, number?.end ?? at);
  const unit = findUnit(collapseSpaces(text.slice(unitStart, end)));
  if (unit === undefined) return unknownUnit(text, { start: unitStart, end });
  const amount = differenceToSI(value, unit.name);
  if (!(amount > 0) || !Number.isFinite(amount))
    return { code: 'number-out-of-range', span, found, expected: 'a number of ordinary size' };
  return { amount, dimension: unit.dimension, unit: unit.name, span: { start: unitStart, end } };
}

function unknownUnit(text: string, span: Span): Problem {
  const word = text.slice(span.start, span.end);
  const spellings = unitRows.flatMap(({ name, aliases }) => [name, ...aliases]).filter((name) => name !== '');
  const nearest = findNearest(word, spellings);
  const expected = 'the unit of the cause alone, as in `per 5 cm`';
  const problem = { code: 'unknown-unit', span, found: quote(word), expected };
  return nearest === undefined ? problem : { ...problem, nearest };
}

/** Without "more bowed" and its like, which nobody needs to be told. */
function shortWords(words: readonly DirectionWord[]): string {
  return quoteList(words.map(({ word }) => word).filter((word) => !/^(?:more|less) /.test(word)));
}
