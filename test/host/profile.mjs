/**
 * Makes the throw-away folders that one run of VS Code writes to: settings, state and extensions. Knows nothing of how
 * VS Code is started.
 */
import * as fs from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';

/** Settings that keep everything out of the way that is not about the file which is open. */
const CALM_SETTINGS = {
  'chat.disableAIFeatures': true,
  'editor.minimap.enabled': false,
  'extensions.autoCheckUpdates': false,
  'extensions.ignoreRecommendations': true,
  'git.openRepositoryInParentFolders': 'never',
  'telemetry.telemetryLevel': 'off',
  'update.mode': 'none',
  'workbench.secondarySideBar.defaultVisibility': 'hidden',
  'workbench.startupEditor': 'none',
  'workbench.tips.enabled': false,
};

/**
 * @typedef {object} Profile the folders of one run; every one is inside `folder`.
 * @property {string} folder the temporary folder that holds all of it
 * @property {string} userData settings are in its User/settings.json
 * @property {string} serverData the server's state and logs
 * @property {string} extensions the installed extensions
 */

/**
 * A fresh profile in a new temporary folder.
 * @param {{ settings?: Record<string, unknown>, extensionFolder?: string }} [options] settings over the calm ones, and
 *   an extension's folder (with package.json) that counts as installed
 * @returns {Promise<Profile>}
 */
export async function createProfile(options = {}) {
  const folder = await fs.mkdtemp(path.join(os.tmpdir(), 'swingwright-host-'));
  const profile = {
    folder,
    userData: path.join(folder, 'user'),
    serverData: path.join(folder, 'server'),
    extensions: path.join(folder, 'extensions'),
  };
  await fs.mkdir(profile.extensions);
  await fs.mkdir(profile.serverData);
  if (options.extensionFolder) await linkExtension(profile.extensions, options.extensionFolder);
  await writeSettings(userSettings(profile.userData), { ...CALM_SETTINGS, ...options.settings });
  return profile;
}

/**
 * Lets an extension's own folder count as installed, so that a rebuild and "Reload Window" are enough to see a change.
 * @param {string} extensions an extensions folder that no VS Code has used yet
 * @param {string} extensionFolder the folder of the extension's package.json
 */
export async function linkExtension(extensions, extensionFolder) {
  const manifest = JSON.parse(await fs.readFile(path.join(extensionFolder, 'package.json'), 'utf8'));
  const name = `${manifest.publisher}.${manifest.name}-${manifest.version}`;
  await fs.symlink(path.resolve(extensionFolder), path.join(extensions, name), 'junction');
}

/**
 * Adds the calm settings to a profile that somebody else made; what it already has wins.
 * @param {string} userData
 */
export async function addCalmSettings(userData) {
  const file = userSettings(userData);
  await writeSettings(file, { ...CALM_SETTINGS, ...(await readSettings(file)) });
}

/**
 * Sets some settings of a running VS Code. They go to the machine's settings, over the user's, because the page follows
 * only that file; settings of the scope "application" do not count there.
 * @param {string} userData
 * @param {Record<string, unknown>} settings
 */
export async function changeSettings(userData, settings) {
  const file = path.join(userData, 'Machine', 'settings.json');
  await writeSettings(file, { ...(await readSettings(file)), ...settings });
}

async function readSettings(/** @type {string} */ file) {
  const text = await fs.readFile(file, 'utf8').catch(() => '{}');
  return JSON.parse(text);
}

async function writeSettings(/** @type {string} */ file, /** @type {Record<string, unknown>} */ settings) {
  await fs.mkdir(path.dirname(file), { recursive: true });
  await fs.writeFile(file, `${JSON.stringify(settings, undefined, 2)}\n`);
}

function userSettings(/** @type {string} */ userData) {
  return path.join(userData, 'User', 'settings.json');
}
