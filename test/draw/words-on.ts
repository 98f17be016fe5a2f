// Finds all words on a picture in its text, each with the box that it takes, wherever groups move it.
import { widthOf } from '../../src/draw/lettering.ts';

export interface Box {
  readonly text: string;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

export function boxesOf(svg: string): readonly Box[] {
  const boxes: Box[] = [];
  const moved: { readonly x: number; readonly y: number }[] = [{ x: 0, y: 0 }];
  for (const [, closing, tag, attributes, , text] of svg.matchAll(
    /<(\/?)(g|text)((?: [\w-]+(?:="[^"]*")?)*)(\/?)>([^<]*)/g,
  )) {
    if (tag === 'g') {
      if (closing === '/') moved.pop();
      else moved.push(shifted(moved.at(-1)!, attributes!));
      continue;
    }
    if (closing !== '/') boxes.push(boxOf(moved.at(-1)!, attributes!, text!));
  }
  return boxes;
}

export function sizeOf(svg: string): { readonly width: number; readonly height: number } {
  const [, width, height] = /viewBox="0 0 ([\d.]+) ([\d.]+)"/.exec(svg) ?? [];
  return { width: Number(width), height: Number(height) };
}

export function overlap(a: Box, b: Box): boolean {
  return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}

type Shift = Readonly<Record<'x' | 'y', number>>;

function shifted({ x, y }: Shift, attributes: string): Shift {
  const [, dx, dy] = /transform="translate\((-?[\d.]+) (-?[\d.]+)\)"/.exec(attributes) ?? [];
  if (attributes.includes('transform') && dx === undefined) throw new Error(`not followed: ${attributes}`);
  return { x: x + Number(dx ?? 0), y: y + Number(dy ?? 0) };
}

/** Letters reach some 0.76 of their size above the line that they stand on, and 0.22 below it. */
function boxOf(by: Shift, attributes: string, written: string): Box {
  const attribute = (name: string): string | undefined =>
    new RegExp(` ${name}="([^"]*)"`).exec(attributes)?.[1];
  const text = written
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&quot;', '"')
    .replaceAll('&amp;', '&');
  const size = Number(attribute('font-size') ?? 12);
  const [x, y] = [by.x + Number(attribute('x') ?? 0), by.y + Number(attribute('y') ?? 0)];
  const width = widthOf(text, size);
  const before = { start: 0, middle: width / 2, end: width }[attribute('text-anchor') ?? 'start'] ?? NaN;
  return { text, left: x - before, right: x - before + width, top: y - 0.76 * size, bottom: y + 0.22 * size };
}
