// Writes a page that shows every kept picture, and every picture of every sample, in every theme: `npx tsx build/gallery.ts [FILE]`.
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { createCache } from '../src/analysis/cache.ts';
import type { Analysis } from '../src/analysis/result.ts';
import { settle } from '../src/analysis/settle.ts';
import { findFiles, loadFile, toPath } from '../src/disk/files.ts';
import { hoverPictureOf } from '../src/draw/hover-pictures.tsx';
import { svgOf } from '../src/draw/picture.tsx';
import { pictures, sheetsOf } from '../src/draw/pictures.tsx';
import { themes, type Theme } from '../src/draw/theme.ts';

const kept = 'test/draw/pictures';
/** One for each kind of picture in a hover. */
const hovered = [
  'delivery.path',
  'delivery.face',
  'delivery.face_to_path',
  'delivery.attack',
  'delivery.low_point.ahead',
  'ground.divot.starts',
  'flight.start',
  'flight.carry',
];
const style = `
body { font: 14px system-ui; margin: 24px; color: #1f2a28; background: #eef1f0; }
nav { columns: 14rem; }
div { display: grid; grid-template-columns: repeat(auto-fill, minmax(min(100%, 440px), 1fr)); gap: 8px; }
div.small { grid-template-columns: repeat(auto-fill, minmax(290px, 1fr)); }
figure { margin: 0; padding: 12px; }
svg { display: block; max-width: 100%; height: auto; }
figcaption { font-size: 12px; opacity: 0.8; padding-top: 6px; }
h2 { margin-top: 48px; }
h3 { margin: 24px 0 6px; font-size: 14px; }
`;

let count = 0;

/** A picture in all themes. Ids inside one hang on its name, and a page must not hold one twice. */
function inAllThemes(title: string, draw: (theme: Theme) => string, room = ''): string {
  const shown = Object.entries(themes).map(([theme, colours]) => {
    count += 1;
    const svg = draw(colours);
    const [, name = ''] = /data-picture="([^"]+)"/.exec(svg) ?? [];
    const own = svg.replaceAll(new RegExp(`(["# ])${name}-`, 'g'), `$1${name}-${count}-`);
    return `<figure style="background:${colours.paper};color:${colours.ink}">${own}<figcaption>${theme}</figcaption></figure>`;
  });
  return `<h3>${title}</h3><div class="${room}">${shown.join('')}</div>`;
}

/** Kept pictures have the colours of the light theme, no two of which are the same. */
function recoloured(svg: string, theme: Theme): string {
  return (Object.keys(themes.light) as (keyof Theme)[])
    .reduce((text, meaning) => text.replaceAll(themes.light[meaning], `{${meaning}}`), svg)
    .replaceAll(/\{(\w+)\}/g, (_, meaning: keyof Theme) => theme[meaning]);
}

function keptPictures(): readonly string[] {
  return readdirSync(kept)
    .filter((file) => file.endsWith('.svg'))
    .sort()
    .map((file) => {
      const svg = readFileSync(join(kept, file), 'utf8');
      return inAllThemes(file, (theme) => recoloured(svg, theme));
    });
}

function picturesOf(analysis: Analysis): readonly string[] {
  return [
    ...pictures
      .flatMap((picture) => sheetsOf(picture, analysis))
      .map(({ title, draw }) => inAllThemes(title, (theme) => svgOf(draw(theme)))),
    ...hovered.flatMap((id) => {
      if (hoverPictureOf(analysis, id, themes.light) === undefined) return [];
      const draw = (theme: Theme): string => svgOf(hoverPictureOf(analysis, id, theme)!);
      return [inAllThemes(`In the hover on ${id}`, draw, 'small')];
    }),
  ];
}

const file = resolve(process.argv[2] ?? '.cache/gallery.html');
const { uris } = await findFiles(['samples']);
const cache = createCache();
const files = new Map();
const sections = [{ title: `Kept pictures (${kept})`, shown: keptPictures() }];
for (const uri of uris.filter((one) => one.endsWith('.swing.yaml'))) {
  const analysis = await settle(uri, files, loadFile, { throwIfAborted: () => undefined }, cache);
  sections.push({ title: toPath(uri), shown: picturesOf(analysis) });
}
const list = sections.map(({ title }, i) => `<li><a href="#section-${i}">${title}</a></li>`).join('');
const all = sections
  .map(({ title, shown }, i) => `<h2 id="section-${i}">${title}</h2>${shown.join('')}`)
  .join('');
mkdirSync(dirname(file), { recursive: true });
writeFileSync(
  file,
  `<!doctype html><html lang="en"><meta charset="utf-8"><title>Pictures</title><style>${style}</style><h1>Pictures in every theme</h1><nav><ul>${list}</ul></nav>${all}</html>`,
);
console.log(
  `${count / Object.keys(themes).length} pictures in ${Object.keys(themes).length} themes: ${file}`,
);
