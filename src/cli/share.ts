// The `share` command: copies of records, and of what they refer to, in which nobody can be found, in a folder of their own.
import { randomInt } from 'node:crypto';
import { readdir, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { partWords, type PrivatePart } from '../analysis/share-parts.ts';
import { share, type ShareResult } from '../analysis/share.ts';
import { shareSources } from '../analysis/share-sources.ts';
import { findFiles } from '../disk/files.ts';
import { makeFolder } from '../disk/make-folder.ts';
import { kindOf } from '../record/kind.ts';
import { printable } from './formats/text.ts';
import { practiceAround } from './practice.ts';

export interface ShareOptions {
  readonly out: string;
  readonly keep: readonly PrivatePart[];
  /** By how many days every day is moved; by chance where undefined. */
  readonly days: number | undefined;
}

/** 0 where the copies were written, 1 where they cannot be made, 2 where something could not be read or written. */
export async function shareCommand(
  paths: readonly string[],
  { out, keep, days }: ShareOptions,
  signal: AbortSignal,
): Promise<number> {
  const { uris, unusable } = await findFiles(paths);
  for (const { path, reason } of unusable) refuse(`cannot read \`${path}\`: ${reason}.`);
  if (unusable.length > 0) return 2;
  // What is there already may hold the names that are to go.
  if ((await readdir(out).catch(() => [])).length > 0)
    return refuse(`Found files in \`${out}\`; expected a folder that is empty or not yet there.`);

  const records = uris.filter((uri) => kindOf(uri) === 'swing');
  const sources = await shareSources(records, practiceAround(signal));
  const shared = share({ ...sources, days: days ?? chosenDays(), keep: new Set(keep) });
  if (shared.kind === 'refused') {
    refuse(shared.reason);
    return 1;
  }
  for (const { path, text } of shared.files) {
    const file = join(out, path);
    try {
      await makeFolder(dirname(file));
      await writeFile(file, text, { flag: 'wx' });
    } catch (error) {
      return refuse(`cannot write \`${file}\`: ${error instanceof Error ? error.message : String(error)}.`);
    }
    process.stdout.write(`Wrote ${printable(join(out, path))}\n`);
  }
  process.stdout.write(summaryOf(shared, keep));
  return 0;
}

/** Up to a year and a half back, and never less than a month, so that no season gives the day away. */
function chosenDays(): number {
  return -randomInt(30, 548);
}

function summaryOf(
  { students, leftOut }: Extract<ShareResult, { kind: 'shared' }>,
  keep: readonly PrivatePart[],
): string {
  const said = students.map(({ name, alias }) => `${name} is ${alias}.`);
  const parts = [...leftOut].map(([what, howMany]) => {
    const [one, several] = words[what];
    return `${howMany} ${howMany === 1 ? one : several}`;
  });
  return [
    ...said,
    'Every day is moved by the same number of days.',
    parts.length === 0 ? 'Nothing was left out.' : `Left out: ${parts.join(', ')}.`,
    ...(keep.length === 0
      ? []
      : ['Read what you asked to keep before you hand it on: only names and days were taken out of it.']),
    '',
  ]
    .map((line) => `${printable(line)}\n`)
    .join('')
    .replace(/\n\n$/, '\n');
}

const words = {
  ...partWords,
  comments: ['comment', 'comments'],
  unread: ['value that was not understood', 'values that were not understood'],
} as const;

function refuse(message: string): number {
  process.stderr.write(`swingwright: ${printable(message)}\n`);
  return 2;
}
