// Names the commands about several lessons of a student, with their options; what they do stands in files of their own.
import { Option, type Command } from 'commander';
import { claims } from './claims.ts';
import { lessons } from './lessons.ts';
import { outcome } from './outcome.ts';
import { predictions } from './predictions.ts';

export function addLessonCommands(
  program: Command,
  nonEmpty: (value: string) => string,
  signal: AbortSignal,
): void {
  program
    .command('claims')
    .description(
      'hold what stated faults are believed to do against the model and the other records of the student',
    )
    .argument('<file>', 'a swing record', nonEmpty)
    .addOption(formatOption('how to print the claims'))
    .addHelpText('after', '\nExit code: 0 printed, 2 the record or its fault book could not be read.')
    .action(async (file: string, options: { format: 'text' | 'json' }) => {
      process.exitCode = await claims(file, options.format, signal);
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
