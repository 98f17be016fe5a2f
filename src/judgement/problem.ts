// What can be wrong with an expression, as problems at its characters; knows no expression.
import type { Problem, Span } from '../measure/measure.ts';
import { quote } from '../measure/quote.ts';
import { expectId, nearestId, type Registry } from '../registry/registry.ts';

export type ExpressionCode =
  | 'unreadable-expression'
  | 'expression-not-allowed'
  | 'unknown-quantity'
  | 'unknown-function'
  | 'dimensions-do-not-match'
  | 'number-out-of-range'
  | 'expression-tells-nothing'
  | 'unknown-unit';

export type ExpressionProblem = Problem<ExpressionCode>;

/** `example` is an id such as might stand there. */
export function unknownQuantity(
  name: string,
  span: Span,
  registry: Registry,
  example: string,
): ExpressionProblem {
  const nearest = nearestId(name, registry);
  return {
    code: 'unknown-quantity',
    span,
    found: quote(name),
    expected: expectId(name, registry, example),
    ...(nearest === undefined ? {} : { nearest }),
    unknown: name,
  };
}
