// The server's entry in Node: one connection over what the editor chose (IPC, pipe or standard input and output).
import { readFile, stat } from 'node:fs/promises';
import { createConnection, ProposedFeatures } from 'vscode-languageserver/node';
import { URI } from 'vscode-uri';
import { serve } from './connection.ts';
import type { FileState } from './protocol.ts';

serve(createConnection(ProposedFeatures.all), readFromDisk);

/** For editors that do not hand files to the server themselves; only what is on this machine's disk. */
async function readFromDisk(uri: string): Promise<FileState> {
  const { scheme, fsPath } = URI.parse(uri);
  if (scheme !== 'file') return { kind: 'unreadable', reason: 'it is not on this disk' };
  try {
    // Reading from a pipe would wait for ever.
    const info = await stat(fsPath);
    if (!info.isFile() && !info.isDirectory())
      return { kind: 'unreadable', reason: 'it is not a regular file' };
    return { kind: 'text', text: new TextDecoder().decode(await readFile(fsPath)) };
  } catch (error) {
    const code = error instanceof Error && 'code' in error ? error.code : undefined;
    if (code === 'ENOENT' || code === 'ENOTDIR') return { kind: 'missing' };
    return { kind: 'unreadable', reason: error instanceof Error ? error.message : String(error) };
  }
}
