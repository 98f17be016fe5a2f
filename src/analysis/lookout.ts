// Looks files up in a snapshot and remembers which were looked for and which were not there yet; reads none itself.
import type { FileState, Snapshot } from './result.ts';

export interface Lookout {
  readonly file: (uri: string) => FileState | undefined;
  /** In the order first looked for. */
  readonly used: () => readonly string[];
  readonly wanted: () => readonly string[];
}

export function lookoutOver(snapshot: Snapshot): Lookout {
  const seen = new Map<string, FileState | undefined>();
  const file = (uri: string): FileState | undefined => {
    if (!seen.has(uri)) seen.set(uri, snapshot.file(uri));
    return seen.get(uri);
  };
  return {
    file,
    used: () => [...seen.keys()],
    wanted: () => [...seen].filter(([, state]) => state === undefined).map(([uri]) => uri),
  };
}
