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
