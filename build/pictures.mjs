// Takes the pictures of the README and of the walkthrough from a real VS Code with this folder's extension: `node build/pictures.mjs`.
import { join } from 'node:path';
import { withVSCode } from '../test/host/host.mjs';
import { root, run, setUp } from './setup.mjs';

setUp();
run(process.execPath, ['build/bundle.mjs']);

const record = join(root, 'samples/bram/2026-05-09-seven-iron.swing.yaml');
const setting = { folder: join(root, 'samples'), file: record, extension: root };
const themes = /** @type {const} */ (['light', 'dark']);

await withVSCode({ ...setting, size: { width: 1360, height: 1160 }, scale: 1.5 }, async (_page, tools) => {
  await tools.waitForHints(1);
  for (const theme of themes) {
    await tools.theme(theme);
    await tools.goToLine(1);
    await tools.screenshot(join(root, `media/editor-${theme}.png`));
  }
});

// The walkthrough's: small enough to be read beside its words, each of one part of the window.
await withVSCode({ ...setting, size: { width: 980, height: 620 }, scale: 1 }, async (page, tools) => {
  const part = async (/** @type {string} */ name, /** @type {string} */ selector) => {
    await tools.settle();
    const file = join(root, `media/walkthrough/${name}.png`);
    await page.locator(selector).first().screenshot({ path: file, animations: 'disabled', caret: 'hide' });
  };
  await tools.waitForHints(1);
  await page.locator('.pane-header[aria-label^="Lessons"]').click();
  const rows = page.locator('.pane:has(.pane-header[aria-label^="Lessons"]) .monaco-list-row');
  await rows.first().click();
  await rows.nth(3).waitFor();
  for (const theme of themes) {
    await tools.theme(theme);
    await part(`lessons-${theme}`, '.part.sidebar');
  }
  await tools.palette('View: Toggle Primary Side Bar Visibility');
  for (const theme of themes) {
    await tools.theme(theme);
    await tools.goToLine(31);
    await part(`record-${theme}`, '.part.editor');
    await tools.hoverText('face:');
    await part(`why-${theme}`, '.part.editor');
    await tools.press('Escape');
  }
  await tools.problems();
  for (const theme of themes) {
    await tools.theme(theme);
    await part(`findings-${theme}`, '.part.panel');
  }
});
