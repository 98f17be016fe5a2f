/**
 * Takes pictures of VS Code with the extension, in the light, the dark and both high-contrast themes.
 *
 * Call: node test/host/screenshots.mjs --folder samples --file samples/x.yaml --out FOLDER
 *         [--extension FOLDER|FILE.vsix] [--themes light,dark] [--scale 2] [--size 1400x900] [--hints 1]
 *         [--hover TEXT] [--problems] [--name NAME] [--script steps.json]
 *   writes NAME-THEME.png for each theme, after at least --hints inlay hints are seen.
 *   A script is a JSON list of acts, each a list of its name and arguments, for example
 *   [["theme", "dark"], ["goToLine", 12], ["hoverText", "attack"], ["screenshot", "hover"]];
 *   the acts are those of test/host/workbench.mjs. Scripts in JavaScript call `withVSCode`, re-exported here.
 */
import * as fs from 'node:fs/promises';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { withVSCode } from './host.mjs';
import { THEME_NAMES } from './workbench.mjs';

export { withVSCode, THEME_NAMES };

const root = fileURLToPath(new URL('../..', import.meta.url));

if (process.argv[1] === fileURLToPath(import.meta.url)) await main();

async function main() {
  const { values } = parseArgs({
    options: {
      folder: { type: 'string', default: path.join(root, 'samples') },
      file: { type: 'string' },
      out: { type: 'string', default: path.join(root, '.cache/screenshots') },
      extension: { type: 'string', default: root },
      themes: { type: 'string', default: THEME_NAMES.join(',') },
      scale: { type: 'string', default: '1' },
      size: { type: 'string', default: '1400x900' },
      hints: { type: 'string', default: '1' },
      hover: { type: 'string' },
      problems: { type: 'boolean', default: false },
      name: { type: 'string' },
      script: { type: 'string' },
    },
  });
  const [width = 1400, height = 900] = values.size.split('x').map(Number);
  const setting = {
    folder: path.resolve(values.folder),
    ...(values.file && { file: path.resolve(values.file) }),
    extension: path.resolve(values.extension),
    size: { width, height },
    scale: Number(values.scale),
    tell: console.log,
  };
  const out = path.resolve(values.out);
  await fs.mkdir(out, { recursive: true });
  const { script } = values;
  await withVSCode(setting, async (_page, tools) => {
    if (script) return runScript(tools, JSON.parse(await fs.readFile(script, 'utf8')), out);
    if (values.file) await tools.waitForHints(Number(values.hints));
    await tools.dismissNotifications();
    if (values.problems) await tools.problems();
    const name = values.name ?? path.basename(values.file ?? values.folder, '.yaml');
    for (const theme of /** @type {import('./workbench.mjs').Theme[]} */ (values.themes.split(','))) {
      await tools.theme(theme);
      if (values.hover) await tools.hoverText(values.hover);
      await tools.screenshot(path.join(out, `${name}-${theme}.png`));
      console.log(path.join(out, `${name}-${theme}.png`));
    }
  });
}

/**
 * @param {import('./workbench.mjs').Tools} tools
 * @param {[string, ...unknown[]][]} steps
 * @param {string} out
 */
async function runScript(tools, steps, out) {
  for (const [name, ...values] of steps) {
    if (name === 'screenshot') {
      const file = path.join(out, `${values[0]}.png`);
      await tools.screenshot(file);
      console.log(file);
      continue;
    }
    const act = Object.hasOwn(tools, name)
      ? /** @type {Record<string, Function>} */ (tools)[name]
      : undefined;
    if (!act) throw new Error(`There is no act ${name}: there are ${Object.keys(tools).join(', ')}.`);
    await act(...values);
  }
}
