/**
 * Opens pages and a sheet, reloads the window of VS Code, and checks that each is there again, the sheet as it was left; then
 * moves that to a window of its own. Tests inside the extension host cannot, since a reload ends them and they see one window only.
 *
 * Call: node test/host/windows.mjs [--web]
 *   --web  the extension runs in the browser's worker instead of in Node
 * Exit code 0 when all is as it should be, else 1. The last line is "N passed, N failed".
 */
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { withVSCode } from './host.mjs';

const root = fileURLToPath(new URL('../..', import.meta.url));
const LIMIT_MS = 60_000;

const { values } = parseArgs({ options: { web: { type: 'boolean', default: false } } });
const setting = {
  folder: path.join(root, 'samples'),
  file: path.join(root, 'samples/runa/2026-08-03-six-iron.swing.yaml'),
  extension: root,
  settings: values.web ? { 'remote.extensionKind': { 'swingwright.swingwright': ['web'] } } : {},
};

const state = `({
  title: document.querySelector('h1')?.textContent,
  tab: document.querySelector('[role=tab][aria-selected=true]')?.id,
  slider: document.querySelector('.slider input')?.value,
  checkpoint: document.querySelector('.steps input:checked')?.value,
  open: document.querySelectorAll('details[open]').length,
  scroll: scrollY,
})`;

const facts = await withVSCode(setting, async (page, tools) => {
  const until = async (/** @type {(seen: any) => boolean} */ isSo) => {
    const end = Date.now() + LIMIT_MS;
    for (;;) {
      const seen = await tools.webviewEvaluate(state, 0).catch(() => undefined);
      if ((seen !== undefined && isSo(seen)) || Date.now() > end) return seen;
      await page.waitForTimeout(100);
    }
  };
  const reload = async () => {
    await page.evaluate((address) => window.history.replaceState(null, '', address), withoutFile(page.url()));
    await Promise.all([page.waitForEvent('load'), tools.palette('Developer: Reload Window')]);
    await page.waitForSelector('.monaco-workbench .part.statusbar');
  };
  await tools.waitForHints(1);
  const heard = [];
  const close = 'View: Close Editor';
  for (const [command, title, end, answer] of [
    ['Swingwright: Show Progress', 'Runa', close],
    ['Swingwright: Audit This Record', 'sound', close],
    ['Swingwright: Show a Handout to the Side', 'Runa', 'View: Close Editors in Other Groups', 'Enter'],
  ]) {
    await tools.palette(command);
    if (answer !== undefined) {
      await page.getByPlaceholder('Who is the handout for?').waitFor();
      await tools.press(answer);
    }
    await until((seen) => seen.title?.includes(title) === true);
    await reload();
    const seen = await until((now) => now.title?.includes(title) === true);
    heard.push([`the page of "${command}" is there again`, seen?.title?.includes(title) === true]);
    await tools.palette(end);
  }
  await tools.waitForHints(1);
  await tools.palette('Swingwright: Open the Sheet to the Side');
  await until(({ checkpoint }) => checkpoint === 'address');
  await tools.palette('Swingwright: Show the Next Checkpoint on the Sheet');
  await until(({ checkpoint }) => checkpoint === 'lead_arm_parallel_down');
  await tools.webviewClick('#tab-what-if', 0);
  await until(({ slider }) => slider !== undefined);
  await tools.webviewFocus('.slider input', 0);
  await tools.press('ArrowLeft');
  const before = await until(({ slider }) => slider === '48');
  await reload();
  const after = await until(({ slider }) => slider === '48');
  await tools.webviewClick('#tab-swing', 0);
  const swing = await until(({ checkpoint }) => checkpoint !== undefined);
  await tools.webviewClick('summary', 0);
  await tools.webviewEvaluate('scrollTo(0, 700)', 0);
  await until(({ open, scroll }) => open === 1 && scroll === 700);
  await reload();
  const down = await until(({ open, scroll }) => open === 1 && scroll === 700);
  await tools.webviewEvaluate('scrollTo(0, 0)', 0);
  await tools.webviewClick('#tab-what-if', 0);
  await until(({ slider }) => slider !== undefined);
  const top = await until(({ scroll }) => scroll === 0);
  const opened = page.context().waitForEvent('page', { timeout: LIMIT_MS });
  await tools.palette('View: Move Editor into New Window');
  const heading = (await opened)
    .frameLocator('iframe.webview.ready')
    .frameLocator('#active-frame')
    .locator('h1');
  const moved = await heading.textContent({ timeout: LIMIT_MS }).catch(() => undefined);
  return [
    ...heard,
    ['the sheet was there', before?.title === 'Runa, six iron, 2026-08-03'],
    ['the sheet is there again', after?.title === before?.title],
    ['on the same tab', after?.tab === 'tab-what-if'],
    ['with the quantity where it was moved to', after?.slider === '48'],
    ['at the same checkpoint', swing?.checkpoint === 'lead_arm_parallel_down'],
    ['as far down as it was', down?.scroll === 700],
    ['with the findings open', down?.open === 1],
    ['another tab is not scrolled', top?.scroll === 0],
    ['the sheet is in a window of its own', moved === before?.title],
  ];
});
/** A window that is told which file to open opens that alone, and not what was open before. */
function withoutFile(/** @type {string} */ address) {
  const url = new URL(address);
  const payload = JSON.parse(url.searchParams.get('payload') ?? '[]');
  const kept = payload.filter((/** @type {[string, string]} */ [name]) => name !== 'openFile');
  url.searchParams.set('payload', JSON.stringify(kept));
  return url.toString();
}

for (const [fact, holds] of facts) console.log(`${holds ? '✔' : '✘'} ${fact}`);
const failed = facts.filter(([, holds]) => !holds).length;
console.log(`${facts.length - failed} passed, ${failed} failed`);
process.exitCode = failed === 0 ? 0 : 1;
