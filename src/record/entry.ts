// Reads what stands after a quantity's key: short form, long form, or a list of either; knows no kind of file.
import type { Measure, Notation, Parsed, ParseOptions, Problem, Span, Window } from '../measure/measure.ts';
import { directionWords, presumedDirection } from '../measure/bare-direction.ts';
import { lacksNumber } from '../measure/lacks-number.ts';
import { parseLongForm, type PlacedText } from '../measure/long-form.ts';
import { quote, quoteList } from '../measure/quote.ts';
import type { Quantity } from '../registry/quantity.ts';
import type { Registry } from '../registry/registry.ts';
import type { Entry, Reading } from './document.ts';
import { measureFrom } from './known-measures.ts';
import { noNumber, noValue } from './no-value.ts';
import { isEmpty, valueAt, type MapTree, type Pair, type ScalarTree, type Tree } from './tree.ts';
import { wordsAt } from './word.ts';

/** What every reader of a file carries along: where problems go, and which quantities and methods there are. */
export interface Reader {
  readonly problems: Problem[];
  readonly registry: Registry;
}

/** Readings of one thing in one lesson; shots have a place of their own. */
export const mostReadings = 100;

export function readEntry(pair: Pair, quantity: Quantity, reader: Reader): Entry {
  const { keySpan, value } = pair;
  const all = value.kind === 'list' ? value.items : [value];
  const items = all.slice(0, mostReadings);
  const firstLeft = all[mostReadings];
  if (firstLeft !== undefined) reader.problems.push(tooManyReadings(all.length, firstLeft.span));
  const readings = items.flatMap((item) => readReading(item, pair, quantity, reader) ?? []);
  return { id: quantity.id, quantity, readings, keySpan, valueSpan: value.span };
}

function tooManyReadings(count: number, span: Span): Problem {
  return {
    code: 'wrong-shape',
    span,
    found: `${count} readings of one thing`,
    expected: `at most ${mostReadings}; those from here on are not read`,
  };
}

/** A window or a number that is aimed at, from the short form or from the mapping's `key`. */
export function readTarget(
  pair: Pair,
  key: 'value' | 'window',
  notation: Notation,
  reader: Reader,
): Measure | Window | undefined {
  const { value } = pair;
  const scalar = value.kind === 'map' ? valueAt(value, key) : value;
  if (scalar === undefined) {
    if (value.size > 1) reader.problems.push(noValue(pair.keySpan, pair.key));
    return undefined;
  }
  if (scalar.kind !== 'scalar' || isEmpty(scalar)) return undefined;
  return readScalar(
    scalar,
    notation,
    { window: key === 'value' ? 'also' : 'only', methods: reader.registry.methodNames },
    reader,
  );
}

function readReading(tree: Tree, pair: Pair, quantity: Quantity, reader: Reader): Reading | undefined {
  if (tree.kind === 'list') return undefined;
  if (tree.kind === 'map') return readLongForm(tree, pair, quantity, reader);
  if (isEmpty(tree)) return undefined;
  const measure = readScalar(tree, quantity, { window: 'no', methods: reader.registry.methodNames }, reader);
  if (measure?.kind !== 'measure') return undefined;
  return { measure, doubtful: false, note: undefined, seen: undefined, form: 'short', span: tree.span };
}

function readScalar(
  scalar: ScalarTree,
  notation: Notation,
  options: ParseOptions,
  reader: Reader,
): Measure | Window | undefined {
  // The schema says that `true` is no measurement.
  if (typeof scalar.plain === 'boolean') return undefined;
  if (isOddNumber(scalar.source)) {
    reader.problems.push(oddNumber(scalar.source, scalar.span));
    return undefined;
  }
  const { source } = scalar;
  const parsed = measureFrom(source, notation, options);
  if (parsed.value === undefined && lacksNumber(source, notation, options.methods)) {
    reader.problems.push(noNumber(scalar));
    return undefined;
  }
  return place(parsed, source, spanMover(scalar), notation, reader);
}

