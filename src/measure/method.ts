// Reads the method after "by"; knows only the names it is given.
import type { MeasureCode, Problem, Span } from './measure.ts';
import { findNearest } from './nearest.ts';
import { collapseSpaces, quote, quoteList } from './quote.ts';

export interface Method {
  /** As the list of methods spells it. */
  readonly name?: string;
  readonly problem?: Problem<MeasureCode>;
}

/** The method that the span names, in any letter case and with "_" or "-" for a space. */
export function readMethod(text: string, span: Span, methods: readonly string[]): Method {
  const written = text.slice(span.start, span.end);
  const name = methods.includes(written)
    ? written
    : methods.find((method) => plain(method) === plain(written));
  if (name !== undefined) return { name };
  const nearest = findNearest(plain(written), methods);
  const problem: Problem<MeasureCode> = {
    code: 'unknown-method',
    span,
    found: quote(written),
    expected: expectMethod(methods),
    ...(nearest === undefined ? {} : { nearest }),
  };
  return { problem };
}

/** "a method (`eye`, `video` or `tape`)". */
export function expectMethod(methods: readonly string[]): string {
  return `a method (${quoteList(methods)})`;
}

function plain(method: string): string {
  return collapseSpaces(method.replace(/[-_]/g, ' ')).toLowerCase();
}
