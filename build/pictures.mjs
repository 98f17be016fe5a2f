// Takes the README's pictures from a real VS Code with this folder's extension: `node build/pictures.mjs`.
import { join } from 'node:path';
import { withVSCode } from '../test/host/host.mjs';
import { root, run, setUp } from './setup.mjs';

setUp();
run(process.execPath, ['build/bundle.mjs']);

const setting = {
  folder: join(root, 'samples'),
  file: join(root, 'samples/bram/2026-05-09-seven-iron.swing.yaml'),
  extension: root,
  size: { width: 1360, height: 1160 },
  scale: 1.5,
};
await withVSCode(setting, async (_page, tools) => {
  await tools.waitForHints(1);
  for (const theme of ['light', 'dark']) {
    await tools.theme(theme);
    await tools.goToLine(1);
    await tools.screenshot(join(root, `media/editor-${theme}.png`));
  }
});

const lesson = {
  ...setting,
  file: join(root, 'samples/runa/2026-08-03-six-iron.swing.yaml'),
  size: { width: 1360, height: 1000 },
};
await withVSCode(lesson, async (page, tools) => {
  await tools.waitForHints(1);
  await page.keyboard.press('Control+b');
  await tools.palette('Swingwright: Open the Sheet to the Side');
  await tools.webviewClick('#tab-what-if', 0);
  await tools.webviewClick('.sliders > button', 0);
  for (const slider of ['#slider-0', '#slider-1']) {
    await tools.webviewFocus(slider, 0);
    for (let n = 0; n < 4; n++) await tools.press('ArrowLeft');
  }
  for (const theme of ['light', 'dark']) {
    await tools.theme(theme);
    await tools.screenshot(join(root, `media/sheet-${theme}.png`));
  }
});
