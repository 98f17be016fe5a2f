// The shape of a check and of a finding; one file beside this one for each code, all listed in table.ts.
import type { Span } from '../measure/measure.ts';
import type { FileKind, Silence } from '../record/document.ts';
import type { Subject } from './subject.ts';

export type Severity = 'error' | 'warning' | 'information' | 'hint';

/** A minimal edit: nothing outside `span` of the document at `uri` changes. */
export interface TextEdit {
  readonly uri: string;
  readonly span: Span;
  readonly text: string;
}

export interface Fix {
  /** An imperative: "Write the unit out: 47 cm". */
  readonly title: string;
  readonly edits: readonly TextEdit[];
  /** True where it is the one obvious mend. */
  readonly preferred: boolean;
}

/** A finding in offsets of its document's text; analysis turns offsets into lines and columns. */
export interface RawFinding {
  readonly span: Span;
  /** One sentence: what was found and what was expected, both with units. */
  readonly message: string;
  readonly related?: readonly { readonly uri: string; readonly span: Span; readonly message: string }[];
  readonly fixes?: readonly Fix[];
}

/** What a check may know of the run that it is part of; only the checks about silences and codes look at it. */
export interface Run {
  /** The codes of all checks, in the table's order. */
  readonly codes: readonly string[];
  /** The codes that neither a comment nor a workspace can turn off. */
  readonly lasting: ReadonlySet<string>;
  /** The silences that have silenced a finding of a check earlier in the table. */
  readonly silenced: ReadonlySet<Silence>;
  /** How many findings of checks earlier in the table stand. */
  readonly standing: number;
}

/** More findings than this are not told of one file: nobody reads them, and an editor would choke on them. */
export const mostFindings = 1000;

export interface Check {
  /** Stable, kebab-case, named for what is wrong. */
  readonly code: string;
  readonly severity: Severity;
  readonly title: string;
  /** Markdown: what it means, why it matters, an example that raises it and one that does not, the source. */
  readonly explanation: string;
  readonly kinds: readonly FileKind[] | 'all';
  /** True where the text cannot be read as meant, so that no comment and no workspace may turn it off. */
  readonly lasting?: true;
  readonly find: (subject: Subject, run: Run) => readonly RawFinding[];
}
