// The files as the server knows them: an open document's text first, else what was read; knows no protocol and reads nothing itself.
import type { FileStore } from '../analysis/settle.ts';
import type { FileState } from '../analysis/result.ts';

export interface Files extends FileStore {
  readonly load: (uri: string) => Promise<FileState>;
  /** The file has changed, or is no longer open: what was read of it no longer counts, nor what is being read. */
  readonly forget: (uri: string) => void;
}

export interface FileSources {
  readonly openText: (uri: string) => string | undefined;
  readonly read: (uri: string) => Promise<FileState>;
}

export function createFiles({ openText, read }: FileSources): Files {
  const states = new Map<string, FileState>();
  const loading = new Map<string, Promise<FileState>>();

  const load = (uri: string): Promise<FileState> => {
    const already = loading.get(uri);
    if (already !== undefined) return already;
    const reading: Promise<FileState> = attempt(read, uri).then((state) => {
      // A file that changed while it was being read is read again.
      if (loading.get(uri) !== reading) return load(uri);
      loading.delete(uri);
      states.set(uri, state);
      return state;
    });
    loading.set(uri, reading);
    return reading;
  };

  return {
    get: (uri) => {
      const text = openText(uri);
      return text === undefined ? states.get(uri) : { kind: 'text', text };
    },
    // What was read is kept by `load`: a state that is handed back later may have been forgotten meanwhile.
    set: () => undefined,
    load,
    forget: (uri) => {
      states.delete(uri);
      loading.delete(uri);
    },
  };
}

async function attempt(read: FileSources['read'], uri: string): Promise<FileState> {
  try {
    return await read(uri);
  } catch (error) {
    return { kind: 'unreadable', reason: error instanceof Error ? error.message : String(error) };
  }
}
