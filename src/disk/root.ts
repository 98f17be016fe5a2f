// Says where a file stands in its repository or practice, the same from whatever folder one asks; reads no file.
import { stat } from 'node:fs/promises';
import { dirname, join, relative, sep } from 'node:path';
import { URI } from 'vscode-uri';

/** From the folder with the repository, else from the outermost one with a workspace file; else the file's name alone. */
export async function pathFromRoot(uri: string): Promise<string> {
  const file = URI.parse(uri).fsPath;
  let workspace: string | undefined;
  for (let folder = dirname(file); ; folder = dirname(folder)) {
    // In a worktree or a submodule it is a file.
    if (await isThere(join(folder, '.git'))) return from(folder, file);
    if (await isThere(join(folder, 'swingwright.yaml'))) workspace = folder;
    if (dirname(folder) === folder) return from(workspace ?? dirname(file), file);
  }
}

function from(folder: string, file: string): string {
  return relative(folder, file).split(sep).join('/');
}

function isThere(path: string): Promise<boolean> {
  return stat(path).then(
    () => true,
    () => false,
  );
}
