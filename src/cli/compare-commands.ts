// Names the commands that lay records beside one another, with their options; what they do stands in files of their own.
import { Option, type Command } from 'commander';
import { compare, type ComparisonFormat } from './compare.ts';
import { studentProgress } from './student-progress.ts';

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

  program
    .command('progress')
    .description('show how one student came along over the lessons, club by club')
    .argument('<student>', 'a file that ends in .student.yaml', nonEmpty)
    .option('--club <name>', 'lessons with this club only')
    .option('--quantity <id...>', 'these quantities; otherwise what goals and plans are about')
    .addOption(
      new Option('--format <format>', 'how to print it; html is one page with pictures')
        .choices(['text', 'json', 'html'])
        .default('text'),
    )
    .addHelpText(
      'after',
      '\nExit code: 0 shown, 2 the file could not be read, or there is no such club or quantity.',
    )
    .action(
      async (file: string, options: { club?: string; quantity?: string[]; format: ComparisonFormat }) => {
        const request = { club: options.club, quantities: options.quantity ?? [] };
        process.exitCode = await studentProgress(file, request, options.format, signal);
      },
    );
}
