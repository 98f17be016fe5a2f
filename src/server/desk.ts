// Keeps each open document's analysis up to date and gives it out only for the version that it was computed from; knows no protocol.
import { createCache, forget } from '../analysis/cache.ts';
import { settle } from '../analysis/settle.ts';
import { findLessons, type Lesson } from '../analysis/lessons.ts';
import type { Analysis } from '../analysis/result.ts';
import type { Files } from './files.ts';

/** One version of an open document with what was found in it. */
export interface Result {
  readonly uri: string;
  readonly version: number;
  readonly analysis: Analysis;
}

export interface DeskOptions {
  readonly files: Files;
  /** The version of an open document; undefined where it is not open. */
  readonly versionOf: (uri: string) => number | undefined;
  /** Called with each fresh result, while its version still stands. `cause` is the file whose change led to it. */
  readonly publish: (result: Result, cause: string) => void;
  readonly report: (error: unknown) => void;
  /** Rests of this length between keystrokes are waited for, in milliseconds. */
  readonly pause: number;
}

export interface Desk {
  /** The document's present analysis; undefined if it was closed or changed meanwhile. Rejects when aborted. */
  readonly current: (uri: string, signal: AbortSignal) => Promise<Result | undefined>;
  /** All lessons of the student of this file, open or not, by date; undefined if it changed meanwhile. Rejects when aborted. */
  readonly lessons: (uri: string, signal: AbortSignal) => Promise<readonly Lesson[] | undefined>;
  /** A document or a file has changed: all open documents that depend on it are analysed again. */
  readonly changed: (uri: string) => void;
  readonly closed: (uri: string) => void;
  readonly dispose: () => void;
}

export function createDesk({ files, versionOf, publish, report, pause }: DeskOptions): Desk {
  const cache = createCache();
  /** The files that each open document's last result depends on. */
  const used = new Map<string, readonly string[]>();
  const waiting = new Map<string, ReturnType<typeof setTimeout>>();
  const running = new Map<string, AbortController>();

  const current = async (uri: string, signal: AbortSignal): Promise<Result | undefined> => {
    const version = versionOf(uri);
    if (version === undefined) return undefined;
    const analysis = await settle(uri, files, files.load, signal, cache);
    signal.throwIfAborted();
    return versionOf(uri) === version ? { uri, version, analysis } : undefined;
  };

  const lessons = async (uri: string, signal: AbortSignal): Promise<readonly Lesson[] | undefined> => {
    const version = versionOf(uri);
    const of = await settle(uri, files, files.load, signal, cache);
    const { load, list } = files;
    const found = await findLessons(of, { files, load, list, signal, cache });
    return versionOf(uri) === version ? found : undefined;
  };

  const run = async (uri: string, cause: string): Promise<void> => {
    const stop = new AbortController();
    running.get(uri)?.abort();
    running.set(uri, stop);
    try {
      const result = await current(uri, stop.signal);
      if (result === undefined) return;
      used.set(uri, result.analysis.used);
      publish(result, cause);
    } catch (error) {
      if (!stop.signal.aborted) report(error);
    } finally {
      if (running.get(uri) === stop) running.delete(uri);
    }
  };

  const schedule = (uri: string, cause: string): void => {
    clearTimeout(waiting.get(uri));
    running.get(uri)?.abort();
    waiting.set(
      uri,
      setTimeout(() => {
        waiting.delete(uri);
        void run(uri, cause);
      }, pause),
    );
  };

  const stop = (uri: string): void => {
    clearTimeout(waiting.get(uri));
    waiting.delete(uri);
    running.get(uri)?.abort();
    running.delete(uri);
    used.delete(uri);
  };

  return {
    current,
    lessons,
    changed: (uri) => {
      if (versionOf(uri) !== undefined) schedule(uri, uri);
      for (const [dependant, files] of used)
        if (dependant !== uri && files.includes(uri)) schedule(dependant, uri);
    },
    closed: (uri) => {
      stop(uri);
      if (![...used.values()].some((files) => files.includes(uri))) forget(cache, uri);
    },
    dispose: () => {
      for (const uri of new Set([...waiting.keys(), ...running.keys()])) stop(uri);
    },
  };
}
