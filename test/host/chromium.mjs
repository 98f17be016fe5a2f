/**
 * Finds a Chromium for tests and screenshots, or installs Debian's where that is possible, with fonts that look well
 * in pictures. Knows nothing of VS Code.
 */
import { execFile } from 'node:child_process';
import * as fs from 'node:fs/promises';
import path from 'node:path';
import { promisify } from 'node:util';

const run = promisify(execFile);

const PACKAGES = ['chromium', 'fonts-dejavu-core', 'fonts-inter', 'fonts-jetbrains-mono'];

const USUAL_PLACES = [
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
];

/** Keeps every name but this machine's own from being looked up, and the browser from calling home. */
export const CHROMIUM_FLAGS = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--font-render-hinting=none',
  '--host-resolver-rules=MAP * ~NOTFOUND, EXCLUDE 127.0.0.1',
];

/** Makes pictures look alike on every machine: the interface in Inter, code in JetBrains Mono, signs from DejaVu. */
const FONTS = `<?xml version="1.0"?>
<!DOCTYPE fontconfig SYSTEM "urn:fontconfig:fonts.dtd">
<fontconfig>
  <include ignore_missing="yes">/etc/fonts/fonts.conf</include>
  ${['system-ui', 'sans-serif', 'Ubuntu'].map((family) => preferFont(family, 'Inter')).join('\n  ')}
  ${['monospace', 'Droid Sans Mono', 'Liberation Mono', 'Courier New'].map((family) => preferFont(family, 'JetBrains Mono')).join('\n  ')}
</fontconfig>
`;

/**
 * A Chromium's executable: `CHROME`, one in a usual place, or Debian's, installed now.
 * @param {(line: string) => void} [tell] told what is being done
 * @returns {Promise<string>}
 */
export async function findChromium(tell = () => {}) {
  const named = process.env.CHROME;
  if (named) {
    if (!(await exists(named))) throw new Error(`CHROME names no file: ${named}`);
    return named;
  }
  for (const file of USUAL_PLACES) if (await exists(file)) return file;
  if (!(await exists('/etc/debian_version')) || process.getuid?.() !== 0)
    throw new Error('Install Chromium or Google Chrome, or name one in CHROME.');

  tell(`Installing ${PACKAGES.join(' ')}`);
  const environment = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  await run('apt-get', ['update'], { env: environment });
  await run('apt-get', ['install', '-y', '--no-install-recommends', ...PACKAGES], { env: environment });
  return USUAL_PLACES[0] ?? '';
}

/**
 * Writes the font settings for one browser.
 * @param {string} folder where to write them
 * @returns {Promise<Record<string, string>>} the environment in which the browser reads them
 */
export async function writeFontSettings(folder) {
  const file = path.join(folder, 'fonts.conf');
  await fs.writeFile(file, FONTS);
  return { FONTCONFIG_FILE: file };
}

function preferFont(/** @type {string} */ family, /** @type {string} */ font) {
  return `<match target="pattern"><test name="family"><string>${family}</string></test><edit name="family" mode="prepend" binding="strong"><string>${font}</string></edit></match>`;
}

async function exists(/** @type {string} */ file) {
  return Boolean(await fs.stat(file).catch(() => undefined));
}
