// What every part of a printed page is set with: letters, sizes, colours, margins; knows no part.
import type { Content } from '../draw/handout/content.tsx';
import { widthOf } from '../draw/lettering.ts';
import { themes } from '../draw/theme.ts';
import { unbroken } from '../draw/unbroken.ts';
import { printed } from './letters.ts';
import type { Part, Role } from 'pdfmake/js/Renderer.js';

/** A piece of pdfmake's description. */
export type Block = Readonly<Record<string, unknown>>;

export const ink = themes.light;
export const margin = { side: 40, top: 34 };
/** Between the margins of A4. */
export const width = 595.28 - 2 * margin.side;

export interface Setting {
  readonly points: (base: number) => number;
  readonly content: Content;
}

/** In letters of size 1: as wide as nothing is that has a place to break at, and still narrower than the narrowest column; judgement. */
const widestWord = 12;

export function line(text: string, style: Block = {}): Block {
  const pieces = piecesOf(printed(unbroken(text)));
  if (pieces.length === 1 && !pieces[0]!.isLong) return { text: pieces[0]!.text, ...style };
  return {
    text: pieces.map((piece) => ({
      ...style,
      text: piece.text,
      ...(piece.isLong ? { wordBreak: 'break-all' } : {}),
    })),
    ...style,
  };
}

/** Whose lines are a part of a table or a list for those who have the page read out. */
export function partOf(parts: readonly Part[], text: string, style: Block = {}): Block {
  // What is empty would be no line at all, and its cell missing in the row.
  return { text: [line(text === '' ? '\u00a0' : text, { ...style, parts })] };
}

export function list(name: string, texts: readonly string[], { points }: Setting): Block {
  const whole: Part = { type: 'L', key: name };
  return {
    ul: texts.map((text, i) => ({
      ...partOf(
        [whole, { type: 'LI', key: `${name} ${i}` }, { type: 'LBody', key: `${name} ${i} body` }],
        text,
      ),
      margin: [0, 0, 0, points(2)],
    })),
  };
}

/** A column is no narrower than the longest word in it, so words that no column has room for stand apart and are broken anywhere. */
function piecesOf(text: string): readonly { readonly text: string; readonly isLong: boolean }[] {
  const pieces: { text: string; isLong: boolean }[] = [];
  for (const word of text.split(/(?<= )/)) {
    const isLong = widthOf(word, 1) > widestWord;
    const last = pieces.at(-1);
    if (last?.isLong === isLong) last.text += word;
    else pieces.push({ text: word, isLong });
  }
  return pieces.length === 0 ? [{ text: '', isLong: false }] : pieces;
}

export function heading(text: string, { points }: Setting, style: Block = {}): Block {
  return {
    text: [line(text, { role: 'H2' satisfies Role })],
    fontSize: points(12.5),
    bold: true,
    color: ink.entered,
    margin: [0, points(12), 0, points(4)],
    ...style,
  };
}
