// The shape of a fault as a book tells it: evidence, believed effects with their sizes, and changes; no reading here.
import type { Dimension, Measure, Span, Window } from '../measure/measure.ts';
import type { BodyPlace } from '../registry/body.ts';
import type { Quantity } from '../registry/quantity.ts';
import type { Located } from './document.ts';

/** An expression that shows a fault; what it says is not known here. */
export interface Evidence {
  readonly expression: Located<string>;
  readonly weight: number;
}

/** So much of the cause that a believed size is for; which quantity that is, only the evidence can say. */
export interface SizePer {
  /** SI, above zero. */
  readonly amount: number;
  readonly dimension: Dimension;
  /** The printed name; empty where the cause has none. */
  readonly unit: string;
  /** Of the unit, or of the number where there is none. */
  readonly span: Span;
}

/** How large an effect is believed to be: as a whole, or for so much of its cause. */
export interface BelievedSize {
  /** SI, above zero: the direction stands beside it. */
  readonly amount: number;
  /** SI, as stated after ±, before any coverage factor. */
  readonly stated: number | undefined;
  readonly per: SizePer | undefined;
  readonly span: Span;
}

/** How far a quantity is to be changed from where it is. */
export interface Step {
  /** SI, positive where the number becomes larger. */
  readonly difference: number;
  /** SI, as stated after ±, before any coverage factor. */
  readonly stated: number | undefined;
  readonly span: Span;
}

/** What a fault is believed to do to a quantity. */
export interface BelievedEffect {
  readonly effect: Located<string>;
  readonly quantity: Quantity | undefined;
  /** The sign in which the quantity goes; undefined where no known word says so. */
  readonly sign: 1 | -1 | undefined;
  readonly direction: Located<string> | undefined;
  /** Undefined where none is written, or none can be read. */
  readonly size: BelievedSize | undefined;
  readonly sizeWords: string | undefined;
  /** The quantity of the evidence that a size with `per` is for; undefined where nothing needs to name it. */
  readonly of: Located<string> | undefined;
  readonly ofQuantity: Quantity | undefined;
}

export interface FaultChange {
  readonly quantity: Quantity | undefined;
  readonly change: Located<string>;
  /** Undefined where none is written, or none can be read. */
  readonly by: Step | undefined;
  readonly byWords: string | undefined;
  readonly to: { readonly target: Measure | Window; readonly span: Span } | undefined;
  readonly toWords: string | undefined;
  readonly when: string | undefined;
  /** What it feels like when it is right, said to the student. */
  readonly feel: string | undefined;
}

export interface Caution {
  readonly part: Located<string>;
  readonly place: BodyPlace | undefined;
}

/** A fault as a book tells it. */
export interface Fault {
  readonly id: Located<string>;
  readonly title: string | undefined;
  readonly explanation: string | undefined;
  /** Where it can be seen; anywhere where the book does not say. */
  readonly at: readonly Located<string>[];
  readonly evidence: readonly Evidence[];
  readonly tendsTo: readonly BelievedEffect[];
  readonly changes: readonly FaultChange[];
  /** The parts of the body that its changes and drills load. */
  readonly cautions: readonly Caution[];
  readonly drills: readonly string[];
  readonly span: Span;
}
