// Adds the `plan` command to the program; what it does stands in plan.ts.
import { InvalidArgumentError, Option, type Command } from 'commander';
import { plan } from './plan.ts';

export function addPlanCommand(program: Command, signal: AbortSignal): void {
  program
    .command('plan')
    .description('say what the plan of one record leads to and how its goals stand')
    .argument('<file>', 'a swing record', someFile)
    .option('--propose', 'propose the smallest set of changes that brings the goals inside their windows')
    .option('--write', 'keep the proposal, and what it is predicted to lead to, in the record')
    .addOption(
      new Option('--format <format>', 'how to print the plan').choices(['text', 'json']).default('text'),
    )
    .addHelpText(
      'after',
      '\nExit code: 0 done, 1 nothing that is known helps, 2 the record could not be read or says too little.',
    )
    .action(async (file: string, options: { propose?: true; write?: true; format: 'text' | 'json' }) => {
      const request = {
        format: options.format,
        what: options.propose ? 'proposed' : 'stated',
        keep: options.write ? 'write' : 'print',
      } as const;
      process.exitCode = await plan(file, request, signal);
    });
}

function someFile(value: string): string {
  if (value === '') throw new InvalidArgumentError('Expected the name of a file.');
  return value;
}
