// Writes a page that shows every picture of every sample in every theme: `npx tsx build/gallery.ts [FILE]`.
import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import { createCache } from '../src/analysis/cache.ts';
import { settle } from '../src/analysis/settle.ts';
import { findFiles, loadFile, toPath } from '../src/disk/files.ts';
import { svgOf } from '../src/draw/picture.tsx';
import { pictures, sheetsOf } from '../src/draw/pictures.tsx';
import { themes } from '../src/draw/theme.ts';

const file = resolve(process.argv[2] ?? '.cache/gallery.html');
const { uris } = await findFiles(['samples']);
const cache = createCache();
const files = new Map();
const sections: string[] = [];
for (const uri of uris.filter((one) => one.endsWith('.swing.yaml'))) {
  const analysis = await settle(uri, files, loadFile, { throwIfAborted: () => undefined }, cache);
  for (const { name, title, draw } of pictures.flatMap((picture) => sheetsOf(picture, analysis))) {
    // Ids inside a picture hang on its name, and a page must not hold one twice.
    const shown = Object.entries(themes).map(([theme, colours], i) => {
      const own = `${name}-${sections.length}-${i}-`;
      const svg = svgOf(draw(colours)).replaceAll(new RegExp(`(["# ])${name}-`, 'g'), `$1${own}`);
      return `<figure style="background:${colours.paper};color:${colours.ink}">${svg}<figcaption>${theme}</figcaption></figure>`;
    });
    sections.push(`<h2>${title}: ${toPath(uri)}</h2><div>${shown.join('')}</div>`);
  }
}
mkdirSync(dirname(file), { recursive: true });
writeFileSync(
  file,
  `<!doctype html><html lang="en"><meta charset="utf-8"><title>Pictures</title><style>body{font:14px system-ui}div{display:flex;flex-wrap:wrap;gap:8px}figure{margin:0;padding:12px}</style><h1>Every picture of every sample</h1>${sections.join('')}</html>`,
);
console.log(
  `${sections.length} pictures in ${Object.keys(themes).length} themes: ${toPath(`file://${file}`)}`,
);
