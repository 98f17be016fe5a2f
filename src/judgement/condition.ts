// Comparisons and their combinations in three-valued logic: 1 holds, 0 does not, NaN cannot be told; knows no syntax.
import type { Span } from '../measure/measure.ts';
import { quote } from '../measure/quote.ts';
import type { Box, ConditionPart, NumberPart, Values, Walk } from './walk.ts';
import { say } from './walk.ts';
import { isPlain, isSame, nameOf } from './kind.ts';

export type Comparison = 'smaller' | 'smallerEq' | 'larger' | 'largerEq';

const tests: Readonly<Record<Comparison, (a: number, b: number) => boolean>> = {
  smaller: (a, b) => a < b,
  smallerEq: (a, b) => a <= b,
  larger: (a, b) => a > b,
  largerEq: (a, b) => a >= b,
};

export function compare(
  name: Comparison,
  a: NumberPart,
  b: NumberPart,
  walk: Walk,
): ConditionPart | undefined {
  if (!agree(a, b, walk)) return undefined;
  const test = tests[name];
  const sign = name.startsWith('larger') ? 1 : -1;
  const [left, right] = [a.compute, b.compute];
  const isLinear = a.shape !== 'curved' && b.shape !== 'curved';
  const margin = isLinear ? (values: Values): number => sign * (left(values) - right(values)) : undefined;
  return {
    sort: 'condition',
    span: { start: a.span.start, end: b.span.end },
    over: (box) => (margin === undefined ? NaN : comparedOver(name, margin, box)),
    margins: margin && [margin],
    holds: (values) => {
      const [x, y] = [left(values), right(values)];
      return Number.isNaN(x) || Number.isNaN(y) ? NaN : test(x, y) ? 1 : 0;
    },
    margin,
  };
}

/** A linear function takes its least and its greatest value at corners of the box. */
function comparedOver(name: Comparison, margin: (values: Values) => number, { min, max }: Box): number {
  const base = margin(min);
  const moves = min.map((_, i) => margin(min.with(i, max[i]!)) - base);
  const least = moves.reduce((sum, move) => sum + Math.min(0, move), base);
  const most = moves.reduce((sum, move) => sum + Math.max(0, move), base);
  const isStrict = name === 'smaller' || name === 'larger';
  if (isStrict ? least > 0 : least >= 0) return 1;
  return (isStrict ? most <= 0 : most < 0) ? 0 : NaN;
}

/** Kleene's strong logic: what is not known does not matter where the other side decides. */
export function combine(name: 'and' | 'or', a: ConditionPart, b: ConditionPart, span: Span): ConditionPart {
  const decisive = name === 'and' ? 0 : 1;
  const combined = (one: number, further: () => number): number => {
    if (one === decisive) return decisive;
    const other = further();
    if (other === decisive) return decisive;
    return Number.isNaN(one) || Number.isNaN(other) ? NaN : 1 - decisive;
  };
  return {
    sort: 'condition',
    span,
    holds: (values) => combined(a.holds(values), () => b.holds(values)),
    over: (box) => combined(a.over(box), () => b.over(box)),
    margins: a.margins && b.margins && [...a.margins, ...b.margins],
    margin: undefined,
  };
}

export function negate({ holds, margin, over, margins }: ConditionPart, span: Span): ConditionPart {
  return {
    sort: 'condition',
    span,
    holds: (values) => 1 - holds(values),
    over: (box) => 1 - over(box),
    margins,
    margin: margin && ((values) => -margin(values)),
  };
}

/** What both sides say counts even while nobody can tell which one holds. */
export function chosen<T>(
  condition: (values: T) => number,
  yes: (values: T) => number,
  no: (values: T) => number,
): (values: T) => number {
  return (values) => {
    const truth = condition(values);
    if (Number.isNaN(truth)) {
      const [one, other] = [yes(values), no(values)];
      return one === other ? one : NaN;
    }
    return truth === 1 ? yes(values) : no(values);
  };
}

/** Says so where the two cannot be added or compared; where a number only lacks its unit, on that number. */
export function agree(a: NumberPart, b: NumberPart, walk: Walk): boolean {
  if (isSame(a.kind, b.kind)) return true;
  const [bare, other] = a.bare !== undefined ? [a, b] : [b, a];
  const { unit } = other.kind;
  if (bare.bare !== undefined && !isPlain(other.kind) && unit !== undefined) {
    const nearest = `${bare.bare} ${unit}`;
    const found = `${quote(bare.bare)}, a number without a unit, beside ${nameOf(other.kind)}`;
    say(walk, 'dimensions-do-not-match', bare.span, found, 'one with its unit', nearest);
    return false;
  }
  const span = { start: a.span.start, end: b.span.end };
  const found = `${nameOf(a.kind)} beside ${nameOf(b.kind)}`;
  say(walk, 'dimensions-do-not-match', span, found, 'two of one kind');
  return false;
}
