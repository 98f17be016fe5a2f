// What client and server say to each other of sheets; plain names and shapes, nothing of either side.
import type { Sheet } from '../language/sheet.ts';

export type { Sheet };

/** Server to client, where the client says that it has sheets: an open file was analysed anew, so that its sheet is out of date. */
export const analysedNotification = 'swingwright/analysed';
export interface AnalysedParams {
  readonly uri: string;
}

/** Client to server: the sheet of an open record; null where the file is no record or is not open. */
export const sheetRequest = 'swingwright/sheet';
export interface SheetParams {
  /** The record's URI. */
  readonly uri: string;
}
