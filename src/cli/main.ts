#!/usr/bin/env node
// The command line: names the commands and their options, and turns what they give into an exit code.
import { Command, InvalidArgumentError, Option } from 'commander';
import { calibrateCommand } from './calibrate.ts';
import { check, formats, type Format } from './check.ts';
import { addCompareCommands } from './compare-commands.ts';
import { derive } from './derive.ts';
import { checkpointNames, drawCommand, pictureNames, themeNames, type DrawOptions } from './draw.ts';
import { explainQuantity } from './explain-quantity.ts';
import { explain } from './explain.ts';
import { addHandoutCommand } from './handout-command.ts';
import { addJudgementCommands } from './judgement-commands.ts';
import { addLessonCommands } from './lesson-commands.ts';
import { addNewCommands } from './new-commands.ts';
import { next } from './next.ts';
import { fixCommand } from './fix.ts';
import { migrateCommand } from './migrate.ts';
import { references } from './references.ts';
import { renameCommand, renamed, type Renamed } from './rename.ts';
import { serve } from './serve.ts';
import { schemaCommand } from './schema.ts';
import { addShareCommand } from './share-command.ts';
import { addGitCommands } from './git-commands.ts';
import { addReviewCommands } from './review-commands.ts';
import { printable } from './formats/text.ts';
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
  // What was typed, or what a pattern of the shell made of a folder, is said again.
  .configureOutput({
    outputError: (words, write) => write(`${printable(words.trim().replace(/\n(?=\(Did you mean)/, ' '))}\n`),
  })
  .showHelpAfterError('(`swingwright --help` lists the commands)');

