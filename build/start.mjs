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
import { parseArgs } from 'node:util';
import { findDesktop, hasDisplay } from '../test/host/desktop.mjs';
import { installNpmHost } from '../test/host/install.mjs';
import { createProfile } from '../test/host/profile.mjs';
import { pageAddress, startServer } from '../test/host/server.mjs';
import { endOnSignals } from '../test/host/signals.mjs';
import { root, run, setUp } from './setup.mjs';

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: { port: { type: 'string', default: '0' }, browser: { type: 'boolean', default: false } },
});
const folder = path.resolve(positionals[0] ?? path.join(root, 'samples'));

const file = await findRecord();

setUp();
run(process.execPath, ['build/bundle.mjs']);

const desktop = !values.browser && hasDisplay() ? await findDesktop() : undefined;
if (desktop) openDesktop(desktop.executable);
else await serve();

/** The first record in the folder, so that there is something to read at once. */
async function findRecord() {
  const names = (await fs.readdir(folder, { recursive: true })).filter((name) =>
    name.endsWith('.swing.yaml'),
  );
  const [first] = names.sort();
  return first && path.join(folder, first);
}

/** Opens a window of its own, which stays when this process ends. */
function openDesktop(/** @type {string} */ executable) {
  console.log(`Opening ${folder} in ${executable}`);
  spawn(executable, [`--extensionDevelopmentPath=${root}`, '--new-window', folder, ...(file ? [file] : [])], {
    detached: true,
    stdio: 'ignore',
  }).unref();
}

/** npm passes no signal on when it is ended by its process id; its going is all that can be seen of it. */
function endWithParent(/** @type {() => Promise<unknown>} */ stop) {
  const parent = process.ppid;
  const watch = setInterval(() => {
    if (process.ppid === parent) return;
    clearInterval(watch);
    void stop().then(() => process.exit(143));
  }, 1000);
  watch.unref();
}

async function serve() {
  const host = await installNpmHost(console.log);
  const settings = { 'window.autoDetectColorScheme': true };
  const profile = await createProfile({ extensionFolder: root, settings });
  const port = Number(values.port);
  const server = await startServer({ host, profile, conduct: 'ordinary', port, tell: console.error });
  endOnSignals(server.stop);
  endWithParent(server.stop);
  console.log(`
VS Code ${host.version} with this folder's extension is at

  ${pageAddress(server, { folder, ...(file && { file }) })}

Open it in a browser. After a build, "Developer: Reload Window" shows the change. Ctrl-C ends it.
This address opens a record, and a reload of it begins with that record again. To see what a reload keeps, such as a sheet, go on with

  ${pageAddress(server, { folder })}
`);
  await server.ended;
  // Only a server that ended by itself comes here before the process is gone.
  await server.stop();
  console.error("VS Code's server has ended.");
  process.exitCode = 70;
}
