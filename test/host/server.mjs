/**
 * Starts and ends VS Code's server build, and gives the addresses of its pages. Tests, screenshots and `npm start` share
 * it; it needs no package.
 */
import { spawn } from 'node:child_process';
import { randomBytes } from 'node:crypto';
import * as fs from 'node:fs/promises';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { isNoise } from './noise.mjs';

const GUARD = fileURLToPath(new URL('server-guard.cjs', import.meta.url));
const START_LIMIT_MS = 60_000;
const STOP_LIMIT_MS = 5_000;

/**
 * @typedef {object} Server a running server.
 * @property {number} port on 127.0.0.1
 * @property {string} token what a page must know to be let in
 * @property {number} pid the leader of the server's process group
 * @property {() => boolean} isRunning
 * @property {Promise<void>} ended settles when the server has ended, for whatever reason
 * @property {() => Promise<void>} stop ends the whole process group and removes the profile; safe to call twice
 */

/**
 * @typedef {object} ServerOptions
 * @property {import('./install.mjs').NpmHost} host
 * @property {import('./profile.mjs').Profile} profile
 * @property {'automated' | 'ordinary'} conduct an automated server takes the extension under test from the page's
 *   address and shows no notification toasts
 * @property {Record<string, string | undefined>} [environment] added to the extension host's environment
 * @property {string[]} [removable] more temporary folders that go when the server ends
 * @property {number} [port] 0, the default, lets the system choose
 * @property {(line: string) => void} [tell] told what the server prints, less the noise
 */

/**
 * @param {ServerOptions} options
 * @returns {Promise<Server>}
 */
export async function startServer(options) {
  const { host, profile } = options;
  // Keeps other users of this machine, and pages of other sites, out of the server.
  const token = randomBytes(16).toString('hex');
  const tokenFile = path.join(profile.folder, 'token');
  await fs.writeFile(tokenFile, token, { mode: 0o600 });
  const flags = [
    `--require=${GUARD}`,
    host.main,
    '--host=127.0.0.1',
    `--port=${options.port ?? 0}`,
    `--connection-token-file=${tokenFile}`,
    '--accept-server-license-terms',
    '--telemetry-level=off',
    '--disable-workspace-trust',
    ...profileFlags(profile),
    ...(options.conduct === 'automated' ? ['--enable-smoke-test-driver'] : []),
  ];
  const child = spawn(host.node, flags, {
    cwd: profile.folder,
    detached: true,
    stdio: ['pipe', 'pipe', 'pipe'],
    env: {
      ...serverEnvironment(),
      ...(await ownTemporaryFolder(profile)),
      ...options.environment,
      SWINGWRIGHT_HOST_GUARD: 'on',
      SWINGWRIGHT_HOST_REMOVE: [profile.folder, ...(options.removable ?? [])].join(path.delimiter),
    },
  });
  /** @type {Promise<void>} */
  const ended = new Promise((resolve) => {
    child.once('exit', () => resolve());
    child.once('error', () => resolve());
  });
  child.stdin.on('error', () => {});

  let stopping = false;
  const stop = async () => {
    stopping = true;
    child.stdin.end();
    await Promise.race([ended, wait(STOP_LIMIT_MS)]);
    endGroup(child.pid);
    await fs.rm(profile.folder, { recursive: true, force: true, maxRetries: 5, retryDelay: 100 });
  };
  const tell = (/** @type {string} */ line) => {
    if (!stopping && !isNoise(line)) options.tell?.(line);
  };

  try {
    const port = await readPort(child, ended, tell);
    return {
      port,
      token,
      pid: child.pid ?? 0,
      ended,
      stop,
      isRunning: () => child.exitCode === null && !child.signalCode,
    };
  } catch (error) {
    await stop();
    throw error;
  }
}

/**
 * Runs one of the server's own commands, such as `--install-extension`, and gives what it printed.
 * @param {import('./install.mjs').NpmHost} host
 * @param {import('./profile.mjs').Profile} profile
 * @param {string[]} flags
 * @returns {Promise<string>}
 */
