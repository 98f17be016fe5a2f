/**
 * Installs a packaged extension into a fresh profile of VS Code, opens a sample with it, and checks that the extension is
 * there, is activated and annotates the sample as a reader sees it.
 *
 * Call: node test/host/vsix.mjs FILE.vsix --file SAMPLE [--folder FOLDER] [--hints 1] [--problems 1] [--text TEXT]…
 *         [--screenshot FILE.png] [--web]
 *   --hints, --problems  at least so many inlay hints and findings are seen
 *   --text               this is seen in a hint or a finding; may be given several times
 *   --web                the extension runs in the browser's worker instead of in Node
 * Exit code 0 when all is as it should be, else 1. The last line is "N passed, N failed".
 */
import * as fs from 'node:fs/promises';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { withVSCode } from './host.mjs';
import { loadZip } from './packages.mjs';
import { runServerCommand } from './server.mjs';

/**
 * @typedef {object} Expectation
 * @property {string} vsix the packaged extension
 * @property {string} folder the folder to open
 * @property {string} file the sample in it
 * @property {number} hints at least so many inlay hints are seen
 * @property {number} problems at least so many findings are seen
 * @property {string[]} texts each is seen in a hint or a finding
 * @property {'node' | 'web'} where the extension runs
 * @property {string} [screenshot] where to write a picture
 * @property {(line: string) => void} [tell]
 */

/** @typedef {{ fact: string, holds: boolean, seen: string }} Check one thing that was looked at */

/**
 * @param {Expectation} expected
 * @returns {Promise<Check[]>}
 */
export async function checkPackage(expected) {
  const { identity, displayName, missing } = await readPackage(expected.vsix);
  const setting = {
    folder: expected.folder,
    file: expected.file,
    extension: expected.vsix,
    settings: expected.where === 'web' ? { 'remote.extensionKind': { [identity]: ['web'] } } : {},
    // High enough for the whole list of running extensions.
    size: { width: 1400, height: expected.where === 'web' ? 1500 : 900 },
    ...(expected.tell && { tell: expected.tell }),
  };
  return withVSCode(setting, async (_page, tools, { host, profile }) => {
    const listed = await runServerCommand(host, profile, ['--list-extensions', '--show-versions']);
    // A missing hint is reported below, with what is seen instead.
    await tools.waitForHints(expected.hints).catch(() => {});
    const hints = await tools.hints();
    const problems = expected.problems > 0 ? (await tools.problems()).slice(1) : [];
    if (expected.screenshot) await tools.screenshot(expected.screenshot);
    const activated =
      expected.where === 'web'
        ? await readWorkerActivations(tools)
        : await readNodeActivations(profile.userData);
    const name = expected.where === 'web' ? displayName : identity;
    const seen = [...hints, ...problems];
    return [
      {
        fact: `${identity} is installed`,
        holds: listed.includes(`${identity}@`),
        seen: listed.trim(),
      },
      {
        fact: 'what its README shows and leads to is in it',
        holds: missing.length === 0,
        seen: `not there: ${missing.join(', ')}`,
      },
      {
        fact: `it is activated in ${expected.where}`,
        holds: activated.some((line) => line.includes(name)),
        seen: activated.join(' | '),
      },
      {
        fact: `at least ${expected.hints} inlay hints are seen`,
        holds: hints.length >= expected.hints,
        seen: hints.join(' | '),
      },
      {
        fact: `at least ${expected.problems} findings are seen`,
        holds: problems.length >= expected.problems,
        seen: problems.join(' | '),
      },
      ...expected.texts.map((text) => ({
        fact: `\`${text}\` is seen`,
        holds: seen.some((line) => line.includes(text)),
        seen: seen.join(' | '),
      })),
    ];
  });
}

/** The lines with which the Node host's log names each extension that it activates. */
async function readNodeActivations(/** @type {string} */ userData) {
  const logs = path.join(userData, 'logs');
  const files = (await fs.readdir(logs, { recursive: true })).filter((name) =>
    name.endsWith('remoteexthost.log'),
  );
  const texts = await Promise.all(files.map((name) => fs.readFile(path.join(logs, name), 'utf8')));
  const lines = texts.join('\n').split('\n');
  return lines.filter((line) => line.includes('_doActivateExtension'));
}

/** The extensions that VS Code lists as running in the web worker; the worker's own log stays in the browser. */
async function readWorkerActivations(/** @type {import('./workbench.mjs').Tools} */ tools) {
  const row = '.runtime-extensions-editor .monaco-list-row';
  await tools.palette('Developer: Show Running Extensions');
  // The list fills itself while it is looked at; when nothing runs in the worker, none such ever comes.
  await tools.waitFor(`${row}:has-text("web worker")`).catch(() => {});
  return (await tools.texts(row))
    .map((text) => text.replaceAll('\n', ' '))
    .filter((text) => /web worker/.test(text));
}

/** A `.vsix` is a zip archive with the extension's files in extension/; `missing` are those that its README names and it lacks. */
async function readPackage(/** @type {string} */ vsix) {
  const zip = await loadZip();
  const archive = await zip.loadAsync(await fs.readFile(vsix));
  const names = Object.keys(archive.files).map((name) => name.toLowerCase());
  const text = (/** @type {string} */ name) =>
    archive.filter((at) => at.toLowerCase() === `extension/${name}`)[0]?.async('string');
  const manifest = await text('package.json');
  if (!manifest) throw new Error(`${vsix} holds no extension.`);
  const readme = (await text('readme.md')) ?? '';
  const named = [...readme.matchAll(/(?:\]\(|src="|srcset=")(?!https?:|#)([^)#"\s]+)/g)].map(
    ([, at = '']) => at,
  );
  const isThere = (/** @type {string} */ at) =>
    names.some((name) => `${name}/`.startsWith(`extension/${at.toLowerCase()}/`));
  const { publisher, name, displayName } = JSON.parse(manifest);
  return {
    identity: `${publisher}.${name}`,
    displayName: String(displayName ?? name),
    missing: readme === '' ? ['README.md'] : named.filter((at) => !isThere(at)),
  };
}

if (process.argv[1] === fileURLToPath(import.meta.url)) process.exitCode = await main();

async function main() {
  const { values, positionals } = parseArgs({
    allowPositionals: true,
    options: {
      file: { type: 'string' },
      folder: { type: 'string' },
      hints: { type: 'string', default: '1' },
      problems: { type: 'string', default: '1' },
      text: { type: 'string', multiple: true, default: [] },
      screenshot: { type: 'string' },
      web: { type: 'boolean', default: false },
    },
  });
  const [vsix] = positionals;
  if (!vsix || !values.file) {
    console.error('Call: node test/host/vsix.mjs FILE.vsix --file SAMPLE');
    return 1;
  }
  const file = path.resolve(values.file);
  const checks = await checkPackage({
    vsix: path.resolve(vsix),
    file,
    folder: path.resolve(values.folder ?? path.dirname(file)),
    hints: Number(values.hints),
    problems: Number(values.problems),
    texts: values.text,
    where: values.web ? 'web' : 'node',
    ...(values.screenshot && { screenshot: path.resolve(values.screenshot) }),
    tell: console.log,
  });
  for (const check of checks)
    console.log(check.holds ? `  ✔ ${check.fact}` : `  ✘ ${check.fact}; seen: ${check.seen}`);
  const failed = checks.filter((check) => !check.holds).length;
  console.log(`${checks.length - failed} passed, ${failed} failed`);
  return failed ? 1 : 0;
}
