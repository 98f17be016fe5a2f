// What client and server say to each other of sheets; plain names and shapes, nothing of either side.
import type { Sheet } from '../language/sheet.ts';
import type { Move, WhatIfAnswer } from '../language/what-if.ts';
import type { WritePlanResult } from './protocol.ts';

export type { Move, Sheet, WhatIfAnswer };

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
  /** Whose figures are drawn; null for the first one of which anything is known. */
  readonly checkpoint: string | null;
}

/** Client to server: what a record comes to if these quantities are moved; null where it says too little. */
export const whatIfRequest = 'swingwright/whatIf';
export interface WhatIfParams {
  /** The record's URI. */
  readonly uri: string;
  readonly moves: readonly Move[];
}

/** Client to server: the edits that put what was tried into the plan, as small as they can be. */
export const writeWhatIfRequest = 'swingwright/writeWhatIf';
export interface WriteWhatIfParams extends WhatIfParams {
  /** Stated faults, misses and goals, as a plan names them. */
  readonly because: readonly string[];
}

export interface WriteWhatIfResult extends Pick<WritePlanResult, 'version'> {
  /** None where the plan says so already; null where it is written in a way that nothing can be added to. */
  readonly edits: WritePlanResult['edits'] | null;
}
