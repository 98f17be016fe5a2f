// Names the commands that git calls, and the one that tells it to; what they do stands in files of their own.
import { InvalidArgumentError, Option, type Command } from 'commander';
import { diffCommand, historyCommand, type HistoryOptions } from './diff.ts';
import { gitSetupCommand } from './git-setup.ts';
import { mergeCommand, type MergeOptions } from './merge.ts';
import { valuesCommand } from './values.ts';

export function addGitCommands(program: Command, signal: AbortSignal): void {
  program
    .command('diff')
    .description('say which values differ between two versions of a record; looks make no difference')
    .argument('<first>', 'a record, also as it stood at a git revision: `HEAD~1:lessons/a.swing.yaml`')
    .argument('[second]', 'another one; left out, the first is held against what is committed of it')
    .addOption(new Option('--format <format>', 'how to print it').choices(['text', 'json']).default('text'))
    .addHelpText('after', '\nExit code: 0 no value differs, 1 one does, 2 one of the two could not be read.')
    .action(async (first: string, second: string | undefined, options: { format: 'text' | 'json' }) => {
      process.exitCode = await diffCommand(first, second, options.format, signal);
    });

  program
    .command('history')
    .description('say what each commit changed in a record, the newest first')
    .argument('<file>', 'a swing record')
    .addOption(new Option('--most <number>', 'so many commits').argParser(wholeNumber(1, 1000)).default(20))
    .addOption(new Option('--format <format>', 'how to print it').choices(['text', 'json']).default('text'))
    .addHelpText('after', '\nExit code: 0 said, 2 the record has no history that can be read.')
    .action(async (file: string, options: HistoryOptions) => {
      process.exitCode = await historyCommand(file, options, signal);
    });

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
    .addOption(
      new Option('--mark-length <number>', 'how long a mark is').argParser(wholeNumber(1, 200)).default(7),
    )
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

function wholeNumber(least: number, most: number): (words: string) => number {
  return (words) => {
    const number = Number(words);
    if (!Number.isInteger(number) || number < least || number > most)
      throw new InvalidArgumentError(`expected a whole number from ${least} to ${most}.`);
    return number;
  };
}
