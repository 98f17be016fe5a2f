#!/usr/bin/env node
/**
 * Takes the arguments of the desktop's program and runs them on VS Code's server build with a headless Chromium. It is
 * what `runTests({ vscodeExecutablePath })` of @vscode/test-electron starts where there is no desktop.
 *
 * Call: vscode-like.mjs [--extensionDevelopmentPath=… --extensionTestsPath=…] [--user-data-dir=…] [--extensions-dir=…]
 *       [--install-extension=file.vsix] [folder] [file]
 * The folders in SWINGWRIGHT_HOST_REMOVABLE are removed at the end, even when this process is killed.
 * Without tests it stays until it is interrupted. Exit codes: 0 passed, 1 failed, 70 server or browser lost,
 * 124 out of time (SWINGWRIGHT_HOST_LIMIT, seconds; 1500), 129, 130 or 143 ended by a signal. A test run also ends, with
 * 143, when the process that started it is gone.
 */
import * as fs from 'node:fs/promises';
import path from 'node:path';
import { parseArgs } from 'node:util';
import { findChromium } from './chromium.mjs';
import { endOnSignals } from './signals.mjs';
import { installNpmHost } from './install.mjs';
import { isNoise } from './noise.mjs';
import { addCalmSettings, createProfile } from './profile.mjs';
import { pageAddress, runServerCommand, startServer } from './server.mjs';
import { STAGE_VARIABLE, startStage } from './stage.mjs';
import { openWorkbench } from './workbench.mjs';

const PASSED = 0;
const FAILED = 1;
const LOST = 70;
const OUT_OF_TIME = 124;
const PARENT_GONE = 143;

const { values, positionals } = parseArgs({
  allowPositionals: true,
  // The desktop has many more options; those that mean nothing here are passed over.
  strict: false,
  options: {
    extensionDevelopmentPath: { type: 'string' },
    extensionTestsPath: { type: 'string' },
    'user-data-dir': { type: 'string' },
    'extensions-dir': { type: 'string' },
    'install-extension': { type: 'string' },
  },
});

process.exit(await main());

async function main() {
  const limit = Number(process.env.SWINGWRIGHT_HOST_LIMIT || 1500) * 1000;
  const host = await installNpmHost(console.log);
  const chromium = await findChromium(console.log);
  const profile = await createDesktopProfile();
  const vsix = readOption('install-extension');
  if (vsix) console.log((await runServerCommand(host, profile, ['--install-extension', vsix])).trim());

  const stage = await startStage(path.resolve(process.env.SWINGWRIGHT_SCREENSHOTS || '.cache/screenshots'));
  const server = await startServer({
    host,
    profile,
    conduct: 'automated',
    removable: (process.env.SWINGWRIGHT_HOST_REMOVABLE ?? '').split(path.delimiter).filter(Boolean),
    environment: { [STAGE_VARIABLE]: stage.address },
    tell: console.error,
  });
  /** @type {import('./workbench.mjs').Workbench | undefined} */
  let workbench;
  const end = async () => {
    stage.close();
    await Promise.all([server.stop(), workbench?.close().catch(() => {})]);
  };
  const release = endOnSignals(end);
  try {
    /** @type {Promise<number>} */
    const finished = new Promise((resolve) => {
      void server.ended.then(() => resolve(LOST));
      if (readOption('extensionTestsPath')) {
        setTimeout(() => resolve(OUT_OF_TIME), limit).unref();
        const parent = process.ppid;
        setInterval(() => process.ppid !== parent && resolve(PARENT_GONE), 1000).unref();
      }
      const exit = (/** @type {number} */ code) => resolve(code === 0 ? PASSED : FAILED);
      openPage(server, chromium, profile, exit).then(
        (opened) => {
          workbench = opened;
          stage.open(opened.tools);
          void opened.ended.then(() => resolve(LOST));
        },
        (error) => {
          console.error(`The page did not open: ${error.message}`);
          resolve(LOST);
        },
      );
    });
    const code = await finished;
    if (code === LOST) console.error('The server or the browser ended before the tests did.');
    if (code === OUT_OF_TIME) console.error(`The tests took longer than ${limit / 1000} s.`);
    return code;
  } finally {
    release();
    await end();
  }
}

/**
 * @param {import('./server.mjs').Server} server
 * @param {string} chromium
 * @param {import('./profile.mjs').Profile} profile
 * @param {(code: number) => void} exit
 */
async function openPage(server, chromium, profile, exit) {
  const { folder, file } = await findWhatToOpen(profile.folder);
  const extensionFolder = readOption('extensionDevelopmentPath');
  const testsFile = readOption('extensionTestsPath');
  const address = pageAddress(server, {
    folder,
    ...(file && { file }),
    ...(extensionFolder && { extensionFolder }),
    ...(testsFile && { testsFile }),
  });
  let finished = false;
  const log = (/** @type {string} */ type, /** @type {unknown[]} */ parts) => {
    // What the page says of its own end means nothing; an empty line is the test report's.
    if (finished || (isNoise(parts.join(' ')) && parts.join('').trim())) return;
    (type === 'error' || type === 'warn' ? console.error : console.log)(...parts);
  };
  const end = (/** @type {number} */ code) => {
    finished = true;
    exit(code);
  };
  return openWorkbench({ address, chromium, profile, exit: end, log });
}

/** The profile's folders are the ones that the arguments name; the rest is temporary. */
async function createDesktopProfile() {
  const profile = await createProfile();
  const userData = readOption('user-data-dir');
  const extensions = readOption('extensions-dir');
  if (userData) await addCalmSettings(userData);
  if (extensions) await fs.mkdir(extensions, { recursive: true });
  return { ...profile, userData: userData ?? profile.userData, extensions: extensions ?? profile.extensions };
}

/** The page needs a folder: an empty one when none was named. */
async function findWhatToOpen(/** @type {string} */ temporary) {
  /** @type {string | undefined} */
  let folder;
  /** @type {string | undefined} */
  let file;
  for (const name of positionals) {
    const found = await fs.stat(name).catch(() => undefined);
    if (found?.isDirectory()) folder ??= path.resolve(name);
    else if (found) file ??= path.resolve(name);
  }
  if (!folder) {
    folder = file ? path.dirname(file) : path.join(temporary, 'empty');
    await fs.mkdir(folder, { recursive: true });
  }
  return { folder, file };
}

/** An option's path, whether the desktop's caller gave it as a path or as a file URI. */
function readOption(/** @type {string} */ name) {
  const value = values[name];
  if (typeof value !== 'string' || !value) return undefined;
  return path.resolve(value.startsWith('file://') ? decodeURI(new URL(value).pathname) : value);
}
