/**
 * Finds a desktop VS Code on this machine. Knows nothing of the npm-borne one.
 */
import * as fs from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';

/** The oldest VS Code that the extension promises to run in (`engines.vscode`). */
const OLDEST = [1, 100];

/**
 * @typedef {object} DesktopHost a desktop VS Code.
 * @property {string} executable the program that opens the window
 * @property {string} version its version, empty when unknown
 */

/** Whether a window can be opened here. */
export function hasDisplay() {
  if (process.platform !== 'linux') return true;
  return Boolean(process.env.DISPLAY || process.env.WAYLAND_DISPLAY);
}

/**
 * The desktop VS Code that `VSCODE_EXECUTABLE` names, that is on the PATH or in a usual place.
 * @returns {Promise<DesktopHost | undefined>}
 */
export async function findDesktop() {
  const named = process.env.VSCODE_EXECUTABLE;
  if (named) {
    if (!(await isFile(named))) throw new Error(`VSCODE_EXECUTABLE names no file: ${named}`);
    return { executable: named, version: await readVersion(named) };
  }
  for (const executable of [...(await candidatesOnPath()), ...usualPlaces()]) {
    if (!(await isFile(executable))) continue;
    const version = await readVersion(executable);
    if (isRecent(version)) return { executable, version };
  }
  return undefined;
}

/** The `code` on the PATH is a script; the program stands in its folder's parent under one of these names. */
async function candidatesOnPath() {
  const names = process.platform === 'win32' ? ['code.cmd', 'code-insiders.cmd'] : ['code', 'code-insiders'];
  const found = [];
  for (const folder of (process.env.PATH ?? '').split(path.delimiter).filter(Boolean))
    for (const name of names) {
      const script = await fs.realpath(path.join(folder, name)).catch(() => undefined);
      if (!script || path.basename(path.dirname(script)) !== 'bin') continue;
      const parent = path.dirname(path.dirname(script));
      if (process.platform === 'darwin') found.push(path.resolve(parent, '../../MacOS/Electron'));
      else if (process.platform === 'win32') found.push(path.join(parent, 'Code.exe'));
      else found.push(path.join(parent, 'code'), path.join(parent, 'code-insiders'));
    }
  return found;
}

function usualPlaces() {
  if (process.platform === 'darwin')
    return ['/Applications', path.join(os.homedir(), 'Applications')].map((folder) =>
      path.join(folder, 'Visual Studio Code.app/Contents/MacOS/Electron'),
    );
  if (process.platform === 'win32')
    return [path.join(process.env.LOCALAPPDATA ?? '', 'Programs'), process.env.ProgramFiles ?? ''].map(
      (folder) => path.join(folder, 'Microsoft VS Code', 'Code.exe'),
    );
  return ['/usr/share/code/code', '/opt/visual-studio-code/code', '/snap/code/current/usr/share/code/code'];
}

/** Reads the version from the program's own manifest; starting the program for it would take seconds. */
async function readVersion(/** @type {string} */ executable) {
  const folder = path.dirname(executable);
  for (const place of ['resources/app/package.json', '../Resources/app/package.json']) {
    const text = await fs.readFile(path.join(folder, place), 'utf8').catch(() => undefined);
    if (text) return String(JSON.parse(text).version ?? '');
  }
  return '';
}

function isRecent(/** @type {string} */ version) {
  if (!version) return false;
  const [major = 0, minor = 0] = version.split('.').map(Number);
  return major > OLDEST[0] || (major === OLDEST[0] && minor >= OLDEST[1]);
}

async function isFile(/** @type {string} */ file) {
  return (await fs.stat(file).catch(() => undefined))?.isFile() ?? false;
}
