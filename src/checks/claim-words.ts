// Beliefs of a fault book, what physics and history say of them, in words; the same in findings, hovers and on the command line.
import type { Claim, Said } from '../judgement/claims.ts';
import type { DirectionWord, Notation } from '../measure/measure.ts';
import { inPoints, showValue } from '../measure/show.ts';
import { toSI } from '../measure/units.ts';
import type { Quantity } from '../registry/quantity.ts';
import { nameWithin } from './agreement.ts';

/** "1.0 deg backward ± 0.3 deg", "2.0 m/s less", "5 points more": how far a quantity goes, and which way. */
export function showDifference(quantity: Quantity, amount: number, u: number | null = null): string {
  const own = quantity.directions.filter(({ bearing }) => bearing === undefined);
  const notation: Notation = { ...quantity, directions: own.length > 0 ? own : moreOrLess };
  const zero = quantity.dimension === 'temperature' ? toSI(0, quantity.unit) : 0;
  return inPoints(showValue(notation, amount + zero, u));
}

const moreOrLess: readonly DirectionWord[] = [
  { word: 'more', sign: 1 },
  { word: 'less', sign: -1 },
];

/** "delivered loft, when shaft lean at impact changes by 1.0 deg backward". */
export function effectOf(claim: Claim): string {
  const name = nameWithin(claim.quantity);
  const when = occasionOf(claim);
  return when === undefined ? name : `${name}, ${when}`;
}

/** "when shaft lean at impact changes by 1.0 deg backward"; undefined where the belief names no cause. */
export function occasionOf({ cause, toward, over }: Claim): string | undefined {
  if (cause === undefined) return undefined;
  return `when ${nameWithin(cause)} changes by ${showDifference(cause, toward * over)}`;
}

/** "1.0 deg more ± 0.3 deg", or only "more". */
export function beliefOf({ quantity, sign, amount, effect }: Claim, u: number | null): string {
  if (amount !== undefined)
    return showDifference(quantity, amount, effect.size?.stated === undefined ? null : u);
  const own = quantity.directions.find((word) => word.sign === sign && word.bearing === undefined);
  return own?.word ?? (sign === 1 ? 'more' : 'less');
}

/** "agrees: 0.9 deg more ± 0.2 deg, as believed", "no say: the model knows no way from the one to the other". */
export function answerOf(quantity: Quantity, { answer, amount, u, size, reason }: Said): string {
  const number = amount === undefined || u === undefined ? '' : showDifference(quantity, amount, u);
  const rest = [
    number,
    size === undefined || size === 'as believed' ? size : `${size} than believed`,
    reason,
  ];
  return `${answer}: ${rest.filter((part) => part !== undefined && part !== '').join(', ')}`;
}
