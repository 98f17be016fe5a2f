#!/usr/bin/env node
// The command line: names the commands and their options, and turns what they give into an exit code.
import { Command, InvalidArgumentError, Option } from 'commander';
import { calibrateCommand } from './calibrate.ts';
import { check, formats, type Format } from './check.ts';
import { claims } from './claims.ts';
import { derive } from './derive.ts';
import { explainQuantity } from './explain-quantity.ts';
import { explain } from './explain.ts';
import { faults } from './faults.ts';
import { version } from './version.ts';

const couldNotRun = 2;

const stop = new AbortController();
process.once('SIGINT', () => {
  stop.abort();
  process.exit(130);
});
// A reader that has seen enough (`| head`) is no failure of ours, and does not change what was found.
process.stdout.on('error', (error: NodeJS.ErrnoException) =>
  setImmediate(() => process.exit(error.code === 'EPIPE' ? (process.exitCode ?? 0) : couldNotRun)),
);

const program = new Command('swingwright')
  .description('Checks golf lesson records kept as text and computes what follows from them.')
  .version(version)
  .exitOverride((error) => process.exit(error.exitCode === 0 ? 0 : couldNotRun))
  .showHelpAfterError('(`swingwright --help` lists the commands)');

program
  .command('check')
  .description('find what is wrong in records, students, templates and fault books')
  .argument('[paths...]', 'files, or folders to look through', ['.'])
  .addOption(new Option('--format <format>', 'how to print the findings').choices(formats).default('text'))
  .addHelpText(
    'after',
    '\nExit code: 0 no finding is an error, 1 at least one is, 2 something could not be read.',
  )
  .action(async (paths: string[], options: { format: Format }) => {
    process.exitCode = await check(paths, options.format, stop.signal);
  });

program
  .command('derive')
  .description('compute what follows from one record')
  .argument('<file>', 'a swing record', nonEmpty)
  .addOption(
    new Option('--format <format>', 'how to print the quantities').choices(['text', 'json']).default('text'),
  )
  .addHelpText(
    'after',
    '\nExit code: 0 no finding is an error, 1 at least one is, 2 the record could not be read.',
  )
  .action(async (file: string, options: { format: 'text' | 'json' }) => {
    process.exitCode = await derive(file, options.format, stop.signal);
  });

program
  .command('calibrate')
  .description("fit drag and lift to a folder's own measured shots")
  .argument('[folder]', 'a folder of records with shots', '.')
  .option('--write', 'keep the fit in the workspace file of the folder')
  .addHelpText(
    'after',
    '\nExit code: 0 fitted, 1 the shots say too little, 2 something could not be read or written.',
  )
  .action(async (folder: string, options: { write?: true }) => {
    process.exitCode = await calibrateCommand(folder, options.write ? 'write' : 'print', stop.signal);
  });

program
  .command('faults')
  .description('hold the stated faults of one record against its numbers, and say what causes what')
  .argument('<file>', 'a swing record', nonEmpty)
  .addOption(
    new Option('--format <format>', 'how to print the verdicts').choices(['text', 'json']).default('text'),
  )
  .addHelpText(
    'after',
    '\nExit code: 0 no finding is an error, 1 at least one is, 2 the record or its fault book could not be read.',
  )
  .action(async (file: string, options: { format: 'text' | 'json' }) => {
    process.exitCode = await faults(file, options.format, stop.signal);
  });

program
  .command('claims')
  .description(
    'hold what stated faults are believed to do against the model and the other records of the student',
  )
  .argument('<file>', 'a swing record', nonEmpty)
  .addOption(
    new Option('--format <format>', 'how to print the claims').choices(['text', 'json']).default('text'),
  )
  .addHelpText('after', '\nExit code: 0 printed, 2 the record or its fault book could not be read.')
  .action(async (file: string, options: { format: 'text' | 'json' }) => {
    process.exitCode = await claims(file, options.format, stop.signal);
  });

program
  .command('explain')
  .description('say what a finding code means, or why a quantity of a record is what it is')
  .argument(
    '[code or file]',
    'a finding code, such as wrong-dimension, or a swing record; left out, all codes are listed',
  )
  .argument('[quantity]', 'a quantity of that record, such as delivery.attack')
  .addOption(
    new Option('--format <format>', 'how to print a quantity').choices(['text', 'json']).default('text'),
  )
  .action(
    async (
      subject: string | undefined,
      quantity: string | undefined,
      options: { format: 'text' | 'json' },
    ) => {
      process.exitCode =
        subject === undefined || quantity === undefined
          ? explain(subject)
          : await explainQuantity(subject, quantity, options.format, stop.signal);
    },
  );

program.parseAsync().catch((error: unknown) => {
  process.stderr.write(`swingwright: ${error instanceof Error ? error.message : String(error)}\n`);
  process.exitCode = couldNotRun;
});

function nonEmpty(value: string): string {
  if (value === '') throw new InvalidArgumentError('expected the path of a record.');
  return value;
}
