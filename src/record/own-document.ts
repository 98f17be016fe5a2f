// The shapes of what a workspace has of its own, once read: quantities, derived ones, relations, checks and shown units.
import type { Span } from '../measure/measure.ts';
import type { Quantity } from '../registry/quantity.ts';
import type { Located } from './document.ts';

/** One quantity; one entry of the file gives several where it names several checkpoints. */
export interface OwnQuantity {
  readonly quantity: Quantity;
  readonly keySpan: Span;
}

export interface OwnDerived extends OwnQuantity {
  /** What gives it, as text; what it says is not known here. */
  readonly is: Located<string>;
}

/** left ≈ right ± u, each part as text. */
export interface OwnRelation {
  readonly name: Located<string>;
  readonly left: Located<string>;
  readonly right: Located<string>;
  readonly u: Located<string>;
  /** The whole of it. */
  readonly says: Located<string>;
  readonly because: string | undefined;
}

export interface OwnCheck {
  readonly name: Located<string>;
  readonly when: Located<string>;
  readonly message: Located<string>;
  readonly severity: 'error' | 'warning' | 'information' | 'hint';
  readonly at: Located<string> | undefined;
  readonly because: string | undefined;
}

export interface OwnAdditions {
  readonly quantities: readonly OwnQuantity[];
  readonly derived: readonly OwnDerived[];
  readonly relations: readonly OwnRelation[];
  readonly checks: readonly OwnCheck[];
  /** Ids that are declared in a way that cannot be read. */
  readonly broken: readonly string[];
  /** Those of them whose declaration says so itself: their uses in the same file need not. */
  readonly told: ReadonlySet<string>;
  /** Units by full id or dimension. */
  readonly shown: readonly (readonly [string, string])[];
}
