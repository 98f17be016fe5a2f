// Names the commands about faults and plans, with their options; what they do stands in faults.ts and plan.ts.
import { Option, type Command } from 'commander';
import { faults } from './faults.ts';
import { plan } from './plan.ts';

export function addJudgementCommands(
  program: Command,
  nonEmpty: (value: string) => string,
  signal: AbortSignal,
): void {
  program
    .command('plan')
    .description('say what the plan of one record leads to and how its goals stand')
    .argument('<file>', 'a swing record', nonEmpty)
    .option('--propose', 'propose the smallest set of changes that brings the goals inside their windows')
    .option('--write', 'keep the proposal, and what it is predicted to lead to, in the record')
    .option('--replace', 'write the proposal in the place of a plan that is there')
    .addOption(
      new Option('--format <format>', 'how to print the plan').choices(['text', 'json']).default('text'),
    )
    .addHelpText(
      'after',
      '\nExit code: 0 done or every goal that can be told is met already, 1 there is no goal or nothing that is known helps, 2 the record could not be read, says too little, or has a plan that a proposal would replace.',
    )
    .action(
      async (
        file: string,
        options: { propose?: true; write?: true; replace?: true; format: 'text' | 'json' },
      ) => {
        const request = {
          format: options.format,
          what: options.propose ? 'proposed' : 'stated',
          keep: options.write ? 'write' : 'print',
          earlier: options.replace ? 'replace' : 'keep',
        } as const;
        process.exitCode = await plan(file, request, signal);
      },
    );

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
      process.exitCode = await faults(file, options.format, signal);
    });
}
