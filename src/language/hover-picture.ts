// A small picture as an image in a hover's Markdown, with its colours in it, since an image sees no variable of the page; draws nothing.
import type { Analysis } from '../analysis/result.ts';
import { card } from '../draw/hover-card.tsx';
import { hoverPictureOf } from '../draw/hover-pictures.tsx';
import { svgOf } from '../draw/picture.tsx';
import { themes, type ThemeName } from '../draw/theme.ts';
import { escapeMarkdown } from './markdown.ts';

export type { ThemeName };

// Every place where this runs has it, and the types of the core know no place.
declare const btoa: (latin: string) => string;

/** So much larger than drawn, so that lettering of 11 is as large as that of an editor. */
const enlarged = 1.25;

/** Of a theme that a client names; anything else is none. */
export function themeNamed(said: unknown): ThemeName | undefined {
  return typeof said === 'string' && Object.hasOwn(themes, said) ? (said as ThemeName) : undefined;
}

/** Undefined where there is nothing to draw of this quantity. */
export function hoverPicture(analysis: Analysis, id: string, theme: ThemeName): string | undefined {
  const picture = hoverPictureOf(analysis, id, themes[theme]);
  if (picture === undefined) return undefined;
  const svg = svgOf(picture);
  const [, title = ''] = /<title[^>]*>([^<]*)</.exec(svg) ?? [];
  const [, words = ''] = /<desc[^>]*>([^<]*)</.exec(svg) ?? [];
  const size = `width=${card.width * enlarged},height=${card.height * enlarged}`;
  return `![${escapeMarkdown(`${title}. ${words}`)}](data:image/svg+xml;base64,${btoa(plain(svg))}|${size})`;
}

/** The same XML in ASCII alone. */
function plain(svg: string): string {
  return svg.replace(/[^\0-\x7f]/gu, (sign) => `&#${sign.codePointAt(0)};`);
}
