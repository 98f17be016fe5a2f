// Reads files through the editor, so that those on virtual file systems and other machines are read as well.
import * as vscode from 'vscode';
import type { FileState } from '../server/protocol.ts';

export async function readFile(uri: vscode.Uri): Promise<FileState> {
  try {
    return { kind: 'text', text: new TextDecoder().decode(await vscode.workspace.fs.readFile(uri)) };
  } catch (error) {
    if (error instanceof vscode.FileSystemError && error.code === 'FileNotFound') return { kind: 'missing' };
    return { kind: 'unreadable', reason: error instanceof Error ? error.message : String(error) };
  }
}
