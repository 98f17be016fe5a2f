// Finds Neovim for tests, or installs Debian's where that is possible; knows nothing of what it is for.
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';

/** The program's name; undefined on a system on which it can only be installed by hand. Throws where the installation fails. */
export function findNeovim(): string | undefined {
  const named = process.env['NVIM_EXECUTABLE'] ?? 'nvim';
  if (runs(named)) return named;
  if (!existsSync('/etc/debian_version') || process.getuid?.() !== 0) return undefined;
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  for (const args of [['update'], ['install', '-y', '--no-install-recommends', 'neovim']]) {
    const { status, stderr } = spawnSync('apt-get', args, { env, encoding: 'utf8' });
    if (status !== 0) throw new Error(`Neovim cannot be installed: apt-get ${args.join(' ')}: ${stderr}`);
  }
  if (!runs(named)) throw new Error('Neovim was installed and does not start.');
  return named;
}

function runs(program: string): boolean {
  return spawnSync(program, ['--version']).status === 0;
}
