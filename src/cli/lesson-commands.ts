// Names the commands about several lessons, with their options; what each does stands in a file of its name.
import { Option, type Command } from 'commander';
import { compare, type ComparisonFormat } from './compare.ts';
import { lessons } from './lessons.ts';
import { outcome } from './outcome.ts';
import { predictions } from './predictions.ts';

export function addLessonCommands(
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
    .command('lessons')
    .description('list the students of a folder with their lessons by club and date, and where each stands')
    .argument('[path]', 'a folder of records', '.')
    .addOption(formatOption('how to print the lessons'))
    .addHelpText('after', '\nExit code: 0 listed, 2 something could not be read.')
    .action(async (path: string, options: { format: 'text' | 'json' }) => {
      process.exitCode = await lessons(path, options.format, signal);
    });

  program
    .command('outcome')
    .description(
      'hold the plan of one record against the lesson after it, or the last plan against this record',
    )
    .argument('<file>', 'a swing record', nonEmpty)
    .addOption(formatOption('how to print the outcome'))
    .addHelpText(
      'after',
      '\nExit code: 0 there is a plan, here or before, 1 there is none, 2 the record could not be read.',
    )
    .action(async (file: string, options: { format: 'text' | 'json' }) => {
      process.exitCode = await outcome(file, options.format, signal);
    });

  program
    .command('predictions')
    .description('say how good the predictions of a folder have been')
    .argument('[path]', 'a folder of records', '.')
    .addOption(formatOption('how to print the shares'))
    .addHelpText('after', '\nExit code: 0 said, 2 something could not be read.')
    .action(async (path: string, options: { format: 'text' | 'json' }) => {
      process.exitCode = await predictions(path, options.format, signal);
    });
}

function formatOption(description: string): Option {
  return new Option('--format <format>', description).choices(['text', 'json']).default('text');
}
