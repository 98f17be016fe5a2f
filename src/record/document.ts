// The shapes of the six kinds of file once read: typed values with the place of each in the text; no checking of golf here.
import type { Measure, Problem, Span, Window } from '../measure/measure.ts';
import type { BodyPlace } from '../registry/body.ts';
import type { Method, Quantity } from '../registry/quantity.ts';
import type { OwnAdditions } from './own-document.ts';
import type { Fault } from './fault.ts';
import type { Remark, Signature } from './remark.ts';

export type { Remark, Signature } from './remark.ts';

export type {
  BelievedEffect,
  BelievedSize,
  Caution,
  Evidence,
  Fault,
  FaultChange,
  SizePer,
  Step,
} from './fault.ts';

export type FileKind = 'swing' | 'student' | 'template' | 'faults' | 'review' | 'workspace';

/** A word of the user's and where it stands. */
export interface Located<T> {
  readonly value: T;
  readonly span: Span;
}

/** One measurement inside an entry: short form, long form, or one item of a list. */
export interface Reading {
  readonly measure: Measure;
  readonly doubtful: boolean;
  readonly note: string | undefined;
  readonly seen: string | undefined;
  readonly form: 'short' | 'long';
  /** The whole of this reading in the text. */
  readonly span: Span;
}

/** Everything that a record says of one quantity; `readings` is empty while there is no value yet. */
export interface Entry {
  readonly id: string;
  readonly quantity: Quantity;
  readonly readings: readonly Reading[];
  readonly keySpan: Span;
  /** From the value's first to its last character; where there is no value, the empty place after the colon. */
  readonly valueSpan: Span;
}

export type RecordCode =
  | 'yaml-syntax'
  | 'duplicate-key'
  | 'too-many-aliases'
  | 'too-deep'
  | 'file-too-large'
  | 'unreadable-characters'
  | 'unknown-key'
  | 'missing-key'
  | 'missing-uncertainty'
  | 'wrong-shape'
  | 'unknown-word'
  | 'impossible-date'
  | 'side-against-part'
  | 'unsupported-version'
  | 'unknown-body-part'
  | 'no-value-yet'
  | 'bare-number'
  | 'bare-direction';

/** A silencing comment: `# accept[code]: reason`, good for its own line, or for the next one when it stands alone. */
export interface Silence {
  readonly code: Located<string>;
  readonly reason: string;
  readonly span: Span;
  /** Zero-based line that it covers. */
  readonly line: number;
}

/** A miss that the student complains of. */
export interface StatedMiss {
  readonly miss: Located<string>;
  readonly note: string | undefined;
}

/** Pain, or what to be careful with. */
export interface Injury {
  readonly part: Located<string>;
  /** Undefined where the words name no known part. */
  readonly place: BodyPlace | undefined;
  /** As written: a year, a month, a day, or words. */
  readonly since: Located<string> | undefined;
  readonly note: string | undefined;
}

export interface StatedFault {
  readonly fault: Located<string>;
  readonly at: Located<string> | undefined;
  readonly note: string | undefined;
  readonly span: Span;
}

export interface Goal {
  /** All that it names, whether it can be read or not: `shape`, `carry`, `contact` and so on. */
  readonly keys: readonly string[];
  readonly shape: Located<string> | undefined;
  /** The name of the club that it is for, in a student's file. */
  readonly club: Located<string> | undefined;
  /** By flight key (`start`, `finish`, `carry`, …): a number or a window. */
  readonly targets: ReadonlyMap<
    string,
    {
      readonly quantity: Quantity;
      readonly target: Measure | Window;
      readonly keySpan: Span;
      readonly span: Span;
    }
  >;
  /** What is wanted of the strike, in words. */
  readonly contact: Located<string> | undefined;
  readonly span: Span;
}

export interface PlannedChange {
  readonly change: Located<string> | undefined;
  /** The one that it names; undefined where there is none. */
  readonly quantity: Quantity | undefined;
  readonly to: { readonly target: Measure | Window; readonly span: Span } | undefined;
  readonly because: readonly Located<string>[];
  readonly proof: Located<string> | undefined;
  /** What it shall feel like, said to the student. */
  readonly feel: string | undefined;
  readonly note: string | undefined;
  readonly span: Span;
}

/** A node of the outline: a key, its value in one line, its place. */
export interface OutlineNode {
  readonly name: string;
  readonly detail: string;
  readonly span: Span;
  readonly nameSpan: Span;
  readonly children: readonly OutlineNode[];
}

interface DocumentBase {
  readonly text: string;
  readonly problems: readonly Problem[];
  readonly silences: readonly Silence[];
  readonly outline: readonly OutlineNode[];
}

