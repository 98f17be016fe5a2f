// Keeps a number and its unit on one line, wherever people read words that are broken into lines; knows no quantity.
import { unitRows } from '../measure/unit-table.ts';

/** What stands behind a number, besides the units that are measured in: standard uncertainties, and points of a share. */
const others = ['u', 'point', 'points', 'U/min'];
const units = [...unitRows.map(({ name }) => name), ...others]
  .filter((name) => name !== '')
  .map((name) => name.replace(/[.*+?^${}()|[\]\\/]/g, '\\$&'));
const joints = new RegExp(
  `(?<=\\d) (?=(?:${units.join('|')})(?![\\p{L}\\d/]))|(?<=[±~\u2212]) (?=\\d)`,
  'gu',
);

/** No-break space. */
const space = '\u00a0';

/** With no-break spaces between numbers and their units, and behind a ±. */
export function unbroken(text: string): string {
  return text.replaceAll(joints, space);
}

/** The same in the words of a page; pictures have no lines to break, and code stays as it is written in a file. */
export function unbrokenPage(html: string): string {
  return html
    .split(/(<(?:style|code|svg|title)\b.*?<\/(?:style|code|svg|title)>)/s)
    .map((piece, i) => (i % 2 === 1 ? piece : piece.replaceAll(/>[^<]+|^[^<]+/g, unbroken)))
    .join('');
}
