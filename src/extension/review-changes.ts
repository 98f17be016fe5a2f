// Tells of which open record the review may say something else now: it was analysed anew, or a review in its folder changed.
import * as vscode from 'vscode';
import type { Analyses } from './analysed.ts';

/** Milliseconds until the server has heard of a changed file too: the client gathers such news for a quarter of a second. */
const pause = 400;
const review = /\.review\.yaml$/;

export interface ReviewChanges extends vscode.Disposable {
  readonly onChanged: vscode.Event<vscode.Uri>;
}

export function listenForReviewChanges({ onAnalysed }: Analyses): ReviewChanges {
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
  const watcher = vscode.workspace.createFileSystemWatcher('**/*.review.yaml');
  const parts = vscode.Disposable.from(
    changed,
    watcher,
    watcher.onDidCreate(later),
    watcher.onDidChange(later),
    watcher.onDidDelete(later),
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
