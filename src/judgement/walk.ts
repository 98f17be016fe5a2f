// The parts that an expression is built from, and what every step of the walk over its syntax tree carries along; knows no syntax.
import type { Span } from '../measure/measure.ts';
import type { Registry } from '../registry/registry.ts';
import type { Kind } from './kind.ts';
import type { ExpressionCode, ExpressionProblem } from './problem.ts';
import type { Token } from './scan.ts';

export type Values = ArrayLike<number>;

export interface NumberPart {
  readonly sort: 'number';
  readonly span: Span;
  readonly kind: Kind;
  readonly compute: (values: Values) => number;
  /** `linear` in the quantities, which a constant is too. */
  readonly shape: 'constant' | 'linear' | 'curved';
  /** Only of a number that was written as such, without a unit. */
  readonly bare: string | undefined;
}

/** The least and the greatest value of each quantity. */
export interface Box {
  readonly min: readonly number[];
  readonly max: readonly number[];
}

export interface ConditionPart {
  readonly sort: 'condition';
  readonly span: Span;
  readonly holds: (values: Values) => number;
  readonly margin: ((values: Values) => number) | undefined;
  /** 1 where it surely holds for all values in the box, 0 where for none, NaN where that cannot be told from here. */
  readonly over: (box: Box) => number;
  /** The margins of all comparisons in it; undefined where one of them is not linear. */
  readonly margins: readonly ((values: Values) => number)[] | undefined;
}

export type Built = NumberPart | ConditionPart;

/** What every step of the walk carries along. */
export interface Walk {
  readonly tokens: readonly Token[];
  readonly text: string;
  readonly registry: Registry;
  readonly slots: Map<string, number>;
  readonly problems: ExpressionProblem[];
  /** Parts that no values give a number for. */
  readonly lost: ExpressionProblem[];
}

export function say(
  walk: Walk,
  code: ExpressionCode,
  span: Span,
  found: string,
  expected: string,
  nearest?: string,
): undefined {
  walk.problems.push({ code, span, found, expected, ...(nearest === undefined ? {} : { nearest }) });
  return undefined;
}
