/**
 * Opens a page of VS Code's server in a headless Chromium and gives the acts that tests and screenshots need on it.
 * The only module that uses Playwright; knows nothing of tests or of the extension under test.
 */
import path from 'node:path';
import { CHROMIUM_FLAGS, writeFontSettings } from './chromium.mjs';
import { loadPlaywright } from './packages.mjs';
import { changeSettings } from './profile.mjs';
import { webviewTools } from './webview.mjs';
import { hoverText, readHints, textPoint } from './editor-text.mjs';

const WORKBENCH_LIMIT_MS = 60_000;
const ACT_LIMIT_MS = 30_000;
/** A list that is still empty after this time counts as empty. */
const EMPTY_LIST_MS = 4_000;

/** @typedef {'light' | 'dark' | 'high-contrast-dark' | 'high-contrast-light'} Theme */

/** The theme's setting, and the class that the workbench wears when the theme is on. */
const THEMES = {
  light: { setting: 'Light 2026', mark: 'vs' },
  dark: { setting: 'Dark 2026', mark: 'vs-dark' },
  'high-contrast-dark': { setting: 'Default High Contrast', mark: 'hc-black' },
  'high-contrast-light': { setting: 'Default High Contrast Light', mark: 'hc-light' },
};

export const THEME_NAMES = /** @type {Theme[]} */ (Object.keys(THEMES));

/**
 * @typedef {object} WorkbenchOptions
 * @property {string} address the page
 * @property {string} chromium the browser's executable
 * @property {import('./profile.mjs').Profile} profile the one that the server runs on
 * @property {{ width: number, height: number }} [size] of the page; 1400 by 900 when not given
 * @property {number} [scale] device pixels for one of the page's; 1 when not given
 * @property {(code: number, logs: unknown) => void} [exit] told the exit status of the tests that the page runs
 * @property {(type: string, values: unknown[]) => void} [log] told what the tests print
 */

/**
 * @typedef {object} Workbench
 * @property {import('playwright-core').Page} page
 * @property {Tools} tools
 * @property {Promise<void>} ended settles when the browser or its page has ended, for whatever reason
 * @property {() => Promise<void>} close
 */

/** @typedef {ReturnType<typeof createTools>} Tools what a test or a screenshot script does on the page */

/**
 * @param {WorkbenchOptions} options
 * @returns {Promise<Workbench>}
 */
export async function openWorkbench(options) {
  const { chromium } = await loadPlaywright();
  const context = await chromium.launchPersistentContext(path.join(options.profile.folder, 'browser'), {
    executablePath: options.chromium,
    args: CHROMIUM_FLAGS,
    env: { ...process.env, ...(await writeFontSettings(options.profile.folder)) },
    viewport: options.size ?? { width: 1400, height: 900 },
    deviceScaleFactor: options.scale ?? 1,
    headless: true,
    handleSIGINT: false,
    handleSIGTERM: false,
    handleSIGHUP: false,
  });
  try {
    const page = context.pages()[0] ?? (await context.newPage());
    page.setDefaultTimeout(ACT_LIMIT_MS);
    /** @type {Promise<void>} */
    const ended = new Promise((resolve) => {
      context.once('close', () => resolve());
      page.once('crash', () => resolve());
    });
    if (options.exit) await page.exposeFunction('codeAutomationExit', options.exit);
    if (options.log) await page.exposeFunction('codeAutomationLog', options.log);
    await page.goto(options.address, { waitUntil: 'domcontentloaded', timeout: WORKBENCH_LIMIT_MS });
    await page.waitForSelector('.monaco-workbench .part.statusbar', { timeout: WORKBENCH_LIMIT_MS });
    return { page, tools: createTools(page, options.profile), ended, close: () => context.close() };
  } catch (error) {
    await context.close();
    throw error;
  }
}

/**
 * @param {import('playwright-core').Page} page
 * @param {import('./profile.mjs').Profile} profile
 */
