// Says in words how far methods agree: the bias with its interval, between which limits they differ, and how well one repeats itself.
import { counted } from '../measure/counted.ts';
import { differenceFromSI } from '../measure/units.ts';
import { fewestPairs, type Interval95 } from '../model/method-comparison.ts';
import type { Quantity } from '../registry/quantity.ts';
import type { MethodFigure } from './method-figures.ts';
import type { MethodAgreement, PairedMethods, RepeatedMethod } from './method-pairs.ts';
import { lowerFirst } from '../measure/quote.ts';

export function agreementLines({ records, paired, repeated }: MethodAgreement): readonly string[] {
  if (paired.length + repeated.length === 0)
    return [
      `Found nothing that was measured twice in ${counted(records, 'record')}; expected entries such as \`face: [1 deg right by radar, 3 deg right by eye]\`.`,
    ];
  return [
    ...(paired.length === 0 ? [] : ['By two methods', ...paired.flatMap(pairedLines)]),
    ...(repeated.length === 0 ? [] : ['By one method again', ...repeated.flatMap(repeatedLines)]),
  ];
}

function pairedLines({ quantity, one, other, pairs, comparison: c }: PairedMethods): readonly string[] {
  const head = `  ${quantity.title} (${quantity.id}): ${one} less ${other}, ${counted(pairs.length, 'pair')}`;
  if (c === undefined) return [head, `    too few to say; it takes ${fewestPairs}`];
  const holdsZero = c.biasInterval.from <= 0 && c.biasInterval.to >= 0;
  const { trendInterval: trend } = c;
  return [
    head,
    `    bias ${signed(quantity, c.bias)} (95 %: ${range(quantity, c.biasInterval)})${holdsZero ? ', which may be none' : ''}`,
    `    95 % of differences lie within ${range(quantity, c.limits)} (the ends are known to ${range(quantity, c.limitIntervals.from)} and ${range(quantity, c.limitIntervals.to)})`,
    ...(trend !== undefined && (trend.from > 0 || trend.to < 0)
      ? [
          '    the difference grows with the size, so these limits are too wide for some and too narrow for others',
        ]
      : []),
  ];
}

function repeatedLines({ quantity, method, repeatability: r }: RepeatedMethod): readonly string[] {
  return [
    `  ${quantity.title} (${quantity.id}) by ${method}, ${counted(r.things, 'entry', 'entries')} measured ${r.measurements} times`,
    `    one measurement ± ${plain(quantity, r.within)}; two of the same thing differ by less than ${plain(quantity, r.coefficient)}, 95 times in 100`,
  ];
}

/** "eye: face direction ± 3.2 deg, from 14 pairs with radar; the table says 5 deg". */
export function figureLine({ method, against, quantity, figure, before, pairs }: MethodFigure): string {
  const number = (value: number): string => `${value}${quantity.unit === '' ? '' : ` ${quantity.unit}`}`;
  const title = lowerFirst(quantity.title);
  return `${method}: ${title} (${quantity.id}) ± ${number(figure)}, from ${counted(pairs, 'pair')} with ${against}; the table says ${number(Number(before.toPrecision(2)))}`;
}

function signed(quantity: Quantity, value: number): string {
  const number = rounded(quantity, value);
  return `${Number(number) > 0 ? '+' : ''}${number} ${quantity.unit}`.trim();
}

function plain(quantity: Quantity, value: number): string {
  return `${rounded(quantity, value)} ${quantity.unit}`.trim();
}

function range(quantity: Quantity, { from, to }: Interval95): string {
  return `${rounded(quantity, from)}..${rounded(quantity, to)} ${quantity.unit}`.trim();
}

/** A difference has one decimal more than what it is a difference of. */
function rounded({ unit, decimals }: Quantity, value: number): string {
  const number = differenceFromSI(value, unit).toFixed(Math.min(decimals + 1, 6));
  return Number(number) === 0 ? number.replace('-', '') : number;
}
