// The shapes of a comparison of two records, or of a record and a template: plain data in SI; says nothing in words and compares nothing.
import type { Outcome } from '../judgement/outcome.ts';
import type { Standing } from '../judgement/goal-standing.ts';
import type { Verdict } from '../judgement/verdict.ts';
import type { WindowState } from '../judgement/template.ts';
import type { TemplateWindow } from '../record/document.ts';
import type { Quantity } from '../registry/quantity.ts';
import type { Finding } from './result.ts';

export type ChangeState = 'new' | 'gone' | 'changed';

/** A number as it stands in one record. */
export interface Figure {
  /** SI, signed. */
  readonly value: number;
  /** Standard uncertainty, SI; null where none can be given. */
  readonly u: number | null;
  readonly kind: 'entered' | 'derived' | 'expected';
  /** Where a wind comes from: radians from the target line, and the coach's word for it. */
  readonly from?: { readonly bearing: number; readonly word: string } | undefined;
}

/**
 * Whether a difference d is larger than measuring one and the same thing twice explains: |d| > k u, with k = 1.96 and
 * u = √(u₁² + u₂²) (JCGM 100:2008, 5.1.2, for a difference of independent estimates). `not known` where a value or an uncertainty
 * is missing. What both records share, such as the club's loft, would make u smaller: so a computed number is called larger too
 * seldom rather than too often.
 */
export type Size = 'larger' | 'within' | 'not known';

export interface Difference {
  /** The second less the first, SI; undefined where one of them is missing. */
  readonly value: number | undefined;
  /** Standard uncertainty, SI. */
  readonly u: number | undefined;
  readonly size: Size;
  /** Of two winds from different sides: the value is how long the arrow is that leads from the one wind's arrow to the other's. */
  readonly isTurned?: true;
}

/** What differs about an entry, beside that it is there at all. */
export type Aspect =
  'value' | 'uncertainty' | 'side of the wind' | 'method' | 'doubt' | 'note' | 'frame' | 'readings';

export interface QuantityChange {
  readonly quantity: Quantity;
  readonly state: ChangeState;
  /** The number that stands in each record, entered or not. */
  readonly before: Figure | undefined;
  readonly after: Figure | undefined;
  readonly difference: Difference;
  /** None where the entry is new or gone, and none of a computed number. */
  readonly aspects: readonly Aspect[];
}

/** A word of the record's head, or the hand, as written. */
export interface WordChange {
  readonly of: 'student' | 'hand' | 'date' | 'club' | 'template' | 'fault book' | 'shots' | 'shape';
  readonly before: string | undefined;
  readonly after: string | undefined;
}

export interface FindingChange {
  readonly state: 'new' | 'gone';
  readonly finding: Finding;
}

export interface Judged {
  readonly verdict: Verdict;
  readonly probability: number | undefined;
}

export interface FaultChange {
  readonly fault: string;
  readonly title: string;
  readonly at: string | undefined;
  /** Whether it is stated in one of the records only; `changed` where both state it and the verdict is another. */
  readonly state: ChangeState;
  /** What the numbers of each record say of it, stated there or not; undefined where no book of that record knows it. */
  readonly before: Judged | undefined;
  readonly after: Judged | undefined;
}

export interface MissChange {
  readonly miss: string;
  readonly state: 'new' | 'gone';
}

export interface GoalChange {
  /** `carry`, `finish`, `contact`, …. */
  readonly key: string;
  readonly quantity: Quantity;
  /** `same` where only what is known of it may differ. */
  readonly state: ChangeState | 'same';
  readonly before: Standing | undefined;
  readonly after: Standing | undefined;
}

/** A planned change, in one line. */
export interface PlanChange {
  readonly change: string;
  readonly state: ChangeState;
  readonly before: string | undefined;
  readonly after: string | undefined;
}

export interface ShotsOf {
  readonly count: number;
  readonly mean: number;
  /** Standard uncertainty of the mean; undefined below four shots. */
  readonly u: number | undefined;
  /** Spread of one shot. */
  readonly sd: number | undefined;
}

export interface ShotsChange {
  readonly quantity: Quantity;
  readonly state: ChangeState;
  readonly before: ShotsOf | undefined;
  readonly after: ShotsOf | undefined;
  /** Of the means. */
  readonly difference: Difference;
}

/** The plan of the earlier record held against the later one. */
export interface HeldBetween {
  readonly plan: 'first' | 'second';
  readonly outcome: Outcome;
}

/** Another value that a signature stands under, as the record writes it; no value of a text that YAML cannot read. */
export interface SignedChange {
  /** Keys and names joined by points: `notes`, `faults.hangs-back.note`. */
  readonly key: string;
  readonly state: ChangeState;
  readonly before: string | undefined;
  readonly after: string | undefined;
}

export interface Comparison {
  readonly words: readonly WordChange[];
  /** Entries of the record, and of student and club as it uses them, in the order of the registry. */
  readonly entries: readonly QuantityChange[];
  /** How many entries say the same in both. */
  readonly sameEntries: number;
  /** Numbers that neither record enters. */
  readonly computed: readonly QuantityChange[];
  readonly findings: readonly FindingChange[];
  readonly faults: readonly FaultChange[];
  readonly misses: readonly MissChange[];
  /** All goals of both, changed or not. */
  readonly goals: readonly GoalChange[];
  readonly plan: readonly PlanChange[];
  readonly predicted: readonly QuantityChange[];
  readonly shots: readonly ShotsChange[];
  /** What nothing of the above tells, though a sign-off hangs on it. */
  readonly signed: readonly SignedChange[];
  /** Undefined unless one lesson with a plan came before the other, of the same student and with the same club. */
  readonly held: HeldBetween | undefined;
  /** Whether nothing at all differs. */
  readonly isSame: boolean;
}

export interface WindowRow {
  readonly window: TemplateWindow;
  /** SI, as this player sees left and right; undefined while the hand is not known and matters. */
  readonly edges: { readonly from: number; readonly to: number } | undefined;
  readonly figure: Figure | undefined;
  /** In standard uncertainties; 0 inside. */
  readonly outsideBy: number | undefined;
  readonly state: WindowState;
}

export interface TemplateComparison {
  readonly title: string | undefined;
  readonly rows: readonly WindowRow[];
  /** Whether the template is for clubs of another kind. */
  readonly isForOtherClub: boolean;
}
