// What a check may look at: one document, the documents it refers to, and what the model made of it.
import type { Agreement } from '../model/agreement-result.ts';
import type { Forecast } from '../judgement/forecast.ts';
import type { CompiledCheck } from '../judgement/own.ts';
import type { Relation } from '../model/own-model.ts';
import type { ProofOutcome } from '../judgement/outcome.ts';
import type { Judgement } from '../judgement/judgement.ts';
import type { ShotSummary } from '../model/shots.ts';
import type { Derivation } from '../model/value.ts';
import type {
  FaultFile,
  ReviewFile,
  StudentFile,
  SwingRecord,
  SwingwrightDocument,
  TemplateFile,
  WorkspaceFile,
  BagClub,
} from '../record/document.ts';
import type { FileShot, ShotsFile } from '../record/shots-file.ts';
import type { Problem } from '../measure/measure.ts';
import type { Quantity } from '../registry/quantity.ts';
import type { Registry } from '../registry/registry.ts';

/** A reference followed: the document it names, or why it could not be followed (a problem on the reference). */
export interface Followed<T extends SwingwrightDocument> {
  readonly uri: string;
  readonly document: T;
}

/** The shots of a record, wherever they stand, and what they say together. */
export interface SubjectShots {
  /** The file that holds them: the record itself where they are a list in it. */
  readonly uri: string;
  /** As read, where they stand in a file of their own. */
  readonly file: ShotsFile | undefined;
  readonly shots: readonly FileShot[];
  /** Its places are those in `shots`; undefined of no shots. */
  readonly summary: ShotSummary | undefined;
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
  /** Only for swing records: the review of the same name beside it. */
  readonly review: Followed<ReviewFile> | undefined;
  /** Only for reviews: the record that it is of, or where that is not there the one of the same name. */
  readonly record: Followed<SwingRecord> | undefined;
  /** What can be measured: the built-in registry with the workspace's own. */
  readonly registry: Registry;
  /** Checks, relations and derived quantities of the workspace's own. */
  readonly own: {
    readonly checks: readonly CompiledCheck[];
    readonly relations: readonly Relation[];
    /** What each derived quantity is computed from, by full ids. */
    readonly derived: ReadonlyMap<string, readonly string[]>;
  };
  /** Only for swing records that have some, in a list or in a file that is there. */
  readonly shots: SubjectShots | undefined;
  /** Only for swing records. */
  readonly derivation: Derivation | undefined;
  /** Only for swing records. */
  readonly agreement: Agreement | undefined;
  /** The coach's faults, judged; only for swing records with a fault book. */
  readonly judgement: Judgement | undefined;
  /** What the plan leads to and how the goals stand; only for swing records with a plan. */
  readonly forecast: Forecast | undefined;
  /** How the proofs of the plan stand in this record itself, in the order of those that can be read; empty of all but swing records. */
  readonly proofs: readonly ProofOutcome[];
  /** A value as the coach reads it, in the quantity's unit and direction words: "8.9 cm ahead ± 2.1 cm". */
  readonly show: (quantity: Quantity, value: number, u?: number | null) => string;
}
