// The files as the server knows them: an open document's text first, else what was read; knows no protocol and reads nothing itself.
import type { FileStore } from '../analysis/settle.ts';
import type { FileState } from '../analysis/result.ts';

export interface Files extends FileStore {
  /** What the editor holds, else what was read, else read now. */
  readonly load: (uri: string) => Promise<FileState>;
  /** Swingwright's files, and those that may hold shots, at or below a folder, open ones included; kept until files come or go. */
  readonly list: (folder: string) => Promise<readonly string[]>;
  /** The file has changed, or is no longer open: what was read of it no longer counts, nor what is being read. */
  readonly forget: (uri: string) => void;
  /** A file was made or deleted: what was listed no longer counts. */
  readonly forgetLists: () => void;
}

export interface FileSources {
  readonly openText: (uri: string) => string | undefined;
  readonly openUris: () => Iterable<string>;
  readonly read: (uri: string) => Promise<FileState>;
  readonly list: (folder: string) => Promise<readonly string[]>;
}

export function createFiles({ openText, openUris, read: readFile, list }: FileSources): Files {
  const states = new Map<string, FileState>();
  const loading = new Map<string, Promise<FileState>>();
  const lists = new Map<string, Promise<readonly string[]>>();

  const get = (uri: string): FileState | undefined => {
    const text = openText(uri);
    return text === undefined ? states.get(uri) : { kind: 'text', text };
  };

  const read = (uri: string): Promise<FileState> => {
    const already = loading.get(uri);
    if (already !== undefined) return already;
    const reading: Promise<FileState> = attempt(readFile, uri).then((state) => {
      // A file that changed while it was being read is read again.
      if (loading.get(uri) !== reading) return read(uri);
      loading.delete(uri);
      states.set(uri, state);
      return state;
    });
    loading.set(uri, reading);
    return reading;
  };

  const listed = (folder: string): Promise<readonly string[]> => {
    const kept = lists.get(folder) ?? list(folder).catch(() => []);
    lists.set(folder, kept);
    return kept;
  };

  return {
    list: async (folder) => {
      const below = `${folder.replace(/\/+$/, '')}/`;
      const open = [...openUris()].filter((uri) => uri.startsWith(below));
      return [...new Set([...(await listed(folder)), ...open])].sort();
    },
    forgetLists: () => lists.clear(),
    get,
    // What was read is kept by `load`: a state that is handed back later may have been forgotten meanwhile.
    set: () => undefined,
    load: async (uri) => get(uri) ?? read(uri),
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
