// A git repository of a test's own, whatever the user's settings say.
import { execFileSync } from 'node:child_process';
import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';

function git(folder: string, ...args: readonly string[]): void {
  const own = [
    '-c',
    'user.name=Nobody',
    '-c',
    'user.email=nobody@example.invalid',
    '-c',
    'commit.gpgsign=false',
  ];
  execFileSync('git', [...own, ...args], { cwd: folder, stdio: 'pipe' });
}

export function repository(folder: string): void {
  git(folder, 'init', '--quiet', '--initial-branch=main');
}

/** Writes these files and commits them. */
export function committed(folder: string, files: Readonly<Record<string, string>>): void {
  for (const [name, text] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, name)), { recursive: true });
    writeFileSync(join(folder, name), text);
  }
  git(folder, 'add', '--all');
  git(folder, 'commit', '--quiet', '--no-verify', '--message', 'Lessons');
}
