// Names the `share` command with its options; what it does stands in share.ts.
import { InvalidArgumentError, Option, type Command } from 'commander';
import { privateParts, type PrivatePart } from '../analysis/share-parts.ts';
import { shareCommand } from './share.ts';

export function addShareCommand(program: Command, signal: AbortSignal): void {
  program
    .command('share')
    .description('copy records, and what they refer to, so that they tell of nobody')
    .argument('<paths...>', 'swing records, or folders of them')
    .requiredOption('--out <folder>', 'an empty folder for the copies')
    .addOption(
      new Option('--keep <parts...>', 'what to copy that is left out otherwise').choices(privateParts),
    )
    .addOption(
      new Option('--days <number>', 'move every day by so many; by chance when not given').argParser(days),
    )
    .addHelpText(
      'after',
      '\nExit code: 0 written, 1 copies cannot be made, 2 something could not be read or written.',
    )
    .action(
      async (paths: string[], { out, keep, days }: { out: string; keep?: PrivatePart[]; days?: number }) => {
        process.exitCode = await shareCommand(paths, { out, keep: keep ?? [], days }, signal);
      },
    );
}

/** A thousand years either way keep a day within the calendar. */
function days(words: string): number {
  const number = Number(words);
  if (words.trim() === '' || !Number.isInteger(number) || Math.abs(number) > 365_000 || number === 0)
    throw new InvalidArgumentError('expected a whole number of days other than 0.');
  return number;
}