export async function runServerCommand(host, profile, flags) {
  const child = spawn(host.node, [host.main, ...profileFlags(profile), ...flags], {
    stdio: ['ignore', 'pipe', 'pipe'],
    env: serverEnvironment(),
  });
  let output = '';
  child.stdout.on('data', (chunk) => (output += chunk));
  child.stderr.on('data', (chunk) => (output += chunk));
  const code = await new Promise((resolve, reject) => child.once('error', reject).once('close', resolve));
  if (code !== 0) throw new Error(`VS Code's server answered ${flags.join(' ')} with ${code}: ${output}`);
  return output;
}

/**
 * The address of a page of the server.
 * @param {Server} server
 * @param {{ folder: string, file?: string, extensionFolder?: string, testsFile?: string }} open absolute paths; the
 *   last two count only with an automated server
 */
export function pageAddress({ port, token }, open) {
  const remote = (/** @type {string} */ file) => `vscode-remote://127.0.0.1:${port}${encodeURI(file)}`;
  const payload = [
    ['skipWelcome', 'true'],
    ...(open.file ? [['openFile', remote(open.file)]] : []),
    ...(open.extensionFolder ? [['extensionDevelopmentPath', remote(open.extensionFolder)]] : []),
    ...(open.testsFile ? [['extensionTestsPath', remote(open.testsFile)]] : []),
  ];
  const query = new URLSearchParams({ tkn: token, folder: open.folder, payload: JSON.stringify(payload) });
  return `http://127.0.0.1:${port}/?${query}`;
}

function profileFlags(/** @type {import('./profile.mjs').Profile} */ profile) {
  return [
    `--user-data-dir=${profile.userData}`,
    `--server-data-dir=${profile.serverData}`,
    `--extensions-dir=${profile.extensions}`,
  ];
}

/** This process's environment without what an outer VS Code or Node loader would pass on. */
function serverEnvironment() {
  const kept = Object.entries(process.env).filter(
    ([name]) => !/^(VSCODE_|ELECTRON_|NODE_OPTIONS$)/.test(name),
  );
  return { ...Object.fromEntries(kept), EXTENSIONS_GALLERY: '{}' };
}

/**
 * Sockets and other left-overs go where the profile goes. Only on Linux: elsewhere the path gets too long for a socket.
 * @param {import('./profile.mjs').Profile} profile
 */
async function ownTemporaryFolder(profile) {
  if (process.platform !== 'linux') return {};
  const folder = path.join(profile.folder, 'tmp');
  await fs.mkdir(folder, { recursive: true });
  return { TMPDIR: folder, XDG_RUNTIME_DIR: folder };
}

/**
 * @param {import('node:child_process').ChildProcessWithoutNullStreams} child
 * @param {Promise<void>} ended
 * @param {(line: string) => void} tell
 * @returns {Promise<number>}
 */
async function readPort(child, ended, tell) {
  let output = '';
  const port = new Promise((resolve) => {
    const read = (/** @type {Buffer} */ chunk) => {
      const text = chunk.toString();
      text.split('\n').forEach(tell);
      if (output.length < 100_000) output += text;
      const found = /agent listening on (\d+)/.exec(output)?.[1];
      if (found) resolve(Number(found));
    };
    child.stdout.on('data', read);
    child.stderr.on('data', read);
  });
  const failed = Promise.race([ended, wait(START_LIMIT_MS)]).then(() => {
    throw new Error(`VS Code's server did not start: ${output.slice(-2000)}`);
  });
  failed.catch(() => {});
  return Promise.race([port, failed]);
}

function endGroup(/** @type {number | undefined} */ pid) {
  if (!pid) return;
  try {
    process.kill(-pid, 'SIGKILL');
  } catch {
    // The group is gone already.
  }
}

function wait(/** @type {number} */ milliseconds) {
  return new Promise((resolve) => setTimeout(resolve, milliseconds).unref());
}
