// The project's own files as the tests find them: an extension in the browser's worker is not seen from here.
import * as vscode from 'vscode';

export function projectFile(path: string): vscode.Uri {
  return vscode.Uri.joinPath(vscode.Uri.file(process.env['SWINGWRIGHT_TEST_ROOT']!), path);
}

export async function projectText(path: string): Promise<string> {
  return new TextDecoder().decode(await vscode.workspace.fs.readFile(projectFile(path)));
}
