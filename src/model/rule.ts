// The shape of one step of the forward graph; knows neither the steps themselves nor how they are chained.

import type { BodyTableName } from '../physics/body-tables.ts';
import type { QuantityId } from '../registry/generated.ts';
import type { Registry } from '../registry/registry.ts';
import type { OwnModel } from './own-model.ts';
import type { Assumption, Calibration } from './value.ts';

/** Quantities that no record has a place for and that the steps pass between them or assume. */
export type InnerId =
  | 'club.shaft_kick'
  | 'club.lever'
  | 'body.arm_length'
  | 'linkage.hub_along'
  | 'linkage.hub_up'
  | 'delivery.centre_loft'
  | 'strike.sole_height'
  | 'conditions.ground_give'
  | 'flight.run'
  // No number, but the key of a student's file: what a step waits for whose result lies on a side.
  | 'student.hand';
/** A workspace's own ids are no words that the compiler could know. */
export type ModelId = QuantityId | InnerId | (string & { readonly own?: never });

/** What a step may know beside its inputs; already mirrored, so every player is a right-hander here. */
export interface Context {
  /** Kind of the club's head; undefined where no club is known. */
  readonly clubKind: string | undefined;
  /** Where the wind comes from, radians counter-clockwise from the target line; undefined where there is none. */
  readonly windBearing: number | undefined;
  /** `unknown` where nobody said which hand plays; left out where the inputs are those of a right-hander. */
  readonly hand?: 'unknown' | undefined;
  /** The published table of segment masses; Winter's where left out. */
  readonly bodyTable?: BodyTableName | undefined;
  /** Multipliers of drag and lift; the published coefficients as they are where left out. */
  readonly calibration?: Calibration | undefined;
  /** What the ids stand for; the built-in registry where left out. */
  readonly registry?: Registry | undefined;
  /** Steps and relations of the workspace's own; none where left out. */
  readonly own?: OwnModel | undefined;
}

/** How far a step may be from nature, as a standard uncertainty of each output: a parameter, not part of `compute`. */
export interface Discrepancy {
  /** SI, one for each output in order, ≥ 0; `outputs` is what `compute` gave for `inputs`. */
  readonly of: (inputs: readonly number[], outputs: readonly number[], context: Context) => readonly number[];
  /** One sentence: the published spread that it stands for, or "judgement". */
  readonly reason: string;
}

/** One step from causes to effects: a pure function of plain SI numbers, for a right-handed player. */
export interface Rule {
  /** Kebab-case, stable, unique. */
  readonly name: string;
  /** The chain for the reader: "face-to-path = face − path". */
  readonly formula: string;
  /** Author, year, equation; or "definition"; or "judgement". */
  readonly source: string;
  readonly inputs: readonly ModelId[];
  readonly outputs: readonly ModelId[];
  /** One number for each output in order; undefined outside the range where the step holds. */
  readonly compute: (inputs: readonly number[], context: Context) => readonly number[] | undefined;
  readonly discrepancy: Discrepancy;
  /** What else the step rests on and the reader should know of, given its inputs. */
  readonly restsOn?: (inputs: readonly number[], context: Context) => Assumption | undefined;
  /** Whether the step can be taken at all with such a club and as much known of the hand; always where left out. */
  readonly appliesTo?: (context: Context) => boolean;
  /** `inverse` for a step from effect to cause, which only reads backward what another step says forward. */
  readonly direction?: 'inverse';
  /** Of a definition or of geometry: which of its inputs gives way, the first that can, where its result is set; without it the result is cut off. */
  readonly yields?: readonly ModelId[];
  /** Only taken in a fit where one of these has been entered: without them it would but carry windows on. */
  readonly requires?: readonly ModelId[];
  /** Of a costly step: a cheaper function that differs from `compute` by far less than the step is inexact; what a fit takes. */
  readonly roughly?: Rule['compute'];
  /**
   * Of a costly step: its slopes, input by input, by differences over half a width to each side; undefined outside the range
   * where it holds.
   */
  readonly slopes?: (
    inputs: readonly number[],
    widths: readonly number[],
    context: Context,
  ) => readonly (readonly number[])[] | undefined;
}

/** For steps that hold by definition. */
export const exact: Discrepancy = {
  of: (_inputs, outputs) => outputs.map(() => 0),
  reason: 'None: it holds by definition.',
};

/** The same standard uncertainties (SI, in the order of the outputs) whatever the inputs are. */
export function constantDiscrepancy(us: readonly number[], reason: string): Discrepancy {
  return { of: () => us, reason };
}
