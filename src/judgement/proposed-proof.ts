// What a proposed change is proved by in the next record: the evidence of its fault gone, or half of the way gone; runs no model.
import { fromSI, toSI } from '../measure/units.ts';
import type { Quantity } from '../registry/quantity.ts';
import { evidenceOf } from './book.ts';
import type { BookFault } from './book.ts';
import type { Foreseer } from './foreseer.ts';

const opposite: Readonly<Record<string, string>> = { '<': '>=', '<=': '>', '>': '<=', '>=': '<' };
const turned: Readonly<Record<string, string>> = { '<': '>', '<=': '>=', '>': '<', '>=': '<=' };

/**
 * That the first evidence of the fault that is one quantity against one number holds no longer: what is measured before what is not.
 * Undefined where there is none, or where this record meets it already.
 */
export function proofAgainst(
  { fault }: BookFault,
  { account, registry, hand }: Foreseer,
): string | undefined {
  const found = evidenceOf(fault, registry).flatMap(({ compiled, expression }) => {
    const match = /^\s*([\w.]+)\s*(<=?|>=?)\s*(-?)\s*([\d.]+\s*[^\s<>=()]*)\s*$/.exec(expression.value);
    const [quantity] = compiled?.quantities ?? [];
    if (match === null || compiled?.margin === undefined || quantity === undefined) return [];
    if (quantity.id !== match[1]) return [];
    const isTurned = quantity.lateral && hand === 'left';
    if (quantity.lateral && hand === undefined) return [];
    const now = account.derivation.values.get(quantity.id)?.value;
    // Above zero where the evidence holds.
    if (now !== undefined && !(compiled.margin([isTurned ? 0 - now : now]) > 0)) return [];
    const [, id, sign, minus, number] = match as unknown as readonly [string, string, string, string, string];
    const proved = opposite[sign]!;
    const side = isTurned && Number.parseFloat(number) !== 0 ? (minus === '' ? '-' : '') : minus;
    return [
      {
        isMeasured: now !== undefined,
        text: `${id} ${isTurned ? turned[proved]! : proved} ${side}${number.trim()}`,
      },
    ];
  });
  return (found.find(({ isMeasured }) => isMeasured) ?? found[0])?.text;
}

/** In the unit shown, with no more decimals than it takes to lie between the two. */
export function proofHalfWay({ id, unit, decimals }: Quantity, from: number, to: number): string {
  const half = fromSI((from + to) / 2, unit);
  const isBetween = (value: number): boolean => (toSI(value, unit) - from) * (toSI(value, unit) - to) < 0;
  const rounded = [0, decimals, decimals + 1].map((digits) => Number(half.toFixed(digits)));
  const value = rounded.find(isBetween) ?? half;
  return `${id} ${to > from ? '>' : '<'} ${value}${unit === '' ? '' : ` ${unit}`}`;
}
