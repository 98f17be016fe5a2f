// What client and server say to each other about handouts; plain names and shapes, nothing of either side.

export type HandoutFormat = 'html' | 'pdf';
export type HandoutAudience = 'student' | 'file';

/** Client to server: the handout of a record, as a page or as the bytes of a PDF. */
export const handoutRequest = 'swingwright/handout';
export interface HandoutParams {
  /** The record. */
  readonly uri: string;
  readonly audience: HandoutAudience;
  readonly format: HandoutFormat;
  /** Injuries are named only where somebody asks for them. */
  readonly health: 'named' | 'left out';
}

/** `fileName` is free of anything that could lead elsewhere. */
export type HandoutAnswer =
  | { readonly kind: 'page'; readonly title: string; readonly fileName: string; readonly html: string }
  | {
      readonly kind: 'pdf';
      readonly title: string;
      readonly fileName: string;
      readonly base64: string;
      /** Whether the letters of the page have every character. */
      readonly isWhole: boolean;
    }
  | { readonly kind: 'refused'; readonly words: string };
