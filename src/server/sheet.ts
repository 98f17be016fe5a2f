// Answers the sheet of an open record, and what would be if it were changed; knows of texts only what the desk has analysed.
import type { CancellationToken } from 'vscode-languageserver';
import { sheetOf, whatIf, whatIfEdits } from '../language/index.ts';
import type { OutcomeOptions } from './outcome.ts';
import {
  sheetRequest,
  whatIfRequest,
  writeWhatIfRequest,
  type Sheet,
  type SheetParams,
  type WhatIfAnswer,
  type WhatIfParams,
  type WriteWhatIfParams,
  type WriteWhatIfResult,
} from './sheet-protocol.ts';

export function serveSheet({ connection, answer }: Pick<OutcomeOptions, 'connection' | 'answer'>): void {
  connection.onRequest(sheetRequest, ({ uri, checkpoint }: SheetParams, token: CancellationToken) =>
    answer(uri, token, ({ analysis }): Sheet | null => sheetOf(analysis, checkpoint) ?? null),
  );
  connection.onRequest(whatIfRequest, ({ uri, moves }: WhatIfParams, token: CancellationToken) =>
    answer(uri, token, ({ analysis }): WhatIfAnswer | null => whatIf(analysis, moves)),
  );
  connection.onRequest(
    writeWhatIfRequest,
    ({ uri, moves, because }: WriteWhatIfParams, token: CancellationToken) =>
      answer(uri, token, ({ analysis, version }): WriteWhatIfResult => {
        return { version, edits: whatIfEdits(analysis, moves, because) ?? null };
      }),
  );
}
