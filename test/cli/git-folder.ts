// git in a folder of its own, for tests: with `swingwright` on the path, and nobody's own settings.
import { execFileSync } from 'node:child_process';
import { chmodSync, mkdirSync, writeFileSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { program } from './program.ts';

/** The environment that git is to run in; puts a folder `.bin` into `folder`. */
export function gitEnvironment(folder: string): NodeJS.ProcessEnv {
  const bin = join(folder, '.bin');
  mkdirSync(bin, { recursive: true });
  writeFileSync(join(bin, 'swingwright'), `#!/bin/sh\nexec "${process.execPath}" "${program()}" "$@"\n`);
  chmodSync(join(bin, 'swingwright'), 0o755);
  return {
    ...process.env,
    PATH: `${bin}${delimiter}${process.env['PATH'] ?? ''}`,
    HOME: folder,
    GIT_CONFIG_NOSYSTEM: '1',
    GIT_AUTHOR_NAME: 'A Coach',
    GIT_AUTHOR_EMAIL: 'coach@lessons.example',
    GIT_COMMITTER_NAME: 'A Coach',
    GIT_COMMITTER_EMAIL: 'coach@lessons.example',
  };
}

export type Git = (...args: readonly string[]) => string;

/** Runs git there and gives what it prints; throws where it fails. */
export function gitIn(folder: string, env = gitEnvironment(folder)): Git {
  return (...args) =>
    execFileSync('git', args, { cwd: folder, env, encoding: 'utf8', stdio: ['ignore', 'pipe', 'pipe'] });
}
