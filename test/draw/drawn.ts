// Finds the parts of a picture in its text, and holds whole pictures against kept ones; `UPDATE_PICTURES=1` writes those anew.
import assert from 'node:assert/strict';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import type { Analysis } from '../../src/analysis/result.ts';
import { svgOf } from '../../src/draw/picture.tsx';
import { pictures, sheetsOf } from '../../src/draw/pictures.tsx';
import { themes } from '../../src/draw/theme.ts';
import type { Checkpoint } from '../../src/registry/quantity.ts';

export interface Point {
  readonly x: number;
  readonly y: number;
}

/** Of a picture for each checkpoint, the one of `checkpoint`. */
export function drawn(name: string, analysis: Analysis, checkpoint?: Checkpoint): string {
  const picture = pictures.find((one) => one.name === name);
  assert.ok(picture, name);
  const [sheet] = sheetsOf(picture, analysis, checkpoint);
  assert.ok(sheet, `${name} at ${checkpoint}`);
  return svgOf(sheet.draw(themes.light));
}

/** The text of the group or shape that carries this attribute; groups do not nest their like. */
export function part(svg: string, attribute: string): string {
  const at = svg.indexOf(attribute);
  assert.ok(at >= 0, `no ${attribute} in the picture`);
  const start = svg.lastIndexOf('<', at);
  if (!svg.startsWith('<g', start)) return svg.slice(start, svg.indexOf('>', at) + 1);
  let depth = 0;
  for (const tag of svg.slice(start).matchAll(/<(\/?)g[ >]/g)) {
    depth += tag[1] === '/' ? -1 : 1;
    if (depth === 0) return svg.slice(start, start + tag.index);
  }
  return svg.slice(start);
}

/** The places of the path with that index in this part, curves by their ends. */
export function places(svg: string, index = 0): readonly Point[] {
  const path = [...svg.matchAll(/ d="([^"]+)"/g)][index]?.[1] ?? '';
  return [...path.matchAll(/[ML] (-?[\d.]+) (-?[\d.]+)/g)].map(([, x, y]) => ({
    x: Number(x),
    y: Number(y),
  }));
}

export function numberAt(svg: string, attribute: string): number {
  return Number(new RegExp(` ${attribute}="(-?[\\d.]+)"`).exec(svg)?.[1]);
}

/** Of a line on the picture from the first place to the second: 0 is up, degrees, right positive. */
export function angleOf([from, to]: readonly Point[]): number {
  return (Math.atan2(to!.x - from!.x, from!.y - to!.y) * 180) / Math.PI;
}

/** No number in a picture's shapes is anything but a plain one, and no path is empty; texts may say what a user wrote. */
export function assertSound(svg: string): void {
  const [bad] = /[^ ]*(NaN|Infinity|undefined)|<path d[ >]|="[^"]*\de[+-]\d[^"]*"/.exec(svg) ?? [];
  assert.equal(bad, undefined);
}

export function assertKept(file: string, svg: string): void {
  const at = join(import.meta.dirname, 'pictures', `${file}.svg`);
  if (process.env['UPDATE_PICTURES'] === '1') {
    mkdirSync(dirname(at), { recursive: true });
    writeFileSync(at, `${svg}\n`);
  }
  assert.ok(existsSync(at), `no kept picture ${file}: look at it, then run with UPDATE_PICTURES=1`);
  assert.equal(`${svg}\n`, readFileSync(at, 'utf8'));
}
