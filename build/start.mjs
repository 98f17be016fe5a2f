/**
 * `npm start`: installs what is missing, builds, and opens the samples in VS Code with the extension from this folder.
 * Where there is a desktop VS Code and a display, it opens a window; elsewhere it serves VS Code to an ordinary browser,
 * prints the address, and stays until Ctrl-C.
 *
 * Call: npm start [-- [--port 8765] [--browser] [FOLDER]]
 *   --browser   serves to a browser even where there is a desktop
 */
import { spawn } from 'node:child_process';
import * as fs from 'node:fs/promises';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { findDesktop, hasDisplay } from '../test/host/desktop.mjs';
import { installNpmHost } from '../test/host/install.mjs';
import { createProfile } from '../test/host/profile.mjs';
import { pageAddress, startServer } from '../test/host/server.mjs';
import { endOnSignals } from '../test/host/signals.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));
const OLDEST_NODE = 20;

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: { port: { type: 'string', default: '0' }, browser: { type: 'boolean', default: false } },
});
const folder = path.resolve(positionals[0] ?? path.join(root, 'samples'));

if (Number(process.versions.node.split('.')[0]) < OLDEST_NODE) {
  console.error(`Node ${OLDEST_NODE} or newer is needed; this is ${process.versions.node}.`);
  process.exit(1);
}
if (await isOutOfDate()) await runNpm('ci');
await runNpm('run', 'build');

const desktop = !values.browser && hasDisplay() ? await findDesktop() : undefined;
if (desktop) openDesktop(desktop.executable);
else await serve();

/** Whether the packages are missing or older than the lock file. */
async function isOutOfDate() {
  const installed = await fs.stat(path.join(root, 'node_modules/.package-lock.json')).catch(() => undefined);
  const locked = await fs.stat(path.join(root, 'package-lock.json'));
  return !installed || installed.mtimeMs < locked.mtimeMs;
}

/** Runs npm in this repository and ends with its exit code when it fails. */
async function runNpm(/** @type {string[]} */ ...words) {
  console.log(`npm ${words.join(' ')}`);
  const child = spawn('npm', words, { cwd: root, stdio: 'inherit', shell: process.platform === 'win32' });
  const code = await new Promise((resolve) => child.once('error', () => resolve(1)).once('close', resolve));
  if (code !== 0) process.exit(typeof code === 'number' ? code : 1);
}

/** Opens a window of its own, which stays when this process ends. */
function openDesktop(/** @type {string} */ executable) {
  console.log(`Opening ${folder} in ${executable}`);
  spawn(executable, [`--extensionDevelopmentPath=${root}`, '--new-window', folder], {
    detached: true,
    stdio: 'ignore',
  }).unref();
}

async function serve() {
  const host = await installNpmHost(console.log);
  const settings = { 'window.autoDetectColorScheme': true };
  const profile = await createProfile({ extensionFolder: root, settings });
  const port = Number(values.port);
  const server = await startServer({ host, profile, conduct: 'ordinary', port, tell: console.error });
  endOnSignals(server.stop);
  console.log(`
VS Code ${host.version} with this folder's extension is at

  ${pageAddress(server.port, { folder })}

Open it in a browser. After a build, "Developer: Reload Window" shows the change. Ctrl-C ends it.
`);
  await server.ended;
  // Only a server that ended by itself comes here before the process is gone.
  await server.stop();
  console.error("VS Code's server has ended.");
  process.exitCode = 70;
}
