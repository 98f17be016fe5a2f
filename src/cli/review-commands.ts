// Names the commands for whoever asks how sound the numbers are; what they do stands in files of their own.
import { Option, type Command } from 'commander';
import { auditCommand, auditFormats, type AuditFormat } from './audit.ts';
import { methodsCommand } from './methods.ts';

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
}