export interface SwingRecord extends DocumentBase {
  readonly kind: 'swing';
  readonly student: Located<string> | undefined;
  readonly date: Located<string> | undefined;
  readonly club: Located<string> | undefined;
  /** Of what is handed to the student, as written. */
  readonly language: Located<string> | undefined;
  readonly template: Located<string> | undefined;
  readonly faultsFrom: Located<string> | undefined;
  /** The path of a shots file, where `shots` is one. */
  readonly shotsFile: Located<string> | undefined;
  /** Entries of conditions, checkpoints, delivery, ground, strike and flight, by full id, in the order written. */
  readonly entries: ReadonlyMap<string, Entry>;
  /** One map a shot, where `shots` is a list in the record. */
  readonly shots: readonly ReadonlyMap<string, Entry>[];
  /** The word written at flight.shape ("draw"), if any. */
  readonly shape: Located<string> | undefined;
  readonly faults: readonly StatedFault[];
  readonly misses: readonly StatedMiss[];
  readonly goals: readonly Goal[];
  readonly plan: readonly PlannedChange[];
  /** What the plan as a whole leads to at the next record, by full id; its method says where it comes from, `model` or `belief`. */
  readonly predicted: ReadonlyMap<string, Entry>;
}

export interface BagClub {
  readonly name: Located<string>;
  readonly kind: Located<string> | undefined;
  /** Entries with ids `club.loft`, `club.head_mass`, … */
  readonly entries: ReadonlyMap<string, Entry>;
}

export interface StudentFile extends DocumentBase {
  readonly kind: 'student';
  readonly name: Located<string> | undefined;
  readonly language: Located<string> | undefined;
  readonly hand: Located<'left' | 'right'> | undefined;
  readonly bodyTable: Located<string> | undefined;
  /** A day of the calendar or a year, as written. */
  readonly born: Located<string> | undefined;
  readonly injuries: readonly Injury[];
  /** Entries with ids `student.stature`, `student.mass`. */
  readonly entries: ReadonlyMap<string, Entry>;
  readonly bag: ReadonlyMap<string, BagClub>;
  readonly goals: readonly Goal[];
  /** Anything else, in the coach's words. */
  readonly notes: string | undefined;
}

export interface TemplateWindow {
  readonly quantity: Quantity;
  readonly window: Window;
  /** As written; undefined where nothing is, or another word. */
  readonly strict: 'gentle' | 'firm' | undefined;
  readonly source: string | undefined;
  readonly keySpan: Span;
  readonly span: Span;
}

export interface TemplateFile extends DocumentBase {
  readonly kind: 'template';
  readonly title: string | undefined;
  readonly clubs: readonly Located<string>[];
  readonly windows: ReadonlyMap<string, TemplateWindow>;
}

export interface FaultFile extends DocumentBase {
  readonly kind: 'faults';
  readonly faults: ReadonlyMap<string, Fault>;
  /** Another fault book that this one extends. */
  readonly extends: Located<string> | undefined;
}

export interface ReviewFile extends DocumentBase {
  readonly kind: 'review';
  readonly of: Located<string> | undefined;
  readonly remarks: readonly Remark[];
  readonly signatures: readonly Signature[];
}

export type SeverityName = 'error' | 'warning' | 'information' | 'hint' | 'off';

/** What a column of a file of shots holds. */
export type ShotColumn =
  | { readonly kind: 'ignored' }
  | {
      readonly kind: 'quantity';
      readonly quantity: Quantity;
      /** The unit of its bare numbers; the quantity's own where undefined. */
      readonly unit: string | undefined;
      readonly by: string | undefined;
    };

/** How a workspace reads files of shots. */
export interface ShotColumns {
  /** The method of all columns that name none. */
  readonly by: string | undefined;
  /** By the words in the first line, as written in the workspace file. */
  readonly named: ReadonlyMap<string, ShotColumn>;
}

/** Multipliers of the published drag and lift coefficients, fitted to a workspace's own shots; plain numbers. */
export interface WrittenCalibration {
  readonly drag: { readonly value: number; readonly u: number };
  /** Undefined where lift could not be told from drag. */
  readonly lift: { readonly value: number; readonly u: number } | undefined;
  /** Of drag and lift; 0 where it is not written. */
  readonly correlation: number;
  readonly shots: number | undefined;
  /** The ball speeds that it was fitted to, m/s. */
  readonly ballSpeed: { readonly from: number; readonly to: number } | undefined;
  readonly keySpan: Span;
  /** The whole value, for an edit that replaces it. */
  readonly span: Span;
}

export interface WorkspaceFile extends DocumentBase {
  readonly kind: 'workspace';
  /** How many standard uncertainties a written ± stands for; 1 unless stated. */
  readonly coverage: number;
  /** The most changes that a plan may have. */
  readonly mostChanges: number | undefined;
  readonly language: Located<string> | undefined;
  readonly severities: ReadonlyMap<string, { readonly severity: SeverityName; readonly keySpan: Span }>;
  /** Own default standard uncertainties: method → dimension → SI value. */
  readonly methods: ReadonlyMap<string, Method>;
  /** Quantities, relations, checks and shown units of its own. */
  readonly own: OwnAdditions;
  readonly shotColumns: ShotColumns;
  readonly calibration: WrittenCalibration | undefined;
}

export type SwingwrightDocument =
  SwingRecord | StudentFile | TemplateFile | FaultFile | ReviewFile | WorkspaceFile;
