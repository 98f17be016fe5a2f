// Names the commands that lay records beside one another, with their options; what they do stands in files of their own.
import { Option, type Command } from 'commander';
import { compare, type ComparisonFormat } from './compare.ts';

export function addCompareCommands(
  program: Command,
  nonEmpty: (value: string) => string,
  signal: AbortSignal,
): void {
  program
    .command('compare')
    .description('say what differs between two records, and whether by more than measuring twice explains')
    .argument(
      '<first>',
      'a swing record, also as it stood at a git revision: `HEAD~1:lessons/a.swing.yaml`',
      nonEmpty,
    )
    .argument('<second>', 'another one, the same at another revision, or a template', nonEmpty)
    .addOption(
      new Option('--format <format>', 'how to print it; html is one page with pictures')
        .choices(['text', 'json', 'html'])
        .default('text'),
    )
    .addHelpText('after', '\nExit code: 0 compared, 2 one of the two could not be read or compared.')
    .action(async (first: string, second: string, options: { format: ComparisonFormat }) => {
      process.exitCode = await compare(first, second, options.format, signal);
    });
}
