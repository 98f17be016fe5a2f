// Reads the long form of a measurement from the texts of its keys; knows nothing of the mapping that they came from.
import type { Measure, MeasureCode, MeasureSpans, Notation, Parsed, Problem, Span } from './measure.ts';
import { expectMethod, readMethod } from './method.ts';
import { parseMeasure } from './parse.ts';
import { quote } from './quote.ts';
import { skipSpaces, skipUncertaintySign, trimEnd } from './scan.ts';
import { placeUncertainty, readUncertainty } from './uncertainty.ts';

/** One scalar's text and where it starts; every span given back is moved by `offset`. */
export interface PlacedText {
  readonly text: string;
  readonly offset: number;
}

export interface LongForm {
  /** The notation itself, `66 %` or `9 cm ahead`, or a bare number. */
  readonly value: PlacedText | undefined;
  /** NUMBER [UNIT]; in the value's unit where it has none. */
  readonly giveOrTake: PlacedText | undefined;
  readonly by: PlacedText | undefined;
}

/** The measure that `value`, `give_or_take` and `by` state together; undefined without a readable value. Never throws on text. */
export function parseLongForm(form: LongForm, notation: Notation, methods: readonly string[]): Parsed {
  const problems: Problem<MeasureCode>[] = [];
  const measure = readValue(form.value, notation, methods, problems);
  const unit = measure?.unit ?? notation.unit;
  const uncertainty = readGiveOrTake(form.giveOrTake, notation, unit, measure?.spans.stated, problems);
  const method = readBy(form.by, methods, measure?.spans.method, problems);
  if (measure === undefined) return { value: undefined, problems };
  return { value: join(measure, uncertainty, method), problems };
}

interface Stated {
  readonly stated: number;
  readonly span: Span;
}

interface Named {
  readonly name: string;
  readonly span: Span;
}

/** A key that repeats what the value states already leaves neither to be believed. */
type Read<T> = T | 'absent' | 'contradicted';

function readValue(
  placed: PlacedText | undefined,
  notation: Notation,
  methods: readonly string[],
  problems: Problem<MeasureCode>[],
): Measure | undefined {
  if (placed === undefined) return undefined;
  const parsed = parseMeasure(placed.text, notation, { window: 'no', methods });
  for (const problem of parsed.problems) problems.push(movedProblem(problem, placed.offset));
  if (parsed.value?.kind !== 'measure') return undefined;
  return { ...parsed.value, spans: movedSpans(parsed.value.spans, placed.offset) };
}

function readGiveOrTake(
  placed: PlacedText | undefined,
  notation: Notation,
  unit: string,
  before: Span | undefined,
  problems: Problem<MeasureCode>[],
): Read<Stated> {
  const whole = placed && textSpan(placed.text);
  if (placed === undefined || whole === undefined) return 'absent';
  const { text, offset } = placed;
  const report = (problem: Problem<MeasureCode>): 'absent' => {
    problems.push(movedProblem(problem, offset));
    return 'absent';
  };
  if (before !== undefined) {
    report(unreadable(text, whole, ', a second uncertainty', 'one uncertainty'));
    return 'contradicted';
  }
  const afterSign = skipUncertaintySign(text, whole.start);
  const sign = afterSign > whole.start ? { start: whole.start, end: afterSign } : undefined;
  const read = readUncertainty(text, afterSign, whole.end, notation, sign);
  const problem = read.problem ?? read.words.problem;
  if (problem !== undefined) return report(problem);
  if (read.words.directionSpan)
    return report(unreadable(text, read.words.directionSpan, ', a direction', 'a number and its unit'));
  const rest = { start: skipSpaces(text, read.end), end: whole.end };
  if (rest.start < rest.end) return report(unreadable(text, rest, '', 'a number and its unit'));
  if (read.number === undefined) return 'absent';
  const stated = placeUncertainty(text, read.number, read.words.unitSpan?.end, read.words.unit?.name ?? unit);
  return 'code' in stated ? report(stated) : { stated: stated.stated, span: moved(stated.span, offset) };
}

function readBy(
  placed: PlacedText | undefined,
  methods: readonly string[],
  before: Span | undefined,
  problems: Problem<MeasureCode>[],
): Read<Named> {
  const whole = placed && textSpan(placed.text);
  if (placed === undefined || whole === undefined) return 'absent';
  if (before !== undefined) {
    const twice = unreadable(placed.text, whole, ', a second method', expectMethod(methods));
    problems.push(movedProblem(twice, placed.offset));
    return 'contradicted';
  }
  const { name, problem } = readMethod(placed.text, whole, methods);
  if (problem !== undefined) problems.push(movedProblem(problem, placed.offset));
  return name === undefined ? 'absent' : { name, span: moved(whole, placed.offset) };
}

function join(measure: Measure, uncertainty: Read<Stated>, method: Read<Named>): Measure {
  const { stated: statedSpan, method: methodSpan, ...spans } = measure.spans;
  const stated =
    uncertainty === 'absent'
      ? measure.stated !== undefined &&
        statedSpan !== undefined && { stated: measure.stated, span: statedSpan }
      : uncertainty !== 'contradicted' && uncertainty;
  const named =
    method === 'absent'
      ? measure.method !== undefined && methodSpan !== undefined && { name: measure.method, span: methodSpan }
      : method !== 'contradicted' && method;
  return {
    ...measure,
    stated: stated ? stated.stated : undefined,
    method: named ? named.name : undefined,
    spans: { ...spans, ...(stated && { stated: stated.span }), ...(named && { method: named.span }) },
  };
}

function unreadable(text: string, span: Span, what: string, expected: string): Problem<MeasureCode> {
  return {
    code: 'unreadable-measure',
    span,
    found: `${quote(text.slice(span.start, span.end))}${what}`,
    expected,
  };
}

function textSpan(text: string): Span | undefined {
  const start = skipSpaces(text, 0);
  const end = trimEnd(text, start, text.length);
  return start < end ? { start, end } : undefined;
}

function moved(span: Span, offset: number): Span {
  return { start: span.start + offset, end: span.end + offset };
}

function movedProblem(problem: Problem<MeasureCode>, offset: number): Problem<MeasureCode> {
  return { ...problem, span: moved(problem.span, offset) };
}

function movedSpans(spans: MeasureSpans, offset: number): MeasureSpans {
  const entries = Object.entries(spans) as [string, Span][];
  return Object.fromEntries(
    entries.map(([part, span]) => [part, moved(span, offset)]),
  ) as unknown as MeasureSpans;
}
