// Names the `handout` command with its options; what it does stands in handout.ts.
import { Option, type Command } from 'commander';
import type { Audience } from '../draw/handout/content.tsx';
import { languages } from '../registry/language.ts';
import { handoutCommand, handoutFormats, type HandoutFormat } from './handout.ts';

interface Options {
  readonly out?: string;
  readonly format?: HandoutFormat;
  readonly for: Audience;
  readonly language?: string;
  readonly health?: true;
}

export function addHandoutCommand(
  program: Command,
  nonEmpty: (value: string) => string,
  signal: AbortSignal,
): void {
  program
    .command('handout')
    .description('write one page for the student, or two for the file: what was seen, why, what to change')
    .argument('<file>', 'a swing record', nonEmpty)
    .option(
      '--out <path>',
      'a file, or a folder for one that is named for the student; otherwise standard output',
    )
    .addOption(
      new Option('--format <format>', 'otherwise by the name of the file, or html').choices(handoutFormats),
    )
    .addOption(new Option('--for <whom>', 'who gets it').choices(['student', 'file']).default('student'))
    .addOption(new Option('--language <language>', 'otherwise that of the record').choices(languages))
    .option('--health', 'name the injuries in the student’s file that the changes load')
    .addHelpText(
      'after',
      '\nExit code: 0 written, 2 the record could not be read or the file not be written.',
    )
    .action(async (file: string, { out, format, for: audience, language, health }: Options) => {
      const request = { audience, format, language, out, health: health ? 'named' : 'left out' } as const;
      process.exitCode = await handoutCommand(file, request, signal);
    });
}