program
  .command('check')
  .description('find what is wrong in records, students, templates and fault books')
  .argument('[paths...]', 'files, or folders to look through', ['.'])
  .addOption(new Option('--format <format>', 'how to print the findings').choices(formats).default('text'))
  .option('--reviews', 'an open remark of a review is an error')
  .addHelpText(
    'after',
    '\nExit code: 0 no finding is an error, 1 at least one is, 2 something could not be read.',
  )
  .action(async (paths: string[], { format, reviews }: { format: Format; reviews?: true }) => {
    process.exitCode = await check(paths, format, stop.signal, reviews ? 'required' : 'told');
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

addJudgementCommands(program, nonEmpty, stop.signal);
addCompareCommands(program, nonEmpty, stop.signal);
addLessonCommands(program, nonEmpty, stop.signal);

program
  .command('draw')
  .description('draw the pictures of one record as SVG files')
  .argument('<file>', 'a swing record', nonEmpty)
  .addOption(new Option('--picture <name>', 'this one only').choices(pictureNames))
  .addOption(new Option('--checkpoint <name>', 'the figures of this one only').choices(checkpointNames))
  .addOption(new Option('--theme <theme>', 'the colours').choices(themeNames).default('light'))
  .option('--out <folder>', 'where to write them', '.')
  .addHelpText('after', '\nExit code: 0 written, 2 the record could not be read or a file not be written.')
  .action(async (file: string, options: DrawOptions) => {
    process.exitCode = await drawCommand(file, options, stop.signal);
  });

program
  .command('fix')
  .description('make the one obvious mend of each finding that has one, and change nothing else')
  .argument('<paths...>', 'files, or folders to look through')
  .option('--code <code>', 'only findings of this code; may be given several times', collect, [])
  .option('--dry-run', 'say what would be changed, and write nothing')
  .addHelpText('after', '\nExit code: 0 done, 2 something could not be read or written.')
  .action(async (paths: string[], options: { code: string[]; dryRun?: true }) => {
    const keep = options.dryRun ? 'print' : 'write';
    process.exitCode = await fixCommand(paths, { only: options.code, keep }, stop.signal);
  });

program
  .command('migrate')
  .description('bring files from an older version of the format to the present one')
  .argument('<paths...>', 'files, or folders to look through')
  .option('--write', 'write them; otherwise it is only said what would be done')
  .addHelpText(
    'after',
    '\nExit code: 0 all are of the present version or could be, 1 one cannot, 2 something could not be read or written.',
  )
  .action(async (paths: string[], options: { write?: true }) => {
    process.exitCode = await migrateCommand(paths, options.write ? 'write' : 'print');
  });

program
  .command('serve')
  .description('run the language server on standard input and output, for editors other than VS Code')
  .option('--stdio', 'what many editors add by themselves; it changes nothing')
  .action(serve);

program
  .command('schema')
  .description('write the JSON Schemas of a folder, its own quantities included, for any YAML tool')
  .argument('[folder]', 'a folder of records', '.')
  .requiredOption('--out <dir>', 'the folder to write them to')
  .addHelpText('after', '\nExit code: 0 written, 2 something could not be read or written.')
  .action(async (folder: string, options: { out: string }) => {
    process.exitCode = await schemaCommand(folder, options.out, stop.signal);
  });

program
  .command('explain')
  .description('say what a finding code means, or why a quantity of a record is what it is')
  .argument(
    '[code or file]',
    'a finding code, such as wrong-dimension, a quantity or a miss, or a swing record; left out, all codes are listed',
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
          ? await explain(subject, '.', stop.signal)
          : await explainQuantity(subject, quantity, options.format, stop.signal);
    },
  );

program
  .command('references')
  .description('list every place that mentions a fault, a club, a quantity, a miss or a file')
  .argument(
    '<name>',
    'such as trail-side-loaded, "seven iron", delivery.attack, slice or tove/tove.student.yaml',
    nonEmpty,
  )
  .argument('[path]', 'a folder to look through', '.')
  .addOption(
    new Option('--format <format>', 'how to print the places').choices(['text', 'json']).default('text'),
  )
  .addHelpText(
    'after',
    '\nExit code: 0 something mentions it, 1 nothing does, 2 something could not be read.',
  )
  .action(async (name: string, path: string, options: { format: 'text' | 'json' }) => {
    process.exitCode = await references(name, path, options.format, stop.signal);
  });

program
  .command('rename')
  .description(
    'give a fault, a club or what a workspace has of its own another name wherever it is mentioned',
  )
  .argument('<old>', 'its name', nonEmpty)
  .argument('<new>', 'its new name')
  .argument('[path]', 'a folder to look through', '.')
  .option('--fault', 'a fault of a fault book')
  .option('--club', "a club of a student's bag")
  .option(
    '--quantity',
    'an own quantity of `swingwright.yaml`, by its full id; of the new one the key will do',
  )
  .option('--check', 'an own check of `swingwright.yaml`')
  .option('--relation', 'an own relation of `swingwright.yaml`')
  .option('--of <file>', 'a file that mentions the one that is meant, where several have that name')
  .addHelpText('after', '\nExit code: 0 renamed, 1 it cannot be, 2 something could not be read or written.')
  .action(
    async (
      from: string,
      to: string,
      path: string,
      { of, ...what }: { [kind in Renamed]?: true } & { of?: string },
      command: Command,
    ) => {
      const [kind, ...others] = renamed.filter((one) => what[one] === true);
      if (kind === undefined || others.length > 0)
        return command.error(
          `error: say with one of ${renamed.map((one) => `\`--${one}\``).join(', ')} what is renamed.`,
        );
      process.exitCode = await renameCommand({ kind, from, to, path, of }, stop.signal);
    },
  );

program
  .command('next')
  .description('say what one record still has to measure, the most telling first')
  .argument('<file>', 'a swing record', nonEmpty)
  .addOption(
    new Option('--format <format>', 'how to print the entries').choices(['text', 'json']).default('text'),
  )
  .addHelpText('after', '\nExit code: 0, or 2 where the record could not be read.')
  .action(async (file: string, options: { format: 'text' | 'json' }) => {
    process.exitCode = await next(file, options.format, stop.signal);
  });

addNewCommands(program, nonEmpty, stop.signal);
addHandoutCommand(program, nonEmpty, stop.signal);
addShareCommand(program, stop.signal);
addGitCommands(program, stop.signal);
addReviewCommands(program, stop.signal);

program.parseAsync().catch((error: unknown) => {
  process.stderr.write(`swingwright: ${printable(error instanceof Error ? error.message : String(error))}\n`);
  process.exitCode = couldNotRun;
});

function collect(code: string, before: readonly string[]): readonly string[] {
  return [...before, code];
}

function nonEmpty(value: string): string {
  if (value === '') throw new InvalidArgumentError('expected at least one character.');
  return value;
}
