/**
 * Finds texts, inlay hints and hovers in the editors of a page. Knows only how VS Code draws an editor.
 */

const HOVER = '.monaco-hover:not(.hidden) .hover-contents, .monaco-hover:not(.hidden) .monaco-hover-content';

/**
 * The middle of a text that is seen in an editor.
 * @param {import('playwright-core').Page} page
 * @param {string} text on one line, as it is drawn (hints included)
 * @returns {Promise<{ x: number, y: number }>}
 */
export async function textPoint(page, text) {
  const found = await page.waitForFunction(findText, text).catch(() => {
    throw new Error(`\`${text}\` is not seen in an editor.`);
  });
  const point = await found.jsonValue();
  return /** @type {{ x: number, y: number }} */ (point);
}

/**
 * Rests the mouse on a text and waits for the hover.
 * @param {import('playwright-core').Page} page
 * @param {string} text
 * @returns {Promise<string>} what the hover says
 */
export async function hoverText(page, text) {
  const point = await textPoint(page, text);
  // From outside the text, so that the mouse is seen to move on to it.
  await page.mouse.move(point.x + 200, point.y + 200);
  await page.mouse.move(point.x, point.y, { steps: 5 });
  const hover = page.locator(HOVER).first();
  await hover.waitFor({ state: 'visible' }).catch(() => {
    throw new Error(`No hover came on \`${text}\`.`);
  });
  await page.waitForFunction(
    (selector) => !/^Loading/.test(document.querySelector(selector)?.textContent ?? 'Loading'),
    HOVER,
  );
  return (await hover.innerText()).replaceAll('\u00a0', ' ');
}

/**
 * The inlay hints that are seen, from the top.
 * @param {import('playwright-core').Page} page
 * @returns {Promise<string[]>}
 */
export function readHints(page) {
  return page.evaluate(() =>
    [...document.querySelectorAll('.monaco-editor .view-line')]
      .sort((a, b) => a.getBoundingClientRect().top - b.getBoundingClientRect().top)
      .flatMap((line) => [...line.querySelectorAll('span[class*="dyn-rule"]')])
      .map((hint) =>
        (hint.textContent ?? '')
          .replaceAll('\u00a0', ' ')
          .replace(/[\u200b-\u200d\u2060]/g, '')
          .trim(),
      )
      .filter(Boolean),
  );
}

/** Runs in the page. @param {string} text */
function findText(text) {
  for (const line of document.querySelectorAll('.monaco-editor .view-line')) {
    const start = (line.textContent ?? '').replaceAll('\u00a0', ' ').indexOf(text);
    if (start < 0) continue;
    const range = document.createRange();
    const walker = document.createTreeWalker(line, window.NodeFilter.SHOW_TEXT);
    for (let at = 0, node = walker.nextNode(); node; node = walker.nextNode()) {
      const length = node.textContent?.length ?? 0;
      if (at <= start && start < at + length) range.setStart(node, start - at);
      if (at < start + text.length && start + text.length <= at + length)
        range.setEnd(node, start + text.length - at);
      at += length;
    }
    const box = range.getBoundingClientRect();
    if (box.width > 0) return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
  }
  return undefined;
}
