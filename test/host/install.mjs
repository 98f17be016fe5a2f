/**
 * Puts VS Code's own server build (with the Node it wants) from npm into a cache outside this tree, for machines
 * without a desktop VS Code. Built in a temporary folder and renamed, so a broken install is never reused and two
 * installs at once do no harm.
 *
 * Call: node test/host/install.mjs         prints the folder and version; `--force` installs anew.
 */
import { execFile } from 'node:child_process';
import { createHash } from 'node:crypto';
import * as fs from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { writeStandIns } from './stand-ins.mjs';

const run = promisify(execFile);

/** The npm package that carries VS Code's server build in its folder lib/vscode, and the hash of its archive. */
const SERVER_PACKAGE = 'code-server@4.139.1';
const SERVER_SHA512 =
  'fUYvJVdz4ZoVJfakGiGWXFMpF8K1ObsrpGvX17ZxNpKOzdNHs7lANT670JTr4ZhA8DnWqyvvmFG/d3HV9Yy6ew==';
/** The Node that this server build is made for; npm carries it as one package for each platform. */
const NODE_VERSION = '24.21.0';
const VSCODE_VERSION = '1.139.1';

/** Dependencies of the server that running extensions does not need; most of them would want a compiler. */
const UNNEEDED_DEPENDENCIES =
  /copilot|kerberos|ssh2|sandbox-runtime|sqlite3|deviceid|windows-|devcontainers|mxc-sdk|native-watchdog|spdlog/;
/** Large built-in extensions that no record needs. */
const UNNEEDED_EXTENSIONS = ['copilot', 'mermaid-markdown-features', 'microsoft-authentication'];

/**
 * @typedef {object} NpmHost VS Code's server build in the cache.
 * @property {string} version the version of VS Code
 * @property {string} folder the folder of the server build
 * @property {string} node the Node executable that runs it
 * @property {string} main the server's entry file
 */

/** The folder that keeps what is installed, outside this tree. */
export function cacheFolder() {
  return path.join(process.env.XDG_CACHE_HOME || path.join(os.homedir(), '.cache'), 'swingwright');
}

/**
 * The installed server build, or nothing when it is not in the cache.
 * @returns {Promise<NpmHost | undefined>}
 */
export async function findNpmHost() {
  const host = describeHost(hostFolder());
  const present = await Promise.all(
    [host.main, host.node].map((file) => fs.stat(file).catch(() => undefined)),
  );
  return present.every((entry) => entry) ? host : undefined;
}

/**
 * The server build, installed first when it is not in the cache.
 * @param {(line: string) => void} [tell] told what is being done
 * @returns {Promise<NpmHost>}
 */
export async function installNpmHost(tell = () => {}) {
  const found = await findNpmHost();
  if (found) return found;
  if (process.platform === 'win32')
    throw new Error('Install VS Code: its npm build is set up for Linux and macOS.');

  tell(`Installing VS Code ${VSCODE_VERSION} (server build) from npm into ${hostFolder()}`);
  await fs.mkdir(cacheFolder(), { recursive: true });
  await removeAbandoned();
  const partial = await fs.mkdtemp(path.join(cacheFolder(), '.partial-'));
  try {
    await Promise.all([fetchServer(path.join(partial, 'server')), fetchNode(path.join(partial, 'node'))]);
    await fs.rename(partial, hostFolder()).catch(async (error) => {
      // Another install was first: its result serves as well.
      if (!(await findNpmHost())) throw error;
    });
  } finally {
    await fs.rm(partial, { recursive: true, force: true });
  }
  return describeHost(hostFolder());
}

function hostFolder() {
  return path.join(cacheFolder(), `vscode-host-${VSCODE_VERSION}`);
}

/** @returns {NpmHost} */
function describeHost(/** @type {string} */ folder) {
  const server = path.join(folder, 'server');
  return {
    version: VSCODE_VERSION,
    folder: server,
    node: path.join(folder, 'node', 'bin', 'node'),
    main: path.join(server, 'out', 'server-main.js'),
  };
}

