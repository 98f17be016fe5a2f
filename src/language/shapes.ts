// The shapes that the language floor gives: plain objects, shaped as editors expect them; nothing of a protocol library.
import type { Position, TextRange } from '../analysis/result.ts';

export type { Position, TextRange };

/** 1 error, 2 warning, 3 information, 4 hint. */
export type DiagnosticSeverity = 1 | 2 | 3 | 4;

export interface Diagnostic {
  readonly range: TextRange;
  readonly severity: DiagnosticSeverity;
  readonly code: string;
  readonly codeDescription?: { readonly href: string };
  readonly source: 'swingwright';
  readonly message: string;
  readonly relatedInformation?: readonly {
    readonly location: { readonly uri: string; readonly range: TextRange };
    readonly message: string;
  }[];
}

export interface Markdown {
  readonly kind: 'markdown';
  readonly value: string;
}

export interface InlayHint {
  readonly position: Position;
  readonly label: string;
  readonly tooltip: Markdown;
  readonly paddingLeft: boolean;
  /** Accepting the hint writes it into the text. */
  readonly textEdits?: readonly Edit[];
}

export interface Hover {
  readonly contents: Markdown;
  readonly range: TextRange;
}

export interface DocumentSymbol {
  readonly name: string;
  readonly detail: string;
  /** As the language server protocol numbers them: namespace, field, string, number, array. */
  readonly kind: 3 | 8 | 15 | 16 | 18;
  readonly range: TextRange;
  readonly selectionRange: TextRange;
  readonly children: readonly DocumentSymbol[];
}

export interface DocumentLink {
  readonly range: TextRange;
  readonly target: string;
  readonly tooltip: string;
}

export interface Edit {
  readonly range: TextRange;
  readonly newText: string;
}

/** An edit with places for the reader to type over, for editors that know such edits. */
export interface SnippetEdit {
  readonly range: TextRange;
  readonly snippet: { readonly kind: 'snippet'; readonly value: string };
}

export interface CodeAction {
  readonly title: string;
  readonly kind: 'quickfix' | 'refactor.rewrite' | 'source.fixAll.swingwright';
  readonly isPreferred: boolean;
  readonly diagnostics: readonly Diagnostic[];
  readonly edit: {
    readonly documentChanges: readonly {
      readonly textDocument: { readonly uri: string; readonly version: number | null };
      readonly edits: readonly (Edit | SnippetEdit)[];
    }[];
  };
}

export interface CompletionItem {
  readonly label: string;
  /** As the language server protocol numbers them. */
  readonly kind: 3 | 6 | 10 | 11 | 12 | 15 | 17 | 18 | 20 | 24;
  readonly detail?: string;
  readonly documentation?: Markdown;
  readonly sortText: string;
  readonly filterText: string;
  /** 1 plain text, 2 a snippet. */
  readonly insertTextFormat: 1 | 2;
  /** As it is: the editor adds no indentation of its own. */
  readonly insertTextMode: 1;
  readonly textEdit: Edit;
  readonly preselect?: boolean;
  readonly command?: { readonly title: string; readonly command: string };
}

/** A place in a file, or all of it. */
export interface Location {
  readonly uri: string;
  readonly range: TextRange;
}

/** Where a name leads: to `targetSelectionRange`, with all of `targetRange` shown beside the text. */
export interface LocationLink {
  readonly originSelectionRange: TextRange;
  readonly targetUri: string;
  readonly targetRange: TextRange;
  readonly targetSelectionRange: TextRange;
}

/** 2 where a value is read or spoken of, 3 where it is written. */
export interface DocumentHighlight {
  readonly range: TextRange;
  readonly kind: 2 | 3;
}

export interface FoldingRange {
  readonly startLine: number;
  readonly endLine: number;
  readonly kind?: 'comment';
}

export interface SelectionRange {
  readonly range: TextRange;
  readonly parent?: SelectionRange;
}

export interface WorkspaceSymbol {
  readonly name: string;
  /** As the language server protocol numbers them: class, interface, constant, number, key, event. */
  readonly kind: 5 | 11 | 14 | 16 | 20 | 24;
  readonly location: Location;
  readonly containerName: string;
}

export interface WorkspaceEdit {
  readonly documentChanges: readonly {
    readonly textDocument: { readonly uri: string; readonly version: number | null };
    readonly edits: readonly Edit[];
  }[];
}