function createTools(page, profile) {
  const tools = {
    ...webviewTools(page),

    /** Presses a key such as `Control+Shift+M`. */
    press: (/** @type {string} */ key) => page.keyboard.press(key),

    /** Types at the cursor, at a speed that suggestions keep up with. */
    type: (/** @type {string} */ text) => page.keyboard.type(text, { delay: 15 }),

    click: (/** @type {string} */ selector) => page.locator(selector).first().click(),

    hover: (/** @type {string} */ selector) => page.locator(selector).first().hover(),

    /** Waits until something matches the selector and is seen. */
    waitFor: (/** @type {string} */ selector) => page.locator(selector).first().waitFor({ state: 'visible' }),

    /** The text of everything that matches the selector now. */
    texts: async (/** @type {string} */ selector) =>
      (await page.locator(selector).allInnerTexts()).map((text) => text.replaceAll('\u00a0', ' ')),

    /** The value of an expression in the page. */
    evaluate: (/** @type {string} */ expression) => page.evaluate(expression),

    /** Runs the command with this title from the command palette. */
    palette: async (/** @type {string} */ title) => {
      const row = page.locator('.quick-input-list .monaco-list-row', { hasText: title }).first();
      // What can be run is settled as the list opens: it is opened again where an editor was still on its way to the front.
      for (let left = 4; ; left--) {
        await page.keyboard.press('F1');
        await page.locator('.quick-input-widget input.input').fill(`>${title}`);
        const isThere = row.waitFor({ timeout: 5000 }).then(
          () => true,
          () => false,
        );
        if (left === 0 || (await isThere)) break;
        await page.keyboard.press('Escape');
      }
      await row.click();
      await page
        .locator('.quick-input-widget input.input')
        .waitFor({ state: 'hidden' })
        .catch(() => {});
    },

    /** Puts the cursor at a line of the open file, and the line in the middle. */
    goToLine: async (/** @type {number} */ line) => {
      await page.locator('.monaco-editor .view-lines').first().click();
      await page.keyboard.press('Control+g');
      await page.locator('.quick-input-widget input.input').fill(`:${line}`);
      await page.keyboard.press('Enter');
      await page.locator('.quick-input-widget').waitFor({ state: 'hidden' });
    },

    /** Rests the mouse on a text that is seen in an editor and waits for the hover; gives the hover's text. */
    hoverText: (/** @type {string} */ text) => hoverText(page, text),

    /** Clicks on a text that is seen in an editor. */
    clickText: async (/** @type {string} */ text) => {
      const point = await textPoint(page, text);
      await page.mouse.click(point.x, point.y);
    },

    /** The inlay hints that are seen, from the top. */
    hints: () => readHints(page),

    /** Waits until at least this many inlay hints are seen. */
    waitForHints: async (/** @type {number} */ atLeast) => {
      const limit = Date.now() + ACT_LIMIT_MS;
      while ((await readHints(page)).length < atLeast) {
        if (Date.now() > limit)
          throw new Error(`Fewer than ${atLeast} inlay hints after ${ACT_LIMIT_MS / 1000} s.`);
        await page.waitForTimeout(100);
      }
    },

    /** Opens the Problems panel and gives its rows. */
    problems: async () => {
      const rows = page.locator('.markers-panel .monaco-list-row');
      if (!(await page.locator('.markers-panel').isVisible()))
        await tools.palette('Problems: Focus on Problems View');
      await rows
        .first()
        .waitFor({ state: 'visible', timeout: EMPTY_LIST_MS })
        .catch(() => {});
      return tools.texts('.markers-panel .monaco-list-row');
    },

    /** Closes the notifications that stand in the corner. */
    dismissNotifications: () => tools.palette('Notifications: Clear All Notifications'),

    /** Changes settings, but for those of the scope "application". */
    settings: (/** @type {Record<string, unknown>} */ settings) => changeSettings(profile.userData, settings),

    /** Whether the system sets all colours, as it does for those who need strong contrasts. */
    forcedColours: (/** @type {boolean} */ isOn) =>
      page.emulateMedia({ forcedColors: isOn ? 'active' : 'none' }),
    /** Sets a theme and waits until the workbench wears it. */
    theme: async (/** @type {Theme} */ name) => {
      const theme = THEMES[name];
      if (!theme) throw new Error(`No theme ${name}: there are ${THEME_NAMES.join(', ')}.`);
      await changeSettings(profile.userData, { 'workbench.colorTheme': theme.setting });
      await page.waitForSelector(`.monaco-workbench.${theme.mark}`);
      await tools.settle();
    },

    /** Waits until the picture stands still: two looks in a row show the same page. */
    settle: async () => {
      const look = () => page.evaluate('document.querySelector(".monaco-workbench").innerText');
      for (let seen = await look(), same = 0, looks = 0; same < 2 && looks < 20; looks++) {
        await page.waitForTimeout(200);
        const now = await look();
        same = now === seen ? same + 1 : 0;
        seen = now;
      }
    },

    /** Writes the page as a PNG. */
    screenshot: async (/** @type {string} */ file) => {
      await tools.settle();
      await page.screenshot({ path: file, animations: 'disabled', caret: 'initial' });
    },
  };
  return tools;
}
