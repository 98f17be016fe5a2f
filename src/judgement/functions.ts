// The functions that an expression may call, with what they take and give; knows no syntax.
import { angle, isAngle, isDimensionless, isSame, nameOf, plain, power, type Kind } from './kind.ts';

export interface ExpressionFunction {
  readonly fewest: number;
  readonly most: number;
  /** The kind of the result, or what was expected instead and of which argument. */
  readonly give: (args: readonly Kind[]) => Kind | { readonly argument: number; readonly expected: string };
  readonly compute: (args: readonly number[]) => number;
}

/** As many numbers as a list of readings has, and more than anybody writes. */
const many = 16;

/** By name, as mathjs calls them. Angles are SI inside, so that the trigonometry needs no conversion. */
const table = {
  abs: same(1, 1, ([x]) => Math.abs(x!)),
  min: same(1, many, (xs) => Math.min(...xs)),
  max: same(1, many, (xs) => Math.max(...xs)),
  mean: same(1, many, (xs) => sum(xs) / xs.length),
  median: same(1, many, median),
  sum: same(1, many, sum),
  hypot: same(1, many, (xs) => Math.hypot(...xs)),
  sqrt: root(0.5, Math.sqrt),
  cbrt: root(1 / 3, Math.cbrt),
  square: root(2, (x) => x * x),
  cube: root(3, (x) => x * x * x),
  sign: { fewest: 1, most: 1, give: () => plain, compute: ([x]: readonly number[]) => Math.sign(x!) },
  sin: ofAngle(Math.sin),
  cos: ofAngle(Math.cos),
  tan: ofAngle(Math.tan),
  asin: toAngle(Math.asin),
  acos: toAngle(Math.acos),
  atan: toAngle(Math.atan),
  atan2: {
    ...same(2, 2, ([y, x]) => Math.atan2(y!, x!)),
    give: (args: readonly Kind[]) => alike(args) ?? angle,
  },
  exp: ofPlain(Math.exp),
  log: ofPlain(Math.log),
  round: ofPlain(Math.round),
  floor: ofPlain(Math.floor),
  ceil: ofPlain(Math.ceil),
} satisfies Readonly<Record<string, ExpressionFunction>>;

const byName: ReadonlyMap<string, ExpressionFunction> = new Map(Object.entries(table));

export const functionNames: readonly string[] = [...byName.keys()];

export function findFunction(name: string): ExpressionFunction | undefined {
  return byName.get(name);
}

function same(
  fewest: number,
  most: number,
  compute: (args: readonly number[]) => number,
): ExpressionFunction {
  return { fewest, most, give: (args) => alike(args) ?? args[0]!, compute };
}

function root(exponent: number, compute: (x: number) => number): ExpressionFunction {
  return { fewest: 1, most: 1, give: ([x]) => power(x!, exponent), compute: ([x]) => compute(x!) };
}

function ofAngle(compute: (x: number) => number): ExpressionFunction {
  const give = ([x]: readonly Kind[]) =>
    isAngle(x!) ? plain : { argument: 0, expected: 'an angle, such as `2 deg`' };
  return { fewest: 1, most: 1, give, compute: ([x]) => compute(x!) };
}

function toAngle(compute: (x: number) => number): ExpressionFunction {
  return { ...ofPlain(compute), give: ([x]) => (isDimensionless(x!) ? angle : withoutUnit) };
}

function ofPlain(compute: (x: number) => number): ExpressionFunction {
  const give = ([x]: readonly Kind[]) => (isDimensionless(x!) ? plain : withoutUnit);
  return { fewest: 1, most: 1, give, compute: ([x]) => compute(x!) };
}

const withoutUnit = { argument: 0, expected: 'a number without a dimension' } as const;

/** Undefined where all are of one kind. */
function alike(args: readonly Kind[]): { readonly argument: number; readonly expected: string } | undefined {
  const odd = args.findIndex((arg) => !isSame(arg, args[0]!));
  return odd < 0 ? undefined : { argument: odd, expected: `${nameOf(args[0]!)}, like the first one` };
}

function sum(xs: readonly number[]): number {
  return xs.reduce((total, x) => total + x, 0);
}

function median(xs: readonly number[]): number {
  // An unknown number would be sorted anywhere.
  if (xs.some(Number.isNaN)) return NaN;
  const sorted = xs.toSorted((a, b) => a - b);
  const middle = sorted.length >> 1;
  return sorted.length % 2 === 1 ? sorted[middle]! : (sorted[middle - 1]! + sorted[middle]!) / 2;
}
