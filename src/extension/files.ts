// Finds and reads files through the editor, so that those on virtual file systems and other machines are read as well.
import * as vscode from 'vscode';
import { filePatterns, type FileState } from '../server/protocol.ts';

/** URIs of the files of these patterns at or below a folder, sorted; dependencies and what git keeps are left out. */
export async function listFiles(folder: vscode.Uri): Promise<readonly string[]> {
  // One pattern at a time: alternatives within alternatives find nothing.
  const found = await Promise.all(
    filePatterns.map((pattern) =>
      vscode.workspace.findFiles(new vscode.RelativePattern(folder, pattern), '**/{node_modules,.git}/**'),
    ),
  );
  return [...new Set(found.flat().map((uri) => uri.toString()))].sort();
}

export async function readFile(uri: vscode.Uri): Promise<FileState> {
  try {
    return { kind: 'text', text: new TextDecoder().decode(await vscode.workspace.fs.readFile(uri)) };
  } catch (error) {
    if (error instanceof vscode.FileSystemError && error.code === 'FileNotFound') return { kind: 'missing' };
    return { kind: 'unreadable', reason: error instanceof Error ? error.message : String(error) };
  }
}

/** The folder that is open, or the one that is picked of several; `none` is said where there is none. */
export async function chooseFolder(none: string): Promise<vscode.Uri | undefined> {
  const folders = vscode.workspace.workspaceFolders ?? [];
  if (folders.length > 1) return (await vscode.window.showWorkspaceFolderPick())?.uri;
  if (folders[0] === undefined) void vscode.window.showInformationMessage(none);
  return folders[0]?.uri;
}
