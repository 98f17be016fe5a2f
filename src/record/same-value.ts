// Says whether two stretches of text are one value in other units or other spaces; knows no quantity.
import { findUnit, toSI } from '../measure/units.ts';

/** True of `100 m` and `10000 cm`; of words only where they are the same words. */
export function saysTheSame(one: string, other: string): boolean {
  return one === other || inSI(one) === inSI(other);
}

/** A number with the unit behind it, as far as nine digits tell numbers apart. */
function inSI(text: string): string {
  return text
    .trim()
    .replace(/\s+/gu, ' ')
    .replace(
      /(?<![\p{L}\p{N}_.-])(\d+(?:\.\d+)?) ?([^\s\d,;:()[\]{}±#"'.]+)/gu,
      (all, digits: string, word: string) => {
        const unit = findUnit(word);
        // A temperature's zero is another one in a difference than in a reading.
        if (unit === undefined || unit.dimension === 'temperature') return all;
        return `${Number(toSI(Number(digits), unit.name).toPrecision(9))} ${unit.dimension}`;
      },
    );
}
