/**
 * Runs test/host/suite/*.test.ts inside a real VS Code: a desktop one where there is one and a display, else the
 * server build from npm.
 *
 * Call: node test/host/run.mjs [--grep TEXT] [--extension FOLDER|FILE.vsix] [--folder FOLDER] [--host npm|desktop] [--web]
 *   --extension  the extension under test; this repository's folder (built before) when not given
 *   --folder     a copy of it is opened; samples/ when not given
 *   --web        the extension runs in the browser's worker instead of in Node; only with the build from npm
 * The last line is "N passed, N failed", with how many were skipped or tried again. Exit code 0 when all passed.
 */
import { execFile } from 'node:child_process';
import { existsSync } from 'node:fs';
import * as fs from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs, promisify } from 'node:util';
import { build } from 'esbuild';
import { findDesktop, hasDisplay } from './desktop.mjs';
import { loadTestElectron } from './packages.mjs';
import { endOnSignals } from './signals.mjs';
import { cacheFolder, findNpmHost } from './install.mjs';
import { linkExtension } from './profile.mjs';

const here = path.dirname(fileURLToPath(import.meta.url));
const root = path.resolve(here, '../..');
const DOWNLOAD_SITE = 'https://update.code.visualstudio.com/api/releases/stable';
const DOWNLOAD_ANSWER_MS = 2000;

const { values } = parseArgs({
  options: {
    grep: { type: 'string' },
    extension: { type: 'string', default: root },
    folder: { type: 'string', default: path.join(root, 'samples') },
    host: { type: 'string' },
    web: { type: 'boolean', default: false },
  },
});

const extension = path.resolve(values.extension);
// What VS Code writes is removed with it; the bundle resolves packages from here, and the counts outlive VS Code.
const temporary = await fs.mkdtemp(path.join(os.tmpdir(), 'swingwright-run-'));
await fs.mkdir(path.join(root, '.cache'), { recursive: true });
const bundleFolder = await fs.mkdtemp(path.join(root, '.cache/host-tests-'));
const removeAll = async () => {
  for (const folder of [temporary, bundleFolder])
    await fs.rm(folder, { recursive: true, force: true, maxRetries: 3 });
};
endOnSignals(removeAll);
try {
  process.exitCode = await main();
} finally {
  await removeAll();
}

async function main() {
  const { runTests } = await loadTestElectron();
  const executable = await chooseExecutable();
  const testsFile = path.join(bundleFolder, 'index.cjs');
  await bundleTests(testsFile);
  const results = path.join(bundleFolder, 'results.json');
  const folder = path.join(temporary, 'workspace');
  await fs.cp(path.resolve(values.folder), folder, { recursive: true });

  const profile = [`--user-data-dir=${temporary}/user`, `--extensions-dir=${temporary}/extensions`];
  const packaged = extension.endsWith('.vsix');
  if (packaged) await installPackaged(executable, profile);
  if (values.web) await chooseWorker(path.join(temporary, 'user'), packaged);
  const failure = await runTests({
    vscodeExecutablePath: executable,
    extensionDevelopmentPath: packaged || values.web ? await createEmptyExtension() : extension,
    extensionTestsPath: testsFile,
    launchArgs: [folder, ...profile],
    extensionTestsEnv: {
      SWINGWRIGHT_HOST_REMOVABLE: temporary,
      SWINGWRIGHT_TEST_RESULTS: results,
      SWINGWRIGHT_TEST_ROOT: root,
      SWINGWRIGHT_TEST_GREP: values.grep ?? '',
      SWINGWRIGHT_TEST_WHERE: values.web ? 'worker' : 'node',
      SWINGWRIGHT_TEST_COLOUR: process.stdout.isTTY ? 'on' : 'off',
      SWINGWRIGHT_SCREENSHOTS: process.env.SWINGWRIGHT_SCREENSHOTS ?? path.join(root, '.cache/screenshots'),
    },
  }).then(
    () => undefined,
    (error) => error,
  );
  return report(results, failure);
}

