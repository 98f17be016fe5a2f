/**
 * Acts on a webview of the page: the document inside its two frames, reached from outside, so that the policy of its page
 * stays as strict as it is.
 */
import { loadAxe } from './packages.mjs';

/** @typedef {import('playwright-core').Page} Page */

/** @param {Page} page */
export function webviewTools(page) {
  return {
    /** Everything that the nth open webview shows as text, from 0. */
    webviewText: (/** @type {number} */ index) => within(page, index).locator('body').innerText(),

    /** Clicks on the first thing in a webview that matches a CSS selector. */
    webviewClick: (/** @type {string} */ selector, /** @type {number} */ index) =>
      within(page, index).locator(selector).first().click(),

    /** Puts the keys' focus on the first thing in a webview that matches a CSS selector. */
    webviewFocus: (/** @type {string} */ selector, /** @type {number} */ index) =>
      within(page, index).locator(selector).first().focus(),

    /** The value of an expression in a webview's own page. */
    webviewEvaluate: async (/** @type {string} */ expression, /** @type {number} */ index) =>
      (await frameOf(page, index)).evaluate(expression),

    /** What axe finds wrong in a webview: each rule with the things that break it. */
    webviewFaults: async (/** @type {number} */ index) => faults(await frameOf(page, index)),

    /** What axe finds wrong in a page that is given as HTML, in the colours that its reader prefers. */
    pageFaults: (/** @type {string} */ html, /** @type {'light' | 'dark'} */ colorScheme) =>
      copyFaults(page, html, colorScheme),

    /** On how many sheets of A4 a page that is given as HTML is printed. */
    printedSheets: async (/** @type {string} */ html) => {
      const other = await page.context().newPage();
      try {
        await other.setContent(html);
        const pdf = await other.pdf({ format: 'A4', preferCSSPageSize: true });
        return pdf.toString('latin1').match(/\/Type\s*\/Page\b(?!s)/g)?.length ?? 0;
      } finally {
        await other.close();
      }
    },

    /** What axe finds wrong in a copy of what a webview shows, in the theme's own colours. A panel without scripts keeps axe out. */
    webviewCopyFaults: async (/** @type {number} */ index) =>
      copyFaults(page, await (await frameOf(page, index)).content(), 'light'),
  };
}

function within(/** @type {Page} */ page, index = 0) {
  return page.frameLocator('iframe.webview.ready').nth(index).frameLocator('#active-frame');
}

async function frameOf(/** @type {Page} */ page, index = 0) {
  const element = await within(page, index).locator('html').elementHandle();
  const frame = await element?.ownerFrame();
  if (!frame) throw new Error('The webview has no page.');
  return frame;
}

async function copyFaults(
  /** @type {Page} */ page,
  /** @type {string} */ html,
  /** @type {'light' | 'dark'} */ colorScheme,
) {
  const other = await page.context().newPage();
  try {
    await other.emulateMedia({ colorScheme });
    await other.setContent(html);
    return await faults(other.mainFrame());
  } finally {
    await other.close();
  }
}

async function faults(/** @type {import('playwright-core').Frame} */ frame) {
  await frame.evaluate(await loadAxe());
  return frame.evaluate(
    'axe.run(document, { resultTypes: ["violations"] }).then(({ violations }) => violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(" | ")}`))',
  );
}
