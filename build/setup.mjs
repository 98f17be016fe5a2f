// Installs what the lock file asks for where it is missing or out of date; says so, and does nothing otherwise.
import { spawnSync } from 'node:child_process';
import { existsSync, statSync } from 'node:fs';
import { join, resolve } from 'node:path';

export const root = resolve(import.meta.dirname, '..');

/** Runs a command in the tree with its output shown; ends this process with its exit code when it fails. */
export function run(command, args, options = {}) {
  const { status, signal, error } = spawnSync(command, args, { cwd: root, stdio: 'inherit', ...options });
  if (error) throw error;
  if (status !== 0) {
    console.error(`\n${[command, ...args].join(' ')} ended with ${signal ?? `exit code ${status}`}.`);
    process.exit(status ?? 1);
  }
}

/** Ends with a clear word on a Node that is too old, then installs the packages of the tree if need be. */
export function setUp() {
  const major = Number(process.versions.node.split('.')[0]);
  if (major < 20) {
    console.error(`Swingwright needs Node 20 or later; this is ${process.versions.node}.`);
    process.exit(2);
  }
  installPackages(root);
}

/** Installs the packages of one folder that has a lock file, where they are missing or older than it. */
export function installPackages(folder) {
  const installed = join(folder, 'node_modules', '.package-lock.json');
  const lock = join(folder, 'package-lock.json');
  if (existsSync(installed) && statSync(installed).mtimeMs >= statSync(lock).mtimeMs) return;
  console.log('Installing packages …');
  run('npm', ['ci', '--no-audit', '--no-fund'], { cwd: folder, shell: process.platform === 'win32' });
}
