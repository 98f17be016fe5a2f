// The shapes that the forward graph takes and gives: plain SI numbers by quantity id, with where each came from.
import type { BodyTableName } from '../physics/body-tables.ts';
import type { Registry } from '../registry/registry.ts';
import type { OwnModel } from './own-model.ts';
import type { WeighedReading } from './combine.ts';

/** One entered quantity as the model sees it: SI, signed, all readings combined. */
export interface Observation {
  readonly id: string;
  readonly value: number;
  /** Standard uncertainty, SI, > 0. */
  readonly u: number;
}

/** Multipliers of published drag and lift, fitted to a workspace's own shots. */
export interface Calibration {
  readonly drag: { readonly value: number; readonly u: number };
  /** Undefined where lift could not be told from drag and is left as published. */
  readonly lift: { readonly value: number; readonly u: number } | undefined;
  readonly correlation: number;
  /** How many shots; undefined where that is not known. */
  readonly shots: number | undefined;
  /** The ball speeds of those shots, m/s. */
  readonly ballSpeed: { readonly from: number; readonly to: number } | undefined;
}

export interface Situation {
  /** Undefined where nobody said: then nothing in which the hand matters is computed. */
  readonly hand: 'left' | 'right' | undefined;
  /** Kind of the club's head; undefined where no club is known. */
  readonly clubKind: string | undefined;
  /** Where the wind comes from, radians counter-clockwise from the target line; undefined in still air. */
  readonly windBearing: number | undefined;
  readonly observations: ReadonlyMap<string, Observation>;
  /** Every reading of each id, in the order of the record; an id without any is one reading, its observation. */
  readonly readings?: ReadonlyMap<string, readonly WeighedReading[]>;
  /** The published table of segment masses that suits the student; Winter's where left out. */
  readonly bodyTable?: BodyTableName | undefined;
  readonly calibration?: Calibration | undefined;
  /** What the ids stand for; the built-in registry where left out. */
  readonly registry?: Registry | undefined;
  /** Steps and relations of the workspace's own; none where left out. */
  readonly own?: OwnModel | undefined;
}

/** A value that nobody entered and that the model had to take: always shown as such. */
export interface Assumption {
  readonly id: string;
  readonly value: number;
  readonly u: number;
  /** "no wind", "a centred strike": for the reader. */
  readonly words: string;
  readonly source: string;
}

export interface Value {
  readonly id: string;
  /** SI, signed. */
  readonly value: number;
  /** Standard uncertainty, SI; null where it cannot be given. */
  readonly u: number | null;
  /**
   * `derived` where it follows from entries, `expected` where it also takes what bodies, clubs and swings usually are, so that
   * only all entries together give it.
   */
  readonly kind: 'entered' | 'derived' | 'expected';
  /** Ids of the entries that it came from, sorted; its own id for an entered value. */
  readonly from: readonly string[];
  readonly assumed: readonly Assumption[];
  /** The share of each entry, assumption (`assumed:<id>`) and modelling step (`model:<rule>`) in the variance; sums to 1. */
  readonly shares: ReadonlyMap<string, number>;
  /** The rule that gave it; undefined for entered values. */
  readonly rule: string | undefined;
}

/** What stands in the way of a quantity. */
export interface Missing {
  readonly id: string;
  /** The ids that would have to be entered; none where all is there and the model has no answer to it. */
  readonly needs: readonly string[];
}

export interface Derivation {
  /** Entered where entered, else derived; by id. */
  readonly values: ReadonlyMap<string, Value>;
  /** What the other entries say of an id, entered or not: never computed from the entry itself. */
  readonly expected: ReadonlyMap<string, Value>;
  readonly missing: ReadonlyMap<string, Missing>;
}
