/**
 * Runs one function with a real VS Code at hand: installs what is missing, starts the server and the browser, and ends
 * both on every way out. Screenshot scripts and the check of the packaged extension stand on it.
 */
import { findChromium } from './chromium.mjs';
import { installNpmHost } from './install.mjs';
import { createProfile } from './profile.mjs';
import { pageAddress, runServerCommand, startServer } from './server.mjs';
import { endOnSignals } from './signals.mjs';
import { openWorkbench } from './workbench.mjs';

/**
 * @typedef {object} Setting what VS Code is opened with; paths are absolute.
 * @property {string} folder the folder to open
 * @property {string} [file] a file to open in it
 * @property {string} extension the extension: its folder, or a packaged `.vsix`
 * @property {Record<string, unknown>} [settings] the user's settings, over calm ones
 * @property {{ width: number, height: number }} [size] of the page; 1400 by 900 when not given
 * @property {number} [scale] device pixels for one of the page's; 1 when not given
 * @property {(line: string) => void} [tell] told what is being done and what the server prints
 */

/**
 * Opens VS Code, waits for the file when one is named, calls `act`, and ends everything.
 * @template T
 * @param {Setting} setting
 * @param {(page: import('playwright-core').Page, tools: import('./workbench.mjs').Tools, run: { profile:
 *   import('./profile.mjs').Profile, host: import('./install.mjs').NpmHost }) => Promise<T>} act
 * @returns {Promise<T>} what `act` gave
 */
export async function withVSCode(setting, act) {
  const tell = setting.tell ?? (() => {});
  const host = await installNpmHost(tell);
  const chromium = await findChromium(tell);
  const packaged = setting.extension.endsWith('.vsix');
  const profile = await createProfile({
    ...(setting.settings && { settings: setting.settings }),
    ...(!packaged && { extensionFolder: setting.extension }),
  });
  if (packaged) await runServerCommand(host, profile, ['--install-extension', setting.extension]);

  const server = await startServer({ host, profile, conduct: 'ordinary', tell });
  /** @type {import('./workbench.mjs').Workbench | undefined} */
  let workbench;
  const end = async () => {
    await Promise.all([server.stop(), workbench?.close().catch(() => {})]);
  };
  const release = endOnSignals(end);
  try {
    workbench = await openWorkbench({
      address: pageAddress(server, setting),
      chromium,
      profile,
      ...(setting.size && { size: setting.size }),
      ...(setting.scale && { scale: setting.scale }),
    });
    if (setting.file) await workbench.tools.waitFor('.monaco-editor .view-line');
    return await act(workbench.page, workbench.tools, { profile, host });
  } finally {
    release();
    await end();
  }
}
