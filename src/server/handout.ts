// Answers the handout of a record, as a page, and as PDF where there is something that prints.
import type { CancellationToken, Connection } from 'vscode-languageserver';
import { handoutFileName } from '../analysis/handout-name.ts';
import { handoutOf, type Handout } from '../analysis/handout.ts';
import { settle } from '../analysis/settle.ts';
import { createCache } from '../analysis/cache.ts';
import { handoutPage } from '../language/index.ts';
import type { Desk } from './desk.ts';
import type { Files } from './files.ts';
import {
  handoutRequest,
  type HandoutAnswer,
  type HandoutAudience,
  type HandoutParams,
} from './handout-protocol.ts';

/** A PDF as text, and whether its letters have every character. */
export type Print = (
  handout: Handout,
  audience: HandoutAudience,
) => Promise<{ readonly base64: string; readonly isWhole: boolean }>;

export interface HandoutOptions {
  readonly connection: Connection;
  readonly files: Files;
  readonly desk: Desk;
  readonly signalOf: (token: CancellationToken) => AbortSignal;
  readonly normal: (uri: string) => string;
  /** Undefined where there is no Node. */
  readonly print: Print | undefined;
}

export function serveHandouts({ connection, files, desk, signalOf, normal, print }: HandoutOptions): void {
  connection.onRequest(
    handoutRequest,
    async (
      { uri, audience, format, health }: HandoutParams,
      token: CancellationToken,
    ): Promise<HandoutAnswer> => {
      const signal = signalOf(token);
      const at = normal(uri);
      const lessons = await desk.lessons(at, signal);
      const analysis = await settle(at, files, files.load, signal, createCache());
      const result = handoutOf(analysis, lessons ?? [], { language: undefined, health });
      if (result.kind === 'refused') return result;
      const { handout } = result;
      const fileName = handoutFileName(handout, audience, format);
      const title = handout.name ?? fileName;
      if (format === 'html') return { kind: 'page', title, fileName, html: handoutPage(handout, audience) };
      if (print === undefined)
        return { kind: 'refused', words: 'Nothing prints PDF in a browser; expected HTML to be asked for.' };
      return { kind: 'pdf', title, fileName, ...(await print(handout, audience)) };
    },
  );
}
