// The files of a practice on this machine's disk, for commands that look at several records.
import { createCache } from '../analysis/cache.ts';
import type { Practice } from '../analysis/lessons.ts';
import type { FileState } from '../analysis/result.ts';
import { findFiles, listFolder, loadFile } from '../disk/files.ts';
import { printable } from './formats/text.ts';

/** The files at or below a path; undefined, with the reason on standard error, where one cannot be read. */
export async function practiceAt(path: string, signal: AbortSignal): Promise<Practice | undefined> {
  const { uris, unusable } = await findFiles([path]);
  for (const { path: at, reason } of unusable)
    process.stderr.write(`swingwright: cannot read \`${printable(at)}\`: ${printable(reason)}.\n`);
  return unusable.length > 0 ? undefined : { ...practiceAround(signal), list: () => Promise.resolve(uris) };
}

/** Whatever folder the record's own student and workspace say. */
export function practiceAround(signal: AbortSignal): Practice {
  const files = new Map<string, FileState>();
  return { files, load: loadFile, list: listFolder, signal, cache: createCache() };
}