/** The program that runs the tests: a desktop's only where a window can open. */
async function chooseExecutable() {
  const npmBorne = path.join(here, 'vscode-like.mjs');
  if (values.host === 'npm' || values.web) return npmBorne;
  const desktop = hasDisplay() || values.host === 'desktop' ? await findDesktop() : undefined;
  if (desktop) return desktop.executable;
  if (values.host !== 'desktop' && ((await findNpmHost()) || !hasDisplay() || !(await canDownload())))
    return npmBorne;
  const { downloadAndUnzipVSCode } = await loadTestElectron();
  return downloadAndUnzipVSCode({ version: 'stable', cachePath: path.join(cacheFolder(), 'desktop') });
}

async function canDownload() {
  const answer = fetch(DOWNLOAD_SITE, { signal: AbortSignal.timeout(DOWNLOAD_ANSWER_MS) });
  return answer.then((response) => response.ok).catch(() => false);
}

/**
 * Two CommonJS files: the tests, loaded only once mocha's own functions are there, and before them an entry that lets
 * stack traces name the sources.
 */
async function bundleTests(/** @type {string} */ testsFile) {
  const entry = `process.setSourceMapsEnabled(true);\nexports.run = () => require('./tests.cjs').run();\n`;
  await fs.writeFile(testsFile, entry);
  const suite = path.join(here, 'suite');
  const names = (await fs.readdir(suite)).filter((name) => name.endsWith('.test.ts')).sort();
  const loads = names.map((name) => `() => require(${JSON.stringify(`./${name}`)})`);
  await build({
    stdin: {
      contents: `exports.run = () => require('./run-mocha.ts').runMocha([${loads.join(', ')}]);`,
      resolveDir: suite,
    },
    outfile: path.join(path.dirname(testsFile), 'tests.cjs'),
    bundle: true,
    platform: 'node',
    format: 'cjs',
    target: 'node20',
    sourcemap: 'inline',
    external: ['vscode', 'mocha'],
    logLevel: 'warning',
  });
}

async function installPackaged(/** @type {string} */ executable, /** @type {string[]} */ profile) {
  // The npm-borne one installs as it starts; its arguments come with every start.
  if (executable.endsWith('.mjs')) {
    profile.push(`--install-extension=${extension}`);
    return;
  }
  const script = process.platform === 'darwin' ? '../Resources/app/bin/code' : 'bin/code';
  const cli = path.join(path.dirname(executable), process.platform === 'win32' ? `${script}.cmd` : script);
  await promisify(execFile)(cli, [...profile, '--install-extension', extension], {
    shell: process.platform === 'win32',
  });
}

/**
 * Lets the extension under test run in the browser's worker. Its tests stay in Node, with the extension "under
 * development", and see what any user sees; so this one counts as installed.
 */
async function chooseWorker(/** @type {string} */ userData, /** @type {boolean} */ packaged) {
  const manifest = JSON.parse(await fs.readFile(path.join(root, 'package.json'), 'utf8'));
  const settings = { 'remote.extensionKind': { [`${manifest.publisher}.${manifest.name}`]: ['web'] } };
  await fs.mkdir(path.join(userData, 'User'), { recursive: true });
  await fs.writeFile(path.join(userData, 'User', 'settings.json'), JSON.stringify(settings));
  if (packaged) return;
  const extensions = path.join(temporary, 'extensions');
  await fs.mkdir(extensions);
  await linkExtension(extensions, extension);
}

/** Tests need some extension "under development"; beside a packaged one it is this, which holds nothing. */
async function createEmptyExtension() {
  const folder = path.join(temporary, 'empty-extension');
  await fs.mkdir(folder);
  const manifest = {
    name: 'empty',
    publisher: 'swingwright-tests',
    version: '0.0.0',
    engines: { vscode: '*' },
  };
  await fs.writeFile(path.join(folder, 'package.json'), JSON.stringify(manifest));
  return folder;
}

/** @returns {Promise<number>} the exit code */
async function report(/** @type {string} */ results, /** @type {{ code?: number } | undefined} */ failure) {
  if (!existsSync(results)) {
    console.error('The tests did not come to their end.');
    console.log('0 passed, 1 failed');
    return failure?.code || 1;
  }
  const { passed, failed, skipped, retried } = JSON.parse(await fs.readFile(results, 'utf8'));
  const more = `${skipped ? `, ${skipped} skipped` : ''}${retried ? `, ${retried} tried again` : ''}`;
  console.log(`${passed} passed, ${failed} failed${more}`);
  if (passed === 0) return 1;
  return failed ? 1 : (failure?.code ?? (failure ? 1 : 0));
}
