// What a proof asks for in words, with the sides that its signs stand for; shared by editor, pages and command line, judges nothing.
import { byItsSide, hasSides, sideOf, signsIn, type ProofAsks } from '../judgement/proof.ts';
import { collapseSpaces } from '../measure/quote.ts';
import { nameWithin } from './agreement.ts';
import { roundWords } from './proposal-words.ts';

/** "delivery.path > -2 deg (club path under 2 deg left)": as written, and with its side where it has one. */
export function proofText(asks: ProofAsks): string {
  return `${collapseSpaces(asks.text)}${inBrackets(asks)}`;
}

/** " (club path under 2 deg left)"; empty where no sign has a side. */
export function inBrackets(asks: ProofAsks): string {
  const words = sidesOf(asks);
  return words === '' ? '' : ` (${words})`;
}

/** "club path under 2 deg left"; of more than one quantity against one number "+ is right, - is left". Empty where no sign has a side. */
export function sidesOf({ quantities, limit }: ProofAsks): string {
  if (limit === undefined || !hasSides(limit.quantity)) return signWords(quantities);
  const { quantity, value, sign } = limit;
  const name = nameWithin(quantity);
  const side = sideOf(limit);
  if (side !== undefined) return `${name} ${side}${sign.endsWith('=') ? ' or 0' : ''}`;
  const number = roundWords(quantity, value);
  const way = byItsSide(limit);
  if (way === '>') return `${name} over ${number}`;
  if (way === '<') return `${name} under ${number}`;
  return `${name} ${number} or ${way === '>=' ? 'more' : 'less'}`;
}

function signWords(quantities: ProofAsks['quantities']): string {
  return signsIn({ quantities })
    .map(([plus, minus]) => `+ is ${plus}, - is ${minus}`)
    .join('; ');
}
