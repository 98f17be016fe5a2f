// Names the commands for whoever asks how sound the numbers are; what they do stands in files of their own.
import { Option, type Command } from 'commander';
import { auditCommand, auditFormats, type AuditFormat } from './audit.ts';
import { methodsCommand } from './methods.ts';
import { reviewCommand, type ReviewOptions } from './review.ts';

export function addReviewCommands(program: Command, signal: AbortSignal): void {
  program
    .command('audit')
    .description('say of each entry of a record how it was measured, who checks it, and what leans on it')
    .argument('<file>', 'a swing record')
    .addOption(
      new Option('--format <format>', 'how to print it; csv has a row for each reading')
        .choices(auditFormats)
        .default('text'),
    )
    .addHelpText('after', '\nExit code: 0 printed, 2 the record could not be read.')
    .action(async (file: string, options: { format: AuditFormat }) => {
      process.exitCode = await auditCommand(file, options.format, signal);
    });

  program
    .command('methods')
    .description('say how far methods of measuring agree in the records of a folder')
    .argument('[folder]', 'a folder of records', '.')
    .option('--quantity <id>', 'this quantity alone, such as delivery.face')
    .option('--write', 'keep in swingwright.yaml how sure the methods have been')
    .addOption(new Option('--format <format>', 'how to print it').choices(['text', 'json']).default('text'))
    .addHelpText(
      'after',
      '\nExit code: 0 said, 1 nothing was measured twice or nothing can be written, 2 something could not be read or written.',
    )
    .action(async (folder: string, options: { quantity?: string; write?: true; format: 'text' | 'json' }) => {
      const { quantity, format } = options;
      const keep = options.write ? 'write' : 'print';
      process.exitCode = await methodsCommand(folder, { format, quantity, keep }, signal);
    });

  program
    .command('review')
    .description('list what colleagues remark on a record, reply, settle, suggest a value, sign off')
    .argument('<file>', 'a swing record, or a review of one')
    .option('--all', 'settled remarks too')
    .option('--about <id>', 'remark on this entry, such as delivery.face or faults.low-hands')
    .option('--reply <id>', 'reply to a remark; of every id the beginning will do')
    .option('--settle <id>', 'settle a remark')
    .option('--reopen <id>', 'open a settled remark again')
    .option('--apply <id>', 'write the value that a remark suggests into the record')
    .option('--sign-off', 'sign the record off as it stands')
    .option('--text <text>', 'the words of the remark or the reply')
    .option('--suggest <value>', 'the value that should stand there instead, as in "2 deg right by radar"')
    .option('--author <name>', 'who does it; left out, whom git knows here')
    .addOption(new Option('--format <format>', 'how to print it').choices(['text', 'json']).default('text'))
    .addHelpText(
      'after',
      '\nExit code: 0 listed or done, 1 it cannot be done, 2 something could not be read or written.',
    )
    .action(async (file: string, options: ReviewOptions) => {
      process.exitCode = await reviewCommand(file, options, signal);
    });
}
