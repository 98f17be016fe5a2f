// Takes the pictures of the README and of the walkthrough from a real VS Code with this folder's extension: `node build/pictures.mjs [NAME…]`.
//
// A name is that of a picture, such as `editor` or `hover`; without one all are taken. On a slow machine a picture is tried again.
// With `--look FOLDER` each is taken in all four themes into that folder, to be looked at, and those that stand in the project stay.
// Colours are brought down to 256, which nobody sees in a picture of text, so that files stay small.
import { cp, mkdir, mkdtemp, rm, stat, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { parseArgs } from 'node:util';
import UPNG from 'upng-js';
import { withVSCode } from '../test/host/host.mjs';
import { allFour, half, started, windows } from './picture-windows.mjs';
import { root, run, setUp } from './setup.mjs';

/** Milliseconds for one act on the page, before the picture is tried again. */
const patience = 60_000;
const tries = 3;
const colours = 256;

const { positionals: wanted, values } = parseArgs({
  allowPositionals: true,
  options: { look: { type: 'string' } },
});
setUp();
run(process.execPath, ['build/bundle.mjs']);

// A copy, since VS Code in a browser saves by itself.
const copy = await mkdtemp(join(tmpdir(), 'swingwright-pictures-'));
const practice = join(copy, 'hollow-lane');
try {
  await cp(join(root, 'samples'), practice, { recursive: true });
  await writeFile(join(practice, started), half);
  for (const window of windows) {
    const pictures = window.pictures.filter(({ name }) => wanted.length === 0 || wanted.includes(name));
    if (pictures.length > 0) await takeAll(window, pictures);
  }
} finally {
  await rm(copy, { recursive: true, force: true });
}

async function takeAll({ file, size, scale, more, ready }, pictures) {
  const settings = { 'editor.stickyScroll.enabled': false, ...more };
  const setting = { folder: practice, file: join(practice, file), extension: root, size, scale, settings };
  await again(file, () =>
    withVSCode(setting, async (page, tools) => {
      page.setDefaultTimeout(patience);
      const scene = { page, tools };
      // What the status bar says of the record comes with its first analysis.
      await page.locator('[id="swingwright.swingwright.swingwright.record"]').waitFor();
      await ready?.(scene);
      for (const { name, folder = 'media/walkthrough', themes = allFour, show, part } of pictures)
        for (const [theme, suffix] of Object.entries(values.look === undefined ? themes : allFour)) {
          const png = await again(`${name} in ${theme}`, async () => {
            await tools.theme(theme);
            await show(scene);
            await tools.settle();
            const where = part === undefined ? page : page.locator(part).first();
            return where.screenshot({ animations: 'disabled', caret: 'hide' });
          });
          const to = values.look === undefined ? join(root, folder) : resolve(values.look);
          await write(join(to, `${name}-${suffix}.png`), png);
        }
    }),
  );
}

/** What fails on a busy machine most often succeeds the next time. */
async function again(what, act) {
  for (let left = tries; ; left--)
    try {
      return await act();
    } catch (error) {
      if (left <= 1) throw error;
      console.log(`${what}: ${String(error).split('\n')[0]} Trying again.`);
    }
}

async function write(file, png) {
  const image = UPNG.decode(png.buffer.slice(png.byteOffset, png.byteOffset + png.byteLength));
  const small = UPNG.encode(UPNG.toRGBA8(image), image.width, image.height, colours);
  await mkdir(join(file, '..'), { recursive: true });
  await writeFile(file, Buffer.from(small));
  const { size } = await stat(file);
  console.log(`${file} ${Math.round(size / 1024)} kB`);
}
