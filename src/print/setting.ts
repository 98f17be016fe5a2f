// What every part of a printed page is set with: letters, sizes, colours, margins; knows no part.
import type { Content } from '../draw/handout/content.tsx';
import { themes } from '../draw/theme.ts';
import { printed } from './letters.ts';
import type { Role } from 'pdfmake/js/Renderer.js';

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

export function line(text: string, style: Block = {}): Block {
  return { text: printed(text), ...style };
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
