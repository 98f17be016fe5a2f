// A picture as the printed page takes it: plain SVG in fixed colours, in letters that the page has; draws nothing.
import type { Drawing } from '../draw/handout/content.tsx';
import { svgOf } from '../draw/picture.tsx';
import { themes } from '../draw/theme.ts';
import { printed } from './letters.ts';

/** Ink on paper, and in words for who cannot see it. */
export function printedPicture(drawing: Drawing): { readonly svg: string; readonly alt: string } {
  const whole = svgOf(drawing(themes.light));
  const [title = '', words = ''] = ['title', 'desc'].map((tag) => textIn(whole, tag));
  return { svg: withoutWords(whole), alt: printed(words.startsWith(title) ? words : `${title}. ${words}`) };
}

function textIn(svg: string, tag: string): string {
  const [, text = ''] = new RegExp(`<${tag}[^>]*>(.*?)</${tag}>`, 's').exec(svg) ?? [];
  return text
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&quot;', '"')
    .replaceAll('&amp;', '&');
}

function withoutWords(svg: string): string {
  return printed(
    svg
      .replace(/<title[^>]*>.*?<\/title>|<desc[^>]*>.*?<\/desc>/gs, '')
      .replace(/font-family="[^"]*"/g, 'font-family="Roboto"')
      .replace(/font-weight="600"/g, 'font-weight="bold"')
      .replace(/ stroke-dasharray="none"/g, ''),
  );
}
