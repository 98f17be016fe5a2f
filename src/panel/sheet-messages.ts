// What the page of the sheet and the extension say to each other: plain shapes, nothing of either side.
import type { Position, TextRange } from '../language/shapes.ts';
import type { Sheet } from '../language/sheet.ts';
import type { Move, WhatIfAnswer } from '../language/what-if.ts';

export type ToSheet =
  /** Null where there is nothing to show. */
  | { readonly kind: 'show'; readonly uri: string; readonly sheet: Sheet | null }
  /** Where the cursor stands in the record. */
  | { readonly kind: 'cursor'; readonly position: Position }
  /** To the next checkpoint, or the one before. */
  | { readonly kind: 'step'; readonly by: 1 | -1 }
  /** One for each question, in order; undefined where the record changed meanwhile. */
  | { readonly kind: 'whatIf'; readonly answer: WhatIfAnswer | null | undefined }
  /** What came of writing what was tried, and whether that can be undone from here. */
  | { readonly kind: 'written'; readonly words: string; readonly canUndo: boolean };

export type FromSheet =
  /** `checkpoint` is the one whose figures are shown, or null for the first. */
  | { readonly kind: 'ready'; readonly checkpoint: string | null }
  | { readonly kind: 'checkpoint'; readonly checkpoint: string | null }
  /** Put the cursor there; with `focus` what is typed next goes there too. */
  | { readonly kind: 'go'; readonly range: TextRange; readonly focus: boolean }
  /** Say why this quantity is what it is. */
  | { readonly kind: 'why'; readonly id: string }
  | { readonly kind: 'whatIf'; readonly moves: readonly Move[] }
  | { readonly kind: 'write'; readonly moves: readonly Move[]; readonly because: readonly string[] }
  /** Undo what was written last. */
  | { readonly kind: 'undo' };

export type Tab = 'swing' | 'what-if';

/** What the page keeps while it is not shown, and what a restored panel is given. */
export interface SheetState {
  readonly uri: string;
  readonly scroll: number;
  readonly tab: Tab;
  readonly checkpoint: string | null;
  /** What was picked to be moved, and to where; null for where it is. */
  readonly picks: readonly Pick[];
  /** The parts of the overview that are open. */
  readonly open: readonly OverviewPart[];
}

export type OverviewPart = 'findings' | 'plan';

export interface Pick {
  readonly id: string;
  readonly value: number | null;
}
