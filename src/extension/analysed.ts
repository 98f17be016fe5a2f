// Passes on the server's word that a file was analysed anew, to everybody here who listens: the client itself tells only one.
import * as vscode from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';
import { analysedNotification, type AnalysedParams } from '../server/sheet-protocol.ts';

export interface Analyses extends vscode.Disposable {
  /** Tells the address of a file as the editor spells it. */
  readonly onAnalysed: vscode.Event<vscode.Uri>;
}

export function listenForAnalyses(client: BaseLanguageClient): Analyses {
  const analysed = new vscode.EventEmitter<vscode.Uri>();
  const listening = client.onNotification(analysedNotification, ({ uri }: AnalysedParams) =>
    analysed.fire(vscode.Uri.parse(uri)),
  );
  return {
    onAnalysed: analysed.event,
    dispose: () => {
      listening.dispose();
      analysed.dispose();
    },
  };
}
