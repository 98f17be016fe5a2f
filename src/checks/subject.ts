// What a check may look at: one document, the documents it refers to, and what the model made of it.
import type { Derivation } from '../model/value.ts';
import type {
  FaultFile,
  StudentFile,
  SwingwrightDocument,
  TemplateFile,
  WorkspaceFile,
  BagClub,
} from '../record/document.ts';
import type { Problem } from '../measure/measure.ts';
import type { Quantity } from '../registry/quantity.ts';

/** A reference followed: the document it names, or why it could not be followed (a problem on the reference). */
export interface Followed<T extends SwingwrightDocument> {
  readonly uri: string;
  readonly document: T;
}

export interface Subject {
  readonly uri: string;
  readonly document: SwingwrightDocument;
  /** Parse, shape, notation and reference problems of this document. */
  readonly problems: readonly Problem[];
  readonly student: Followed<StudentFile> | undefined;
  readonly club: BagClub | undefined;
  readonly template: Followed<TemplateFile> | undefined;
  /** The fault book and those that it extends, nearest first. */
  readonly faultBooks: readonly Followed<FaultFile>[];
  readonly workspace: Followed<WorkspaceFile> | undefined;
  /** Only for swing records. */
  readonly derivation: Derivation | undefined;
  /** A value as the coach reads it, in the quantity's unit and direction words: "8.9 cm ahead ± 2.1 cm". */
  readonly show: (quantity: Quantity, value: number, u?: number | null) => string;
}
