// What can be wrong with an expression, as problems at its characters; knows no expression.
import type { Problem } from '../measure/measure.ts';

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
