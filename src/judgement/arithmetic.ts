// `+ - * / ^` on numbers with dimensions; knows no syntax and no quantity.
import type { Span } from '../measure/measure.ts';
import type { NumberPart, Values, Walk } from './walk.ts';
import { say } from './walk.ts';
import { agree } from './condition.ts';
import { isTemperature, power, product } from './kind.ts';

export type Arithmetic = 'add' | 'subtract' | 'multiply' | 'divide' | 'pow' | 'unaryMinus' | 'unaryPlus';

type Step = (parts: readonly NumberPart[], span: Span, walk: Walk) => NumberPart | undefined;

/** Nothing in a swing goes with a higher power, and repeated powers would leave every range. */
const highestPower = 4;

/** By the name that mathjs gives each sign. */
export const arithmetic: Readonly<Record<Arithmetic, Step>> = {
  add: ([a, b], span, walk) => sum(a!, b!, 1, span, walk),
  subtract: ([a, b], span, walk) => sum(a!, b!, -1, span, walk),
  multiply: ([a, b], span, walk) => times(a!, b!, 1, span, walk),
  divide: ([a, b], span, walk) => times(a!, b!, -1, span, walk),
  pow: ([a, b], span, walk) => raised(a!, b!, span, walk),
  unaryMinus: ([a], span) => ({ ...a!, span, compute: (x) => -a!.compute(x) }),
  unaryPlus: ([a], span) => ({ ...a!, span }),
};

function sum(a: NumberPart, b: NumberPart, sign: 1 | -1, span: Span, walk: Walk): NumberPart | undefined {
  if (!agree(a, b, walk) || hasTemperature([a, b], span, walk)) return undefined;
  const [one, other] = [a.compute, b.compute];
  const compute = (values: Values): number => one(values) + sign * other(values);
  const unit = a.kind.unit ?? b.kind.unit;
  return { sort: 'number', span, kind: { ...a.kind, unit }, compute, shape: bent(a, b), bare: undefined };
}

function times(a: NumberPart, b: NumberPart, sign: 1 | -1, span: Span, walk: Walk): NumberPart | undefined {
  if (sign === -1 && b.shape === 'constant' && b.compute([]) === 0) {
    const found = 'a division by zero';
    walk.lost.push({
      code: 'expression-tells-nothing',
      span: b.span,
      found,
      expected: 'a number other than zero',
    });
  }
  if (hasTemperature([a, b], span, walk)) return undefined;
  const [one, other] = [a.compute, b.compute];
  const compute = (values: Values): number =>
    sign === 1 ? one(values) * other(values) : one(values) / other(values);
  const isLinear = b.shape === 'constant' || (sign === 1 && a.shape === 'constant');
  const shape = isLinear ? bent(a, b) : 'curved';
  return { sort: 'number', span, kind: product(a.kind, b.kind, sign), compute, shape, bare: undefined };
}

function raised(a: NumberPart, b: NumberPart, span: Span, walk: Walk): NumberPart | undefined {
  const exponent = b.bare === undefined ? NaN : b.compute([]);
  if (!(Math.abs(exponent) <= highestPower))
    return say(
      walk,
      'expression-not-allowed',
      b.span,
      'this exponent',
      `a number from -${highestPower} to ${highestPower}`,
    );
  if (hasTemperature([a], span, walk)) return undefined;
  const base = a.compute;
  const compute = (values: Values): number => base(values) ** exponent;
  const shape = a.shape === 'constant' ? 'constant' : 'curved';
  return { sort: 'number', span, kind: power(a.kind, exponent), compute, shape, bare: undefined };
}

/** The zero of a scale of temperature is nowhere in particular, so that sums of two readings mean nothing. */
function hasTemperature(parts: readonly NumberPart[], span: Span, walk: Walk): boolean {
  if (!parts.some(({ kind }) => isTemperature(kind))) return false;
  say(
    walk,
    'dimensions-do-not-match',
    span,
    'a temperature that is computed with',
    'temperatures only to be compared',
  );
  return true;
}

function bent(a: NumberPart, b: NumberPart): NumberPart['shape'] {
  if (a.shape === 'curved' || b.shape === 'curved') return 'curved';
  return a.shape === 'constant' && b.shape === 'constant' ? 'constant' : 'linear';
}
