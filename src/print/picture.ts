// A picture as the printed page takes it: plain SVG in fixed colours, in letters that the page has; draws nothing.
import type { Drawing } from '../draw/handout/content.tsx';
import { svgOf } from '../draw/picture.tsx';
import { themes } from '../draw/theme.ts';
import { printed } from './letters.ts';

/** Ink on paper. Titles and descriptions are for pages that read them out. */
export function printedPicture(drawing: Drawing): string {
  return printed(
    svgOf(drawing(themes.light))
      .replace(/<title[^>]*>.*?<\/title>|<desc[^>]*>.*?<\/desc>/gs, '')
      .replace(/font-family="[^"]*"/g, 'font-family="Roboto"')
      .replace(/font-weight="600"/g, 'font-weight="bold"')
      .replace(/ stroke-dasharray="none"/g, ''),
  );
}
