// An expression that gives a number, checked once and compiled to a plain function of SI numbers; knows no record.
import type { Quantity } from '../registry/quantity.ts';
import type { Registry } from '../registry/registry.ts';
import { builtFrom } from './expression.ts';
import type { Kind } from './kind.ts';
import type { ExpressionProblem } from './problem.ts';
import type { Values } from './walk.ts';

export interface Formula {
  /** In the order of their first mention: the values that `compute` takes. */
  readonly quantities: readonly Quantity[];
  readonly compute: (values: Values) => number;
  readonly kind: Kind;
  readonly isLinear: boolean;
}

/** As `compileExpression`, for what gives a number. Never throws. */
export function compileFormula(
  text: string,
  registry: Registry,
): { readonly formula: Formula | undefined; readonly problems: readonly ExpressionProblem[] } {
  const { built, quantities, problems: wrong, lost } = builtFrom(text, registry);
  const problems = [...wrong, ...lost];
  if (built === undefined || problems.length > 0) return { formula: undefined, problems };
  if (built.sort === 'condition') {
    const found = { code: 'unreadable-expression', span: built.span, found: 'a condition' } as const;
    return { formula: undefined, problems: [{ ...found, expected: 'what gives a number' }] };
  }
  const { compute, kind, shape } = built;
  return { formula: { quantities, compute, kind, isLinear: shape !== 'curved' }, problems: [] };
}
