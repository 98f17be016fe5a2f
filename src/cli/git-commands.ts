// Names the commands that git calls, and the one that tells it to; what they do stands in files of their own.
import { InvalidArgumentError, Option, type Command } from 'commander';
import { gitSetupCommand } from './git-setup.ts';
import { mergeCommand, type MergeOptions } from './merge.ts';
import { valuesCommand } from './values.ts';

export function addGitCommands(program: Command): void {
  program
    .command('git-setup')
    .description('let git merge and show these files by value, in the repository of a folder')
    .argument('[folder]', 'a folder of the repository', '.')
    .addHelpText('after', '\nExit code: 0 set up, 2 there is no repository or it cannot be written.')
    .action(async (folder: string) => {
      process.exitCode = await gitSetupCommand(folder);
    });

  program
    .command('merge')
    .description('merge two edits of one file by key, over the first of them; git calls it')
    .argument('<base>', 'what both began with')
    .argument('<ours>', 'one edit, which is written over')
    .argument('<theirs>', 'the other')
    .option('--ours <name>', 'what marks call the one', 'ours')
    .option('--theirs <name>', 'what marks call the other', 'theirs')
    .addOption(new Option('--mark-length <number>', 'how long a mark is').argParser(markLength).default(7))
    .addHelpText(
      'after',
      '\nExit code: 0 merged, 1 marks are left, 2 something could not be read or written.',
    )
    .action(async (base: string, ours: string, theirs: string, options: MergeOptions) => {
      process.exitCode = await mergeCommand([base, ours, theirs], options);
    });

  program
    .command('values')
    .description('print what one file says, one value a line; git calls it to show what changed')
    .argument('<file>', 'any file of ours')
    .addHelpText('after', '\nExit code: 0 printed, 2 the file could not be read.')
    .action(async (file: string) => {
      process.exitCode = await valuesCommand(file);
    });
}

function markLength(words: string): number {
  const number = Number(words);
  if (!Number.isInteger(number) || number < 1 || number > 200)
    throw new InvalidArgumentError('expected a whole number from 1 to 200.');
  return number;
}