/** Removes what installs that were broken off more than a day ago have left. */
async function removeAbandoned() {
  const dayAgo = Date.now() - 24 * 3600 * 1000;
  for (const name of await fs.readdir(cacheFolder())) {
    const folder = path.join(cacheFolder(), name);
    if (name.startsWith('.partial-') && (await fs.stat(folder)).mtimeMs < dayAgo)
      await fs.rm(folder, { recursive: true, force: true });
  }
}

async function fetchServer(/** @type {string} */ folder) {
  const archive = await fetchPackage(SERVER_PACKAGE, `${folder}-archive`);
  const hash = createHash('sha512')
    .update(await fs.readFile(archive))
    .digest('base64');
  if (hash !== SERVER_SHA512)
    throw new Error(`The archive of ${SERVER_PACKAGE} has an unknown hash: ${hash}`);
  await unpack(archive, folder, 3, 'package/lib/vscode');
  for (const name of UNNEEDED_EXTENSIONS)
    await fs.rm(path.join(folder, 'extensions', name), { recursive: true, force: true });

  const manifestFile = path.join(folder, 'package.json');
  const manifest = JSON.parse(await fs.readFile(manifestFile, 'utf8'));
  for (const name of Object.keys(manifest.dependencies))
    if (UNNEEDED_DEPENDENCIES.test(name)) delete manifest.dependencies[name];
  // 1.2.0-beta.15 is the first that ships a binary for Linux.
  manifest.dependencies['node-pty'] = '1.2.0-beta.15';
  manifest.dependencies['@vscode/fs-copyfile'] = '2.0.0';
  delete manifest.overrides;
  await fs.writeFile(manifestFile, JSON.stringify(manifest, undefined, 2));

  const options = ['--omit=dev', '--ignore-scripts', '--no-audit', '--no-fund', '--prefer-offline'];
  await run('npm', ['install', ...options], { cwd: folder, env: ownNpmEnvironment() });
  await writeStandIns(path.join(folder, 'node_modules'));
  await removeOtherPlatforms(path.join(folder, 'node_modules', '@vscode', 'ripgrep-universal', 'bin'));
  await removeOtherPlatforms(path.join(folder, 'node_modules', 'node-pty', 'prebuilds'));
}

async function fetchNode(/** @type {string} */ folder) {
  const archive = await fetchPackage(
    `node-${process.platform}-${process.arch}@${NODE_VERSION}`,
    `${folder}-archive`,
  );
  await unpack(archive, folder, 1, 'package/bin/node');
}

/** Fetches one package's archive, checked by npm against the hash that it has published; gives the file. */
async function fetchPackage(/** @type {string} */ name, /** @type {string} */ folder) {
  await fs.mkdir(folder, { recursive: true });
  const options = ['--silent', '--prefer-offline', '--pack-destination', folder];
  const { stdout } = await run('npm', ['pack', name, ...options], { cwd: folder, env: ownNpmEnvironment() });
  return path.join(folder, stdout.trim().split('\n').at(-1) ?? '');
}

async function unpack(
  /** @type {string} */ archive,
  /** @type {string} */ folder,
  /** @type {number} */ strip,
  /** @type {string} */ member,
) {
  await fs.mkdir(folder, { recursive: true });
  await run('tar', ['-xzf', archive, '-C', folder, `--strip-components=${strip}`, member]);
  await fs.rm(path.dirname(archive), { recursive: true });
}

/** Keeps the one folder that is named for this platform. */
async function removeOtherPlatforms(/** @type {string} */ folder) {
  const own = `${process.platform}-${process.arch}`;
  for (const name of await fs.readdir(folder))
    if (name !== own) await fs.rm(path.join(folder, name), { recursive: true });
}

/** The environment without what an outer `npm run` has set for its own package. */
function ownNpmEnvironment() {
  const outer = /^npm_(package|lifecycle)_|^npm_config_local_prefix$|^INIT_CWD$/;
  return Object.fromEntries(Object.entries(process.env).filter(([name]) => !outer.test(name)));
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  if (process.argv.includes('--force')) await fs.rm(hostFolder(), { recursive: true, force: true });
  const host = await installNpmHost(console.log);
  console.log(`VS Code ${host.version} (server build) is in ${host.folder}`);
}
