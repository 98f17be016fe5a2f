// Finds and reads files through the editor, so that those on virtual file systems and other machines are read as well.
import * as vscode from 'vscode';
import type { FileState } from '../server/protocol.ts';

export const filePatterns = [
  '**/*.{swing,student,template,faults,review}.yaml',
  '**/swingwright.yaml',
  // Files of shots.
  '**/*.{csv,tsv}',
];

/** URIs of the files of these patterns at or below a folder, sorted; dependencies and what git keeps are left out. */
export async function listFiles(folder: vscode.Uri): Promise<readonly string[]> {
  const found = await vscode.workspace.findFiles(
    new vscode.RelativePattern(folder, `{${filePatterns.join(',')}}`),
    '**/{node_modules,.git}/**',
  );
  return found.map((uri) => uri.toString()).sort();
}

export async function readFile(uri: vscode.Uri): Promise<FileState> {
  try {
    return { kind: 'text', text: new TextDecoder().decode(await vscode.workspace.fs.readFile(uri)) };
  } catch (error) {
    if (error instanceof vscode.FileSystemError && error.code === 'FileNotFound') return { kind: 'missing' };
    return { kind: 'unreadable', reason: error instanceof Error ? error.message : String(error) };
  }
}
