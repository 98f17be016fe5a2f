// Analyses a file and loads what it refers to until nothing is wanted; server and command line both call this. Reads no file itself.
import { analyse } from './analyse.ts';
import type { AnalysisCache } from './cache.ts';
import type { Analysis, FileState } from './result.ts';

/** Where the files known so far are kept; a Map will do. */
export interface FileStore {
  readonly get: (uri: string) => FileState | undefined;
  readonly set: (uri: string, state: FileState) => unknown;
}

/** What an AbortSignal gives; the core knows neither Node's nor a browser's. */
export interface Cancellation {
  readonly throwIfAborted: () => void;
}

/** More rounds than this and the files lead nowhere: the longest chain is record, fault book and the books that it extends. */
const mostRounds = 32;

/**
 * The analysis of `uri` once every file that it depends on is in `files` (as text, missing or unreadable).
 * A file that turned up in `files` while it was being loaded wins over what `load` gave, since an editor's text is newer.
 * Rejects with the signal's reason when it is aborted, and otherwise never: a `load` that rejects makes the file unreadable.
 */
export async function settle(
  uri: string,
  files: FileStore,
  load: (uri: string) => Promise<FileState>,
  signal: Cancellation,
  cache?: AnalysisCache,
): Promise<Analysis> {
  signal.throwIfAborted();
  const snapshot = { file: (wanted: string) => files.get(wanted) };
  let analysis = analyse(uri, snapshot, cache);
  for (let round = 0; round < mostRounds && analysis.wanted.length > 0; round += 1) {
    const loaded = await Promise.all(
      analysis.wanted.map(async (wanted) => [wanted, await attempt(load, wanted)] as const),
    );
    signal.throwIfAborted();
    for (const [wanted, state] of loaded) {
      if (files.get(wanted) === undefined) files.set(wanted, state);
    }
    analysis = analyse(uri, snapshot, cache);
  }
  return analysis;
}

async function attempt(load: (uri: string) => Promise<FileState>, uri: string): Promise<FileState> {
  try {
    return await load(uri);
  } catch (error) {
    return { kind: 'unreadable', reason: error instanceof Error ? error.message : String(error) };
  }
}
