// Tells of which open record the review may say something else now: it was analysed anew, or a review in its folder changed.
import * as vscode from 'vscode';
import type { Analyses } from './analysed.ts';

/** Milliseconds in which changes of one folder are gathered. */
const pause = 100;
const review = /\.review\.yaml$/;

export interface ReviewChanges extends vscode.Disposable {
  readonly onChanged: vscode.Event<vscode.Uri>;
}

/** `onToldOf` is of files that changed outside the editor, once the server was told of it: asked before, it says what was. */
export function listenForReviewChanges(
  { onAnalysed }: Analyses,
  onToldOf: vscode.Event<vscode.Uri>,
): ReviewChanges {
  const changed = new vscode.EventEmitter<vscode.Uri>();
  const waiting = new Map<string, ReturnType<typeof setTimeout>>();
  const later = ({ path }: vscode.Uri): void => {
    const folder = folderOf(path);
    clearTimeout(waiting.get(folder));
    waiting.set(
      folder,
      setTimeout(() => {
        waiting.delete(folder);
        for (const { uri } of vscode.workspace.textDocuments)
          if (uri.path.endsWith('.swing.yaml') && folderOf(uri.path) === folder) changed.fire(uri);
      }, pause),
    );
  };
  const parts = vscode.Disposable.from(
    changed,
    onToldOf((uri) => {
      if (review.test(uri.path)) later(uri);
    }),
    vscode.workspace.onDidChangeTextDocument(({ document: { uri } }) => {
      if (review.test(uri.path)) later(uri);
    }),
    onAnalysed((uri) => {
      if (uri.path.endsWith('.swing.yaml')) changed.fire(uri);
    }),
  );
  return {
    onChanged: changed.event,
    dispose: () => {
      for (const timer of waiting.values()) clearTimeout(timer);
      parts.dispose();
    },
  };
}

function folderOf(path: string): string {
  return path.slice(0, path.lastIndexOf('/'));
}
