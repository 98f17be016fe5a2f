// Answers what became of plans: the lenses of a record, and the page on the predictions of a folder.
import {
  CodeLensRefreshRequest,
  type CancellationToken,
  type CodeLens,
  type Connection,
} from 'vscode-languageserver';
import { createCache } from '../analysis/cache.ts';
import { predictionsIn } from '../analysis/predictions.ts';
import { findLenses, predictionsPage } from '../language/index.ts';
import type { Client } from './client.ts';
import type { Desk, Result } from './desk.ts';
import type { Files } from './files.ts';
import { predictionsRequest, type PredictionsParams } from './protocol.ts';

export interface OutcomeOptions {
  readonly connection: Connection;
  readonly files: Files;
  readonly desk: Desk;
  readonly client: () => Client;
  readonly answer: <T>(
    uri: string,
    token: CancellationToken,
    give: (result: Result) => T,
  ) => Promise<Awaited<T> | null>;
  readonly signalOf: (token: CancellationToken) => AbortSignal;
}

export function serveOutcome({ connection, files, desk, client, answer, signalOf }: OutcomeOptions): void {
  const cache = createCache();

  connection.onCodeLens(({ textDocument }, token) =>
    answer(textDocument.uri, token, async ({ uri, analysis }): Promise<CodeLens[]> => {
      const lessons = (await desk.lessons(uri, signalOf(token))) ?? [];
      return findLenses(analysis, lessons).map(({ range, title, opens }) => {
        const { opener } = client();
        // Without a command an editor shows the words alone, and a click does nothing.
        if (opens === undefined || opener === undefined) return { range, command: { title, command: '' } };
        return { range, command: { title, command: opener, arguments: [opens.uri, opens.range] } };
      });
    }),
  );
  connection.onRequest(
    predictionsRequest,
    async ({ folder }: PredictionsParams, token: CancellationToken): Promise<string> => {
      const { load, list } = files;
      const practice = { files, load, list, signal: signalOf(token), cache };
      return predictionsPage(await predictionsIn(folder, practice));
    },
  );
}

/** What became of a plan stands in other records than its own, so that lenses of one change with another. */
export async function refreshLenses(connection: Connection, { refreshesLenses }: Client): Promise<void> {
  if (refreshesLenses) await connection.sendRequest(CodeLensRefreshRequest.type);
}
