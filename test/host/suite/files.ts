// Files of the open folder, and waiting for what VS Code shows of them; for tests inside VS Code.
import assert from 'node:assert/strict';
import * as vscode from 'vscode';

/** A file in a folder that a suite has for itself. */
export function inTestFolder(folderName: string, name: string): vscode.Uri {
  const [folder] = vscode.workspace.workspaceFolders ?? [];
  assert.ok(folder, 'a folder is open');
  return vscode.Uri.joinPath(folder.uri, folderName, name);
}

export async function writeFile(uri: vscode.Uri, text: string): Promise<vscode.Uri> {
  await vscode.workspace.fs.writeFile(uri, new TextEncoder().encode(text));
  return uri;
}

/** Shorter than a test's own limit: a wait that outlived its test would act on the page of the next one. */
const WAIT_LIMIT_MS = 60_000;

/** What `look` gives, once it gives something; fails where that is in vain. */
export async function until<T>(
  look: () => T | undefined | false | Promise<T | undefined | false>,
): Promise<T> {
  const end = Date.now() + WAIT_LIMIT_MS;
  while (Date.now() < end) {
    const seen = await look();
    if (seen) return seen;
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
  throw new Error(`Waited ${WAIT_LIMIT_MS / 1000} s in vain for: ${String(look)}`);
}
