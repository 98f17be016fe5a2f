// Answers what a code, a word or a quantity means; knows of texts only what the desk has analysed.
import type { CancellationToken, Connection } from 'vscode-languageserver';
import type { Analysis } from '../analysis/result.ts';
import { explainWhy, explainWord, listCodes } from '../language/index.ts';
import type { Result } from './desk.ts';
import { codesRequest, explainRequest, whyRequest, type ExplainParams, type WhyParams } from './protocol.ts';

export interface ExplainOptions {
  readonly connection: Connection;
  readonly openUris: () => Iterable<string>;
  readonly answer: <T>(
    uri: string,
    token: CancellationToken,
    give: (result: Result) => T,
  ) => Promise<Awaited<T> | null>;
}

export function serveExplanations({ connection, openUris, answer }: ExplainOptions): void {
  const explainIn = ({ subject }: Analysis, word: string): string | null =>
    explainWord(word, subject) ?? null;
  /** What only a workspace knows is told by the first open file that knows it. */
  connection.onRequest(explainRequest, async ({ code }: ExplainParams, token: CancellationToken) => {
    const known = explainWord(code);
    if (known !== undefined) return known;
    for (const uri of openUris()) {
      const page = await answer(uri, token, ({ analysis }) => explainIn(analysis, code));
      if (page !== null) return page;
    }
    return null;
  });
  connection.onRequest(whyRequest, ({ uri, id }: WhyParams, token: CancellationToken) =>
    answer(uri, token, ({ analysis }) => explainWhy(analysis, id) ?? explainIn(analysis, id)),
  );
  connection.onRequest(codesRequest, () => listCodes());
}
