// How much room words take on a picture, and how they are cut, broken and kept apart; knows no quantity and no font but the usual one.
import { unbroken } from './unbroken.ts';

/**
 * Widths in thousandths of the size, of Helvetica (Adobe's font metrics, from memory); a system's own letters are up to a tenth
 * wider, which `wider` allows for.
 */
const widths: readonly (readonly [string, number])[] = [
  ["ijl|'", 222],
  ['.,:;!ftI()[]/ ·\u00a0', 285],
  ['r-', 333],
  ['ckszvxyJ', 500],
  ['abdeghnopquL0123456789', 556],
  ['+=±<>~', 584],
  ['FTZ', 611],
  ['ABEKPSVXY&', 667],
  ['wCDHNRU', 722],
  ['GOQ', 778],
  ['mM', 833],
  ['%W…→←↑↓', 1000],
];
const widthOfLetter = new Map(
  widths.flatMap(([letters, width]) => [...letters].map((letter) => [letter, width])),
);
const wider = 1.1;

/** In units of the picture, rather too much than too little. */
export function widthOf(text: string, size: number): number {
  let sum = 0;
  for (const letter of text) sum += widthOfLetter.get(letter) ?? (letter > '\u2e80' ? 1000 : 600);
  return (sum * size * wider) / 1000;
}

/** The text, with its end left off where it is too wide. */
export function fitted(text: string, width: number, size: number): string {
  if (widthOf(text, size) <= width) return text;
  let kept = [...text].slice(0, 200);
  while (kept.length > 0 && widthOf(`${kept.join('')}…`, size) > width) kept = kept.slice(0, -1);
  return `${kept.join('').trimEnd()}…`;
}

/** Lines no wider than this, broken between words but not between a number and its unit; the last one is cut where more lines would be needed. */
export function wrapped(text: string, width: number, size: number, mostLines = 3): readonly string[] {
  const lines: string[] = [];
  let line = '';
  for (const joined of unbroken(text.slice(0, 2000).replaceAll(/\s+/g, ' ')).split(' ')) {
    const word = joined.replaceAll('\u00a0', ' ');
    const longer = line === '' ? word : `${line} ${word}`;
    if (line === '' || widthOf(longer, size) <= width) {
      line = longer;
      continue;
    }
    lines.push(line);
    line = word;
  }
  lines.push(line);
  const last = lines.slice(mostLines - 1).join(' ');
  const kept = lines.length > mostLines ? [...lines.slice(0, mostLines - 1), last] : lines;
  return kept.map((one) => fitted(one, width, size));
}

/** Places near the wanted ones, in their order, with at least this gap between any two, between both ends as far as there is room. */
export function keptApart(
  wanted: readonly number[],
  gap: number,
  [from, to]: readonly [number, number],
): readonly number[] {
  const order = wanted.map((_, i) => i).sort((a, b) => wanted[a]! - wanted[b]! || a - b);
  const at = [...wanted];
  let least = from;
  for (const i of order) {
    at[i] = Math.max(wanted[i]!, least);
    least = at[i] + gap;
  }
  let most = to;
  for (const i of order.reverse()) {
    at[i] = Math.min(at[i]!, most);
    most = at[i] - gap;
  }
  return at;
}
