// The `merge` command, which git calls to merge two edits of one file: by key where the texts can be read, else by line as git does.
import { execFile } from 'node:child_process';
import { readFile, writeFile } from 'node:fs/promises';
import { promisify } from 'node:util';
import { merge, type Merged } from '../record/merge.ts';
import { printable } from './formats/text.ts';

export interface MergeOptions {
  readonly ours: string;
  readonly theirs: string;
  readonly markLength: number;
}

/** Writes the merged text over `ours`: 0 where nothing clashes, 1 where marks are left, 2 where a file cannot be read or written. */
export async function mergeCommand(
  [base, ours, theirs]: readonly [string, string, string],
  options: MergeOptions,
): Promise<number> {
  try {
    const [b, o, t] = await Promise.all([base, ours, theirs].map((path) => readFile(path, 'utf8')));
    // git calls a side by the subject of its commit, too.
    const names = [printable(options.ours), printable(options.theirs)] as const;
    const merged =
      merge({ base: b!, ours: o!, theirs: t!, names, markLength: options.markLength }) ??
      (await byLines([base, ours, theirs], names, options.markLength));
    await writeFile(ours, merged.text);
    return merged.conflicts > 0 ? 1 : 0;
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error);
    process.stderr.write(`swingwright: cannot merge: ${printable(reason)}.\n`);
    return 2;
  }
}

/** What git itself would do; it says by its exit code how many conflicts are left, and by a negative one that it failed. */
async function byLines(
  [base, ours, theirs]: readonly [string, string, string],
  [own, other]: readonly [string, string],
  markLength: number,
): Promise<Merged> {
  const args = ['merge-file', '-p', `--marker-size=${markLength}`, '-L', own, '-L', 'base', '-L', other];
  try {
    const { stdout } = await promisify(execFile)('git', [...args, '--', ours, base, theirs]);
    return { text: stdout, conflicts: 0 };
  } catch (error) {
    const { code, stdout } = error as { code?: unknown; stdout?: unknown };
    if (typeof code === 'number' && code > 0 && code < 128 && typeof stdout === 'string')
      return { text: stdout, conflicts: code };
    throw error;
  }
}
