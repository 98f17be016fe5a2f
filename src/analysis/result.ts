// What the analysis gives: plain data that editor, command line and drawings read; no text is parsed from here on.
import type { Fix, Severity } from '../checks/check.ts';
import type { Subject } from '../checks/subject.ts';
import type { Account } from '../model/account.ts';
import type { Agreement } from '../model/agreement-result.ts';
import type { Derivation } from '../model/value.ts';
import type { SwingwrightDocument } from '../record/document.ts';

/** Zero-based, UTF-16, as in LSP. */
export interface Position {
  readonly line: number;
  readonly character: number;
}
export interface TextRange {
  readonly start: Position;
  readonly end: Position;
}

export interface Finding {
  readonly code: string;
  readonly severity: Severity;
  readonly message: string;
  readonly range: TextRange;
  readonly related: readonly { readonly uri: string; readonly range: TextRange; readonly message: string }[];
  readonly fixes: readonly Fix[];
}

/** What is known of a file: its text, or why there is none. Undefined in a snapshot means "not asked yet". */
export type FileState =
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'missing' }
  | { readonly kind: 'unreadable'; readonly reason: string };

/** Files by URI as they stand at one moment; pure look-up. */
export interface Snapshot {
  readonly file: (uri: string) => FileState | undefined;
}

export interface Analysis {
  readonly uri: string;
  readonly document: SwingwrightDocument;
  readonly subject: Subject;
  readonly derivation: Derivation | undefined;
  readonly agreement: Agreement | undefined;
  /** What both came from, for whoever explains a number or asks for a window. */
  readonly account: Account | undefined;
  readonly findings: readonly Finding[];
  /** Files that were looked for and are not yet in the snapshot: load them and analyse again. */
  readonly wanted: readonly string[];
  /** Every file that this result depends on, itself first: a change of one of them calls for a new analysis. */
  readonly used: readonly string[];
}
