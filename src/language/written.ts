// Takes a measure apart into the words that it is written in, so that a rewrite can keep them; undefined where YAML's quoting hides them.
import type { Measure, Notation, Span, Window } from '../measure/measure.ts';
import { scanNumber } from '../measure/scan.ts';
import { findUnit } from '../measure/units.ts';
import { readWords } from '../measure/words.ts';

/** The words as they stand; `number` without its sign. */
export interface WrittenNumber {
  readonly sign: '' | '+' | '-';
  readonly number: string;
  readonly unit: string | undefined;
  readonly direction: string | undefined;
}

export interface WrittenMeasure extends WrittenNumber {
  readonly estimate: boolean;
  /** With its unit, where it has one of its own. */
  readonly stated: string | undefined;
  readonly method: string | undefined;
}

export interface WrittenWindow {
  /** From the first number to the last word. */
  readonly span: Span;
  /** As they stand, the left one first. */
  readonly bounds: readonly [WrittenNumber, WrittenNumber];
}

export function writtenMeasure(text: string, { spans, estimate, unit }: Measure): WrittenMeasure | undefined {
  const at = (span: Span | undefined): string | undefined => span && text.slice(span.start, span.end);
  const number = splitNumber(at(spans.number)!);
  const stated = at(spans.stated);
  const written = at(spans.unit);
  if (number === undefined || (written !== undefined && findUnit(written)?.name !== unit)) return undefined;
  if (stated !== undefined && !/^[\d.+]/.test(stated)) return undefined;
  const parts = Object.values(spans) as Span[];
  if (new Set(parts.map(({ start }) => start)).size < parts.length) return undefined;
  return {
    ...number,
    unit: written,
    direction: at(spans.direction),
    estimate,
    stated,
    method: at(spans.method),
  };
}

export function writtenWindow(
  text: string,
  { spans }: Window,
  notation: Notation,
): WrittenWindow | undefined {
  const parts = [
    spans.from,
    spans.to,
    ...(spans.unit ? [spans.unit] : []),
    ...(spans.direction ? [spans.direction] : []),
  ];
  const start = Math.min(spans.from.start, spans.to.start);
  const end = Math.max(...parts.map((span) => span.end));
  const dots = text.slice(start, end).indexOf('..');
  const bounds = [text.slice(start, start + dots), text.slice(start + dots + 2, end)].map((side) =>
    dots < 1 ? undefined : writtenBound(side, notation),
  );
  const [first, second] = bounds;
  return first === undefined || second === undefined
    ? undefined
    : { span: { start, end }, bounds: [first, second] };
}

function writtenBound(side: string, notation: Notation): WrittenNumber | undefined {
  const text = side.trim();
  const token = scanNumber(text, 0);
  const number = token && splitNumber(text.slice(0, token.end));
  if (token === undefined || number === undefined) return undefined;
  const start = token.end + /^\s*/.exec(text.slice(token.end))![0].length;
  const { unitSpan, directionSpan, problem } = readWords(text, start, text.length, notation);
  if (problem !== undefined) return undefined;
  const at = (span: Span | undefined): string | undefined => span && text.slice(span.start, span.end);
  return { ...number, unit: at(unitSpan), direction: at(directionSpan) };
}

function splitNumber(text: string): Pick<WrittenNumber, 'sign' | 'number'> | undefined {
  const match = /^([-+−]?)\s*((?:\d+\.?\d*|\.\d+)(?:[eE][-+]?\d+)?)$/.exec(text);
  if (match === null) return undefined;
  return { sign: match[1] === '' ? '' : match[1] === '+' ? '+' : '-', number: match[2]! };
}

/** "7 cm behind": without uncertainty and method. */
export function joinNumber({ sign, number, unit, direction }: WrittenNumber): string {
  return [`${sign}${number}`, unit, direction].filter((word) => word !== undefined && word !== '').join(' ');
}
