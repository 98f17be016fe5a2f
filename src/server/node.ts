// The server's entry in Node: one connection over what the editor chose (IPC, pipe or standard input and output).
import { createConnection, ProposedFeatures } from 'vscode-languageserver/node';
import { URI } from 'vscode-uri';
import { listFolder, loadFile } from '../disk/files.ts';
import { setUpGit } from '../disk/git-setup.ts';
import { serve } from './connection.ts';
import type { Print } from './handout.ts';
import { noGit, type FileState, type GitSetupResult } from './protocol.ts';

serve(
  createConnection(ProposedFeatures.all),
  { read: readFromDisk, list: listFolder, setUpGit: setUpGitAt },
  printed,
);

/** For editors that do not hand files to the server themselves; only what is on this machine's disk. */
function readFromDisk(uri: string): Promise<FileState> {
  if (URI.parse(uri).scheme === 'file') return loadFile(uri);
  return Promise.resolve({ kind: 'unreadable', reason: 'it is not on this disk' });
}

function setUpGitAt(folder: string): Promise<GitSetupResult> {
  const { scheme, fsPath } = URI.parse(folder);
  return scheme === 'file' ? setUpGit(fsPath) : Promise.resolve({ kind: 'refused', words: [noGit] });
}

/** What prints is large, and loaded when somebody first does. */
async function printed(...[handout, audience]: Parameters<Print>): ReturnType<Print> {
  const { handoutPdf } = await import('../print/handout-pdf.ts');
  const { bytes, isWhole } = await handoutPdf(handout, audience);
  return { base64: Buffer.from(bytes).toString('base64'), isWhole };
}
