// Cuts an expression into numbers with units, names and signs, and refuses every other character where it stands; knows no meaning.
import type { Span } from '../measure/measure.ts';
import { findNearest } from '../measure/nearest.ts';
import { quote } from '../measure/quote.ts';
import { differenceToSI, findUnit, toSI, type Unit } from '../measure/units.ts';
import { unitRows } from '../measure/unit-table.ts';
import type { ExpressionProblem } from './problem.ts';

export type Token =
  | { readonly kind: 'number'; readonly span: Span; readonly value: number; readonly unit: Unit | undefined }
  /** A name that `(` follows. */
  | { readonly kind: 'function'; readonly span: Span; readonly name: string }
  | { readonly kind: 'name'; readonly span: Span; readonly name: string }
  | { readonly kind: 'sign'; readonly span: Span; readonly sign: string };

export interface Scanned {
  readonly tokens: readonly Token[];
  readonly problems: readonly ExpressionProblem[];
}

/** Longer than any sentence about a swing, and short enough that no text costs time. */
export const longestExpression = 500;
const mostProblems = 5;
const deepestNesting = 16;
const largestNumber = 1e9;

const numberAt = /(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?/y;
const nameAt = /[A-Za-z_$][\w$]*(?:\.[A-Za-z_$][\w$]*)*/y;
const stringAt = /"[^"]*"?|'[^']*'?/y;
const refusedAt = /\?\.|\?\?|&&|\|\||\.[*/^]|[[\]{}]|[^\s\w]/y;
const spaces = /\s*/y;

/** As mathjs writes them, longest first. */
const signs = ['<=', '>=', '==', '!=', '+', '-', '*', '/', '^', '(', ')', ',', '<', '>', '?', ':'];
/** What keyboards and word processors put in their place. */
const otherSigns: Readonly<Record<string, string>> = { '−': '-', '≤': '<=', '≥': '>=', '≠': '!=', '×': '*' };
const wordSigns: ReadonlySet<string> = new Set(['and', 'or', 'not']);

/** What stands for what people coming from elsewhere write. */
const instead: Readonly<Record<string, string>> = { '&&': 'and', '||': 'or', '!': 'not' };

const expectations: Readonly<Record<string, string>> = {
  '=': 'a comparison with `<` or `>`; nothing can be given a value here',
  '%': '`%` behind a number, as in `60 %`',
  '"': 'no text between quotes',
  "'": 'no text between quotes',
  '[': 'no list; `min(…)` and `max(…)` take their numbers one by one',
  '{': 'no mapping',
};

export const everythingKnown =
  'quantities, numbers with units, functions, `+ - * / ^`, comparisons, `and`, `or`, `not`, `? :`';

export function scan(text: string): Scanned {
  if (text.length > longestExpression) {
    const span = { start: longestExpression, end: text.length };
    const found = `an expression of ${text.length} characters`;
    return { tokens: [], problems: [notAllowed(span, found, `at most ${longestExpression}`)] };
  }
  const tokens: Token[] = [];
  const problems: ExpressionProblem[] = [];
  let at = skip(text, 0);
  while (at < text.length && problems.length < mostProblems) {
    const token = tokenAt(text, at);
    if ('code' in token) problems.push(token);
    else tokens.push(token);
    at = skip(text, token.span.end);
  }
  return { tokens, problems: problems.length > 0 ? problems : tooDeep(tokens) };
}

function notAllowed(span: Span, found: string, expected: string): ExpressionProblem {
  return { code: 'expression-not-allowed', span, found, expected };
}

function tooDeep(tokens: readonly Token[]): readonly ExpressionProblem[] {
  let depth = 0;
  for (const token of tokens) {
    if (token.kind !== 'sign') continue;
    // A question and a run of signs before a value nest as brackets do, and nothing closes them.
    if (token.sign === '(' || token.sign === '?' || token.sign === '^' || token.sign === 'not') depth += 1;
    if (token.sign === ')') depth -= 1;
    if (depth > deepestNesting) {
      const found = `an expression nested more than ${deepestNesting} deep`;
      return [notAllowed(token.span, found, 'a simpler one')];
    }
  }
  return [];
}

