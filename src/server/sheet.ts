// Answers the sheet of an open record; knows of texts only what the desk has analysed.
import type { CancellationToken } from 'vscode-languageserver';
import { sheetOf } from '../language/index.ts';
import type { OutcomeOptions } from './outcome.ts';
import { sheetRequest, type Sheet, type SheetParams } from './sheet-protocol.ts';

export function serveSheet({ connection, answer }: Pick<OutcomeOptions, 'connection' | 'answer'>): void {
  connection.onRequest(sheetRequest, ({ uri }: SheetParams, token: CancellationToken) =>
    answer(uri, token, ({ analysis }): Sheet | null => sheetOf(analysis) ?? null),
  );
}
