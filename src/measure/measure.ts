// The shapes of a parsed measurement and of what can be wrong with one; knows nothing of YAML, quantities or golf.

/** A half-open stretch of text, in UTF-16 units from the start of that text. */
export interface Span {
  readonly start: number;
  readonly end: number;
}

export type Dimension =
  | 'length'
  | 'angle'
  | 'speed'
  | 'rotation'
  | 'time'
  | 'mass'
  | 'inertia'
  | 'temperature'
  | 'pressure'
  | 'fraction'
  | 'ratio';

/** A direction word and the sign it gives to the number before it; `bearing` only where the word names a compass point. */
export interface DirectionWord {
  readonly word: string;
  readonly sign: 1 | -1;
  /** Radians, counter-clockwise from the target line seen from above, of where the thing comes from (wind). */
  readonly bearing?: number;
}

/** What a number at this place means: enough to read and print it, whatever the quantity is called. */
export interface Notation {
  readonly dimension: Dimension;
  /** The unit of a bare number, and the one shown, as in the unit table ("cm", "deg", "m/s"). */
  readonly unit: string;
  /** Empty where the quantity has no direction. The first word of each sign is the one printed. */
  readonly directions: readonly DirectionWord[];
  /** Decimals shown where the uncertainty does not say better. */
  readonly decimals: number;
  /** The unit shown, where it is not that of a bare number. */
  readonly shown?: string;
}

/** One measured number. `value` and `uncertainty` are in the coherent SI unit (m, rad, m/s, rad/s, s, kg, kg m², K, Pa; fractions and ratios are plain numbers, 50 % is 0.5), signed by the direction word. */
export interface Measure {
  readonly kind: 'measure';
  readonly value: number;
  /** As stated after ±, in SI, before any coverage factor; undefined where nothing is stated. */
  readonly stated: number | undefined;
  readonly estimate: boolean;
  readonly method: string | undefined;
  readonly unit: string | undefined;
  readonly direction: string | undefined;
  readonly bearing: number | undefined;
  readonly spans: MeasureSpans;
}

export interface MeasureSpans {
  readonly number: Span;
  readonly unit?: Span;
  readonly direction?: Span;
  readonly stated?: Span;
  readonly method?: Span;
}

/** A window `from..to`, in SI, from ≤ to after the direction word's sign. */
export interface Window {
  readonly kind: 'window';
  readonly from: number;
  readonly to: number;
  readonly unit: string | undefined;
  readonly direction: string | undefined;
  readonly spans: { readonly from: Span; readonly to: Span; readonly unit?: Span; readonly direction?: Span };
}

export type MeasureCode =
  | 'unreadable-measure'
  | 'number-out-of-range'
  | 'unknown-unit'
  | 'wrong-dimension'
  | 'unknown-direction'
  | 'missing-direction'
  | 'direction-with-sign'
  | 'unknown-method'
  | 'uncertainty-not-positive'
  | 'window-reversed'
  | 'window-not-allowed'
  | 'measure-not-allowed';

/** What is wrong, where, and what would be right; `nearest` is the known word that the found one most resembles. */
export interface Problem<Code extends string = string> {
  readonly code: Code;
  readonly span: Span;
  /** A noun phrase, user text in backticks: "`cn`". */
  readonly found: string;
  /** A noun phrase: "a unit of length (mm, cm, m, in, ft, yd)". */
  readonly expected: string;
  readonly nearest?: string;
  /** The id that stands for no quantity, where that is what is wrong. */
  readonly unknown?: string;
  readonly related?: readonly { readonly span: Span; readonly message: string }[];
}

export interface ParseOptions {
  /** Whether `A..B` may stand here: 'no' (a measurement), 'also' (a goal) or 'only' (a template's window). */
  readonly window: 'no' | 'also' | 'only';
  /** The methods that may stand after `by`. */
  readonly methods: readonly string[];
}

export interface Parsed {
  /** Undefined when no number can be made out; a value with problems may still be given when it is safe to use. */
  readonly value: Measure | Window | undefined;
  readonly problems: readonly Problem<MeasureCode>[];
}