function tokenAt(text: string, at: number): Token | ExpressionProblem {
  const number = matchAt(numberAt, text, at);
  if (number !== undefined) return numberToken(text, at, number);
  const name = matchAt(nameAt, text, at);
  if (name !== undefined) {
    const span = { start: at, end: at + name.length };
    if (wordSigns.has(name)) return { kind: 'sign', span, sign: name };
    return { kind: text[skip(text, span.end)] === '(' ? 'function' : 'name', span, name };
  }
  const sign = signs.find((known) => text.startsWith(known, at));
  const word = matchAt(refusedAt, text, at);
  if (sign !== undefined && word !== '??' && word !== '?.')
    return { kind: 'sign', span: { start: at, end: at + sign.length }, sign };
  const other = otherSigns[text[at] ?? ''];
  if (other !== undefined) return { kind: 'sign', span: { start: at, end: at + 1 }, sign: other };
  return refused(at, matchAt(stringAt, text, at) ?? word ?? text.charAt(at));
}

function refused(at: number, found: string): ExpressionProblem {
  const nearest = instead[found];
  return {
    code: 'expression-not-allowed',
    span: { start: at, end: at + found.length },
    found: quote(found),
    expected: expectations[found.charAt(0)] ?? everythingKnown,
    ...(nearest === undefined ? {} : { nearest }),
  };
}

/** The number with the longest unit that follows it; `%` behind a number is always per cent, never a remainder. */
function numberToken(text: string, at: number, digits: string): Token | ExpressionProblem {
  const end = at + digits.length;
  const value = Number(digits);
  if (!(value <= largestNumber))
    return {
      code: 'number-out-of-range',
      span: { start: at, end },
      found: quote(digits),
      expected: 'a number of ordinary size',
    };
  const unitAt = skip(text, end);
  const spelling = spellings.find(
    (known) => text.startsWith(known, unitAt) && !continues(text, unitAt + known.length, known),
  );
  const unit = spelling === undefined ? undefined : findUnit(spelling);
  if (spelling !== undefined && unit !== undefined)
    return {
      kind: 'number',
      span: { start: at, end: unitAt + spelling.length },
      value: siOf(value, unit),
      unit,
    };
  const word = matchAt(nameAt, text, unitAt);
  if (word === undefined || wordSigns.has(word))
    return { kind: 'number', span: { start: at, end }, value, unit: undefined };
  const nearest = findNearest(word, spellings);
  return {
    code: 'unknown-unit',
    span: { start: unitAt, end: unitAt + word.length },
    found: quote(word),
    expected: `a unit, as in ${quote(`${digits} cm`)}`,
    ...(nearest === undefined ? {} : { nearest }),
  };
}

function siOf(value: number, unit: Unit): number {
  return unit.dimension === 'temperature' ? toSI(value, unit.name) : differenceToSI(value, unit.name);
}

/** Signs of quotation are no units here, and a factor needs none. */
const spellings: readonly string[] = unitRows
  .filter(({ dimension }) => dimension !== 'ratio')
  .flatMap(({ name, aliases }) => [name, ...aliases])
  .filter((spelling) => !/["'″′]/.test(spelling))
  .sort((a, b) => b.length - a.length);

function continues(text: string, end: number, spelling: string): boolean {
  return /[\w]$/.test(spelling) && /[\w$]/.test(text.charAt(end));
}

function skip(text: string, at: number): number {
  return at + (matchAt(spaces, text, at)?.length ?? 0);
}

function matchAt(pattern: RegExp, text: string, at: number): string | undefined {
  pattern.lastIndex = at;
  return pattern.exec(text)?.[0];
}
