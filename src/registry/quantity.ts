// The shape of one registry entry; the entries themselves are generated from schemas/quantities.yaml into generated.ts.
import type { DirectionWord, Dimension, Notation } from '../measure/measure.ts';

export const checkpoints = [
  'address',
  'takeaway',
  'lead_arm_parallel_back',
  'top',
  'lead_arm_parallel_down',
  'shaft_parallel_down',
  'impact',
  'shaft_parallel_through',
  'finish',
] as const;
export type Checkpoint = (typeof checkpoints)[number];

export type Section =
  'checkpoints' | 'delivery' | 'ground' | 'strike' | 'flight' | 'conditions' | 'student' | 'club';

/** A limit or a window in SI, with where it comes from. */
export interface Range {
  readonly min: number;
  readonly max: number;
  /** A citation, or "common practice", or "judgement". */
  readonly source: string;
}

export type RangeByClub = Readonly<Record<string, Range>>;

export interface Quantity extends Notation {
  /** The full id: `checkpoints.impact.shaft_lean`, `delivery.low_point.ahead`, `conditions.wind`, `club.loft`, `student.stature`. */
  readonly id: string;
  readonly section: Section;
  /** Only for quantities of a checkpoint. */
  readonly checkpoint?: Checkpoint;
  /** The last key: `shaft_lean`. */
  readonly key: string;
  readonly title: string;
  /** One sentence. */
  readonly meaning: string;
  readonly from: string;
  readonly to: string;
  readonly dimension: Dimension;
  readonly directions: readonly DirectionWord[];
  /** True where left and right change places for a left-handed player. */
  readonly lateral: boolean;
  /** Seen in practice, with whatever club; a value outside is information. */
  readonly practice: Range | undefined;
  /** By kind of club, where that makes a difference. */
  readonly practiceByClub: RangeByClub | undefined;
  /** What physics or anatomy allows; a value outside is an error. */
  readonly bounds: Range;
  /** Default standard uncertainty in SI by method, and `otherwise` where the method is not in the table. */
  readonly uncertainty: {
    readonly otherwise: number;
    readonly by: Readonly<Record<string, number>>;
    /** Nobody has said how sure a measurement of it is: `otherwise` is but the size of what makes a difference. */
    readonly isUnknown?: true;
  };
}

export interface Method {
  readonly name: string;
  readonly meaning: string;
  /** Default standard uncertainty in SI by dimension, each with its source. */
  readonly uncertainty: Readonly<Partial<Record<Dimension, { readonly u: number; readonly source: string }>>>;
  /** The same for single quantities, by full id: what a workspace says of one goes before what it says of the dimension. */
  readonly ofQuantities?: Readonly<Record<string, { readonly u: number; readonly source: string }>>;
  /** True where the workspace gives it a name that is refused: it is read where it can be, and proposed nowhere. */
  readonly isRefused?: true;
}

/** A miss that players complain of: any one of these quantities off in this direction, as for a right-handed player. */
export interface Miss {
  readonly word: string;
  readonly meaning: string;
  readonly signs: readonly { readonly id: string; readonly sign: 1 | -1 }[];
  /** True where the word names a side of the target line, whatever the hand. */
  readonly absolute: boolean;
}

/** What a player may want of the strike: all of these windows at once, SI, an undefined end being open. */
export interface Contact {
  readonly word: string;
  readonly meaning: string;
  readonly also: readonly string[];
  readonly windows: readonly {
    readonly id: string;
    readonly min: number | undefined;
    readonly max: number | undefined;
  }[];
}

/** Words for a change of some quantities: what makes their number larger, and what makes it smaller. */
export interface Comparative {
  readonly more: readonly string[];
  readonly less: readonly string[];
  /** Full ids; of a quantity of checkpoints without the checkpoint. */
  readonly of: readonly string[];
}

/** A part of the body that cautions and injuries may name. */
export interface BodyPart {
  readonly name: string;
  /** The larger part that it belongs to. */
  readonly within: string | undefined;
  /** Whether there are two of them. */
  readonly sides: boolean;
  readonly also: readonly string[];
}

/** A word for the shape of a shot: signs for a right-handed player, right positive; undefined where the word says nothing of it. */
export interface Shape {
  readonly word: string;
  readonly start: -1 | 0 | 1 | undefined;
  readonly curve: -1 | 0 | 1 | undefined;
  /** True for a curve that is more than was wanted. */
  readonly large: boolean;
}
