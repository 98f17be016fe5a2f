// What the page of the sheet and the extension say to each other: plain shapes, nothing of either side.
import type { Position, TextRange } from '../language/shapes.ts';
import type { Sheet } from '../language/sheet.ts';

export type ToSheet =
  /** Null where there is nothing to show. */
  | { readonly kind: 'show'; readonly uri: string; readonly sheet: Sheet | null }
  /** Where the cursor stands in the record. */
  | { readonly kind: 'cursor'; readonly position: Position };

export type FromSheet =
  | { readonly kind: 'ready' }
  /** Put the cursor there. */
  | { readonly kind: 'go'; readonly range: TextRange }
  /** Say why this quantity is what it is. */
  | { readonly kind: 'why'; readonly id: string };

/** What the page keeps while it is not shown, and what a restored panel is given. */
export interface SheetState {
  readonly uri: string;
  readonly scroll: number;
}