function readLongForm(tree: MapTree, pair: Pair, quantity: Quantity, reader: Reader): Reading | undefined {
  if (tree.pairs.size > 0 && !tree.pairs.has('value')) reader.problems.push(noValue(pair.keySpan, pair.key));
  const value = scalarAt(tree, 'value');
  const isOdd = value !== undefined && isOddNumber(value.source);
  if (isOdd) reader.problems.push(oddNumber(value.source, value.span));
  const { methodNames } = reader.registry;
  const isBlank = value !== undefined && lacksNumber(value.source, quantity, methodNames);
  if (isBlank) reader.problems.push(noNumber(value));
  const isReadable = value !== undefined && typeof value.plain !== 'boolean' && !isOdd && !isBlank;
  const parts = [isReadable ? value : undefined, scalarAt(tree, 'give_or_take'), scalarAt(tree, 'by')];
  const [placedValue, giveOrTake, by] = parts.map((part, index) => placedText(part, index));
  const parsed = parseLongForm({ value: placedValue, giveOrTake, by }, quantity, methodNames);
  const move = (span: Span): Span => {
    const part = parts[Math.floor(span.start / virtualRoom)];
    const base = Math.floor(span.start / virtualRoom) * virtualRoom;
    return part === undefined
      ? pair.keySpan
      : spanMover(part)({ start: span.start - base, end: span.end - base });
  };
  const measure = place(parsed, value?.source ?? '', move, quantity, reader);
  if (measure?.kind !== 'measure') return undefined;
  return {
    measure,
    doubtful: valueAt(tree, 'doubtful')?.plain === true,
    note: wordsAt(tree, 'note'),
    seen: wordsAt(tree, 'seen'),
    form: 'long',
    span: tree.span,
  };
}

/** Each part of a long form is parsed as if it stood in a room of its own, so that a span tells whose it is. */
const virtualRoom = 2 ** 24;

function placedText(scalar: ScalarTree | undefined, index: number): PlacedText | undefined {
  return scalar === undefined ? undefined : { text: scalar.source, offset: index * virtualRoom };
}

/** Takes a span in the scalar's own text to the document; to the whole scalar where the two differ. */
export function spanMover({ offset, span }: ScalarTree): (inner: Span) => Span {
  if (offset === undefined) return () => span;
  return ({ start, end }) => ({ start: start + offset, end: end + offset });
}

/** `source` is the text in which the numbers of the value stand. */
function place(
  { value, problems }: Parsed,
  source: string,
  move: (span: Span) => Span,
  notation: Notation,
  reader: Reader,
): Measure | Window | undefined {
  for (const problem of problems) {
    const related = problem.related?.map((other) => ({ ...other, span: move(other.span) }));
    reader.problems.push({ ...problem, span: move(problem.span), ...(related && { related }) });
  }
  if (value === undefined) return undefined;
  const placed = placeSpans(value, move);
  if (value.unit === undefined && notation.dimension !== 'ratio')
    reader.problems.push(bareNumber(placed, notation));
  const presumed = presumedDirection(value, notation, source);
  if (presumed !== undefined) reader.problems.push(bareDirection(placed, notation, presumed.word));
  return placed;
}

function placeSpans<T extends Measure | Window>(value: T, move: (span: Span) => Span): T {
  const spans: Record<string, Span> = {};
  for (const part in value.spans) spans[part] = move((value.spans as unknown as Record<string, Span>)[part]!);
  return { ...value, spans };
}

function bareNumber(value: Measure | Window, { unit }: Notation): Problem {
  return {
    code: 'bare-number',
    span: numbersOf(value),
    found: `no unit; read as ${quote(unit)}`,
    expected: quote(unit),
  };
}

/** At the number with its unit, where the word is written: behind `2°` too. */
function bareDirection(value: Measure | Window, notation: Notation, presumed: string): Problem {
  const { start, end } = numbersOf(value);
  return {
    code: 'bare-direction',
    span: { start, end: Math.max(end, value.spans.unit?.end ?? end) },
    found: `no direction; read as ${quote(presumed)}`,
    expected: quoteList(directionWords(notation)),
  };
}

function numbersOf({ spans }: Measure | Window): Span {
  if ('number' in spans) return spans.number;
  const { from, to } = spans;
  return { start: Math.min(from.start, to.start), end: Math.max(from.end, to.end) };
}

/** What YAML takes for a number and a coach does not: hexadecimal, octal, infinite, none at all. */
function isOddNumber(source: string): boolean {
  return /^[-+]?(?:0[xo][0-9a-fA-F]+|\.inf|\.Inf|\.INF)$|^\.(?:nan|NaN|NAN)$/.test(source);
}

function oddNumber(source: string, span: Span): Problem {
  return {
    code: 'unreadable-measure',
    span,
    found: quote(source),
    expected: 'a decimal number, such as `7.5`',
  };
}

function scalarAt(tree: MapTree, key: string): ScalarTree | undefined {
  const value = valueAt(tree, key);
  return value?.kind === 'scalar' ? value : undefined;
}
