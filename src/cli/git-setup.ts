// The `git-setup` command: has git set up in the repository of a folder, and says so.
import { setUpGit } from '../disk/git-setup.ts';
import { printable } from './formats/text.ts';

/** 0 where git is set up, 2 where there is no repository or something cannot be written. */
export async function gitSetupCommand(folder: string): Promise<number> {
  const { kind, words } = await setUpGit(folder);
  const lines = words.map(printable);
  if (kind === 'refused') {
    process.stderr.write(`swingwright: ${lines.join(' ')}\n`);
    return 2;
  }
  process.stdout.write(`${lines.join('\n')}\n`);
  return 0;
}
