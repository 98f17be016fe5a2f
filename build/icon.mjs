// Draws media/icon.png from media/icon.svg in a headless Chromium; run by hand when the drawing changes.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';

const root = resolve(import.meta.dirname, '..');
const scratch = mkdtempSync(join(tmpdir(), 'swingwright-icon-'));
const page = join(scratch, 'icon.html');
const drawing = readFileSync(join(root, 'media/icon.svg'), 'utf8');
writeFileSync(page, `<!doctype html><style>body{margin:0}svg{display:block}</style>${drawing}`);
const { status } = spawnSync(
  process.env.CHROMIUM ?? 'chromium',
  [
    '--headless',
    '--no-sandbox',
    '--disable-gpu',
    '--hide-scrollbars',
    '--force-device-scale-factor=1',
    '--default-background-color=00000000',
    '--window-size=256,256',
    `--user-data-dir=${join(scratch, 'profile')}`,
    `--screenshot=${join(root, 'media/icon.png')}`,
    `file://${page}`,
  ],
  { stdio: ['ignore', 'ignore', 'inherit'] },
);
rmSync(scratch, { recursive: true, force: true });
process.exitCode = status ?? 1;
