// The shapes of the verdict on a whole record: which readings fit, which do not, which nobody can check.

/** One reading of a quantity: the first one of an id is 0. */
export interface ReadingRef {
  readonly id: string;
  readonly reading: number;
}

/** `unchecked`: the other entries say too little about it to call it right or wrong. */
export type Verdict = 'fits' | 'conflict' | 'unchecked';

export interface JudgedReading extends ReadingRef {
  /** SI, signed, as entered. */
  readonly value: number;
  /** Standard uncertainty, SI; widened where the reading is doubtful. */
  readonly u: number;
  /** What all other readings make of it; null where they say nothing. */
  readonly implied: number | null;
  readonly uImplied: number | null;
  /** Normalised residual: (value − implied) over the standard uncertainty of that difference; null where unchecked. */
  readonly w: number | null;
  /** Share of an error in this reading that shows in its residual, 0..1. */
  readonly redundancy: number;
  readonly verdict: Verdict;
}

export interface Conflict extends ReadingRef {
  readonly value: number;
  readonly u: number;
  /** What the readings that are left make of it. */
  readonly implied: number;
  readonly uImplied: number;
  readonly w: number;
  /** Ids whose entries carry the implied value, the strongest first. */
  readonly outvotedBy: readonly string[];
  /** Readings that would explain the misfit as well as this one: nobody can tell which of them is off. */
  readonly rivals: readonly ReadingRef[];
}

export interface PosteriorValue {
  readonly value: number;
  /** Standard uncertainty, SI, to first order, from everything that was left in. */
  readonly u: number;
}

export interface Agreement {
  /** `unsolved` where the model gives no number for what was entered: then nothing is judged. */
  readonly status: 'solved' | 'unsolved';
  /** Of the record as entered, before anything is taken out. */
  readonly chi2: number;
  /** Degrees of freedom; not a whole number where windows take part. */
  readonly dof: number;
  /** Probability of so large a χ² in a record that agrees with itself. */
  readonly p: number;
  /** The |w| above which a reading is in conflict in this record. */
  readonly threshold: number;
  readonly entries: readonly JudgedReading[];
  /**
   * Entered or not: whatever the entries, and not only windows, say something about. Entries that no step has to do with
   * are left out, since nothing but themselves speaks of them.
   */
  readonly posterior: ReadonlyMap<string, PosteriorValue>;
  /** The worst first. */
  readonly conflicts: readonly Conflict[];
}
