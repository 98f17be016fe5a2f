// Builds the file of a new student: name, hand, stature and a bag with what is usual for each kind of club; writes nothing to any disk.
import { quote } from '../measure/quote.ts';
import { parseMeasure } from '../measure/parse.ts';
import { fromSI } from '../measure/units.ts';
import { isDate } from '../record/date.ts';
import { clubKinds, type ClubKind } from '../registry/generated.ts';
import { builtIn, findQuantity, practiceWith } from '../registry/registry.ts';
import { fileNameOf, freeName } from './file-name.ts';
import { cursorMark, newFile, yamlWords, type NewFile } from './new-text.ts';

export interface StudentWish {
  readonly name: string;
  readonly hand: 'left' | 'right';
  /** As a coach writes it, "171 cm"; left to be typed where undefined. */
  readonly stature: string | undefined;
  /** A day or a year. */
  readonly born: string | undefined;
  readonly clubs: readonly string[];
  /** In words, one part of the body each. */
  readonly injuries: readonly string[];
}

/** What somebody who is asked for clubs finds there to change. */
export const usualClubs = ['driver', 'seven iron', 'pitching wedge'] as const;

export const studentSuffix = '.student.yaml';

/** The kind that the name of a club tells: "5 wood" is a fairway wood, "56 deg" a wedge, and what tells nothing an iron. */
export function clubKindOf(name: string): ClubKind {
  const words = name.toLowerCase();
  const named = clubKinds.find((kind) => words.includes(kind));
  if (named !== undefined) return named;
  if (/\butility\b/.test(words)) return 'hybrid';
  if (/\bwood\b|^\d+\s*w$/.test(words)) return /^(?:1|one)\b/.test(words) ? 'driver' : 'fairway';
  if (/^[pgasl]w$|\b(?:4[4-9]|5\d|6[0-4])\b/.test(words)) return 'wedge';
  return /^\d+\s*h$/.test(words) ? 'hybrid' : 'iron';
}

/** What is wrong with a stature, as somebody who types it is told; undefined where nothing is. */
export function statureProblem(text: string): string | undefined {
  const quantity = findQuantity('student.stature')!;
  const { value, problems } = parseMeasure(text, quantity, { window: 'no', methods: builtIn.methodNames });
  const worst = problems[0];
  if (value === undefined || worst !== undefined)
    return `Found ${worst?.found ?? quote(text)}; expected ${worst?.expected ?? 'a length'}, such as \`171 cm\`.`;
  const { min, max } = quantity.bounds;
  if (value.kind === 'measure' && value.value >= min && value.value <= max) return undefined;
  return `Found ${quote(text)}; expected a stature from ${fromSI(min, 'cm').toFixed(0)} to ${fromSI(max, 'cm').toFixed(0)} cm.`;
}

export function birthProblem(text: string): string | undefined {
  return isDate(text) || /^\d{4}$/.test(text)
    ? undefined
    : `Found ${quote(text)}; expected a day as year-month-day, such as \`1998-05-14\`, or only the year.`;
}

/**
 * The file of this student in `folder` (a URI without a slash at its end); `taken` are the names there. A player's folder is named
 * like the file.
 */
export function newStudent(wish: StudentWish, folder: string, taken: readonly string[]): NewFile {
  const { name, hand, stature, born, clubs, injuries } = wish;
  const file = freeName(fileNameOf(name, 'student'), studentSuffix, taken);
  const bag = [...new Set(clubs.map((club) => club.trim()).filter((club) => club !== ''))];
  const lines = [
    'student: 1',
    `name: ${yamlWords(name)}`,
    ...(born === undefined ? [] : [`born: ${born}`]),
    `hand: ${hand}`,
    stature === undefined ? `stature: ${cursorMark}` : `stature: ${stature}`,
    stature === undefined ? 'mass:' : `mass: ${cursorMark}`,
    ...(bag.length === 0
      ? []
      : ['# What is usual for the kind of club: write what is stamped on it.', 'bag:']),
    ...bag.map((club) => `  ${yamlWords(club)}: ${clubText(clubKindOf(club))}`),
    ...(injuries.length === 0
      ? []
      : ['injuries:', ...injuries.map((part) => `  - part: ${yamlWords(part)}`)]),
  ];
  return newFile(`${folder}/${encodeURIComponent(file)}`, `${lines.join('\n')}\n`);
}

/** `~` says that it is an estimate. Lengths are left out: what is usual holds clubs for children as well. */
function clubText(kind: ClubKind): string {
  const fields = (['loft', 'lie'] as const).flatMap((key) => {
    const quantity = findQuantity(`club.${key}`)!;
    const range = practiceWith(quantity, kind);
    if (range === undefined) return [];
    const middle = fromSI((range.min + range.max) / 2, quantity.unit);
    return [`${key}: ~${Number(middle.toFixed(0))} ${quantity.unit}`];
  });
  return `{ ${[`kind: ${kind}`, ...fields].join(', ')} }`;
}
