// One expression over quantities, checked once and compiled to plain functions of SI numbers; knows no record and no fault.
import type { Span } from '../measure/measure.ts';
import { quote } from '../measure/quote.ts';
import type { Quantity } from '../registry/quantity.ts';
import { builtIn, type Registry } from '../registry/registry.ts';
import { build } from './build.ts';
import type { ExpressionProblem } from './problem.ts';
import { scan, type Token } from './scan.ts';
import { parseSyntax } from './syntax.ts';
import { truthOver } from './truth-over.ts';
import type { Box, Built } from './walk.ts';

/** 1 holds, 0 does not, NaN cannot be told. */
export type Truth = number;

export interface Expression {
  /** Those that it speaks of, each once; values are given in this order, SI, positive to the right, ahead and up. */
  readonly quantities: readonly Quantity[];
  /** NaN stands for a value that is missing. */
  readonly holds: (values: ArrayLike<number>) => Truth;
  /**
   * Only of a single comparison that is linear in its quantities: it holds where this is positive, so that the chance of that
   * follows exactly from means and covariances.
   */
  readonly margin: ((values: ArrayLike<number>) => number) | undefined;
  /** For each value that its quantities can take in these ranges: 1 it always holds, 0 it never does, NaN either or nobody can tell. */
  readonly over: (box: Box) => Truth;
}

export interface Compiled {
  /** Undefined where anything is wrong. */
  readonly expression: Expression | undefined;
  /** Places count from the start of the text. */
  readonly problems: readonly ExpressionProblem[];
  /** Parts that no values give a number for, which is nothing wrong with how it is written. */
  readonly lost: readonly ExpressionProblem[];
}

/**
 * Reads a condition in the syntax of mathjs, with units. Only quantities, numbers, the listed functions, `+ - * / ^`, comparisons,
 * `and`, `or`, `not` and `? :` are taken. No character of the text but signs reaches the parser: names and numbers go in as
 * placeholders, and what it gives is walked, never run. Never throws.
 */
export function compileExpression(text: string, registry: Registry = builtIn): Compiled {
  const { built, quantities, problems, lost } = builtFrom(text, registry);
  if (built === undefined || problems.length > 0) return { expression: undefined, problems, lost };
  if (built.sort === 'number') return { expression: undefined, problems: [notACondition(built)], lost };
  const { holds, margin } = built;
  const over = (box: Box): Truth => truthOver(built, box);
  return { expression: { quantities, holds, margin, over }, problems: [], lost };
}

/** A condition or a number, whatever the text says; undefined where it cannot be read. */
export function builtFrom(text: string, registry: Registry): ReturnType<typeof build> {
  const { tokens, problems: refusals } = scan(text);
  if (refusals.length > 0) return { built: undefined, quantities: [], problems: [...refusals], lost: [] };
  const parsed = parseSyntax(placeholders(tokens));
  if ('failedAt' in parsed)
    return {
      built: undefined,
      quantities: [],
      problems: [unreadable(tokens, parsed.failedAt, text)],
      lost: [],
    };
  return build(parsed.tree, tokens, text, registry);
}

/** `_0 < _2`: names and numbers by their place among the tokens, signs as they are. */
function placeholders(tokens: readonly Token[]): string {
  return tokens.map(placeholder).join(' ');
}

function placeholder(token: Token, index: number): string {
  return token.kind === 'sign' ? token.sign : `_${index}`;
}

function unreadable(tokens: readonly Token[], failedAt: number, text: string): ExpressionProblem {
  let end = -1;
  const at = tokens.find((token, index) => {
    end += placeholder(token, index).length + 1;
    return failedAt < end;
  });
  if (at === undefined) {
    const last = tokens.at(-1);
    const span = last?.span ?? { start: 0, end: text.length };
    const found = `an expression that ends with ${within(span, text)}`;
    const isOpen =
      last?.kind === 'number' || last?.kind === 'name' || (last?.kind === 'sign' && last.sign === ')');
    const expected = isOpen ? 'a closing bracket behind it' : 'a value or a condition behind it';
    return { code: 'unreadable-expression', span, found, expected };
  }
  const found = `${within(at.span, text)}, which cannot stand here`;
  return { code: 'unreadable-expression', span: at.span, found, expected: 'a sign, a value or a bracket' };
}

function within({ start, end }: Span, text: string): string {
  return quote(text.slice(start, end));
}

function notACondition({ span }: Built): ExpressionProblem {
  return {
    code: 'unreadable-expression',
    span,
    found: 'a number',
    expected: 'a condition, such as `delivery.attack < 2 deg`',
  };
}
