// What the model predicts when quantities of a recorded swing are changed, with what the record has shown kept; knows no plan.
import type { Account } from './account.ts';
import { operate, presentRows, widthOf, type Operated, type Placed, type Setting } from './graph-surgery.ts';
import type { Joint } from './joint.ts';
import { dot, solved } from './linear-algebra.ts';
import { mirroredNumber, type Player } from './mirror.ts';
import { mostOfWindows } from './posterior.ts';
import { extended, type Reconciliation } from './reconciliation.ts';
import { rememberedByText } from './remembered.ts';
import { windowVariance } from './statistics.ts';
import { builtIn } from '../registry/registry.ts';

/** SI, signed as this player sees it. */
export interface Change {
  readonly id: string;
  /**
   * What it is set to, how far it is moved from wherever it comes to be, how far it is `shifted` from where it was, whatever else is
   * changed, or `kept` there.
   */
  readonly kind: 'to' | 'by' | 'shifted' | 'kept';
  /** 0 of what is kept. */
  readonly amount: number;
  /** How exactly the change will be made, as a standard uncertainty; 0 for exactly. */
  readonly u: number;
}

/** SI, signed as this player sees it. */
export interface Effect {
  readonly id: string;
  /** What it will be; null where the record says too little of it, though it may say how far it moves. */
  readonly value: number | null;
  readonly u: number | null;
  /** How far it moves from where it is; what is uncertain in both alike cancels. Null where too little is known for that too. */
  readonly difference: number | null;
  readonly uDifference: number | null;
}

export interface Intervention {
  /** Ids of changes that the model of this record has no place for: it says nothing of what they do. */
  readonly unreached: readonly string[];
  /** Ids that the model gives no number for any more. */
  readonly lost: readonly string[];
  /** Every quantity that moves, those that are set among them, by id. */
  readonly effects: ReadonlyMap<string, Effect>;
  /**
   * Means and covariances after the changes, moved or not, as for a right-handed player; NaN as the mean of what the record says
   * too little of.
   */
  readonly joint: (ids: readonly string[]) => Joint;
}

/** One plan asks the same thing many times: of each change alone, of all of them, for each goal. */
const mostKept = 64;
const kept = new WeakMap<Reconciliation, ReturnType<typeof rememberedByText<Intervention>>>();

/** Undefined where nothing was fitted, so that there is nothing to change. */
export function intervene(
  { outcome, situation: player }: Pick<Account, 'outcome' | 'situation'>,
  changes: readonly Change[],
): Intervention | undefined {
  if (!outcome) return undefined;
  const at = reachOf(outcome.last);
  const known = kept.get(at) ?? rememberedByText<Intervention>(mostKept);
  kept.set(at, known);
  const key = JSON.stringify([player.hand, changes.map(({ id, kind, amount, u }) => [id, kind, amount, u])]);
  return known(key, () => intervenedAnew(at, changes, player));
}

function intervenedAnew(at: Reconciliation, changes: readonly Change[], player: Player): Intervention {
  const { nodeOf } = at.forward;
  const unreached = changes.flatMap(({ id }) => (nodeOf.has(id) ? [] : [id]));
  const last = new Map(changes.map((change) => [change.id, change]));
  const settings = [...last.values()].flatMap(({ id, kind, amount, u }): Setting[] => {
    const node = nodeOf.get(id);
    return node === undefined ? [] : [{ node, kind, amount: mirroredNumber(id, amount, player), u }];
  });
  const operated = operate(at, settings);
  const effects = new Map<string, Effect>();
  const lost: string[] = [];
  for (const [node, place] of operated) {
    const id = at.forward.ids[node]!;
    if (!(player.registry ?? builtIn).find(id)) continue;
    if (!place) lost.push(id);
    else effects.set(id, effectOf(at, node, place, player));
  }
  return { unreached, lost, effects, joint: (ids) => jointAfter(at, operated, settings.length, ids) };
}

const reaches = new WeakMap<Reconciliation, Reconciliation>();

/** A coach may want to know of what nobody entered, such as the carry of a swing that was only measured at the club. */
export function reachOf(at: Reconciliation): Reconciliation {
  const known = reaches.get(at) ?? extended(at);
  reaches.set(at, known);
  return known;
}

/**
 * A difference that windows blur by no more than this share of itself is known, whatever else is: it is surely not zero, at three
 * standard uncertainties. The usual radius of an arc alone is good to 27 %, and a steeper attack does move the low point.
 */
const blurred = 1 / 3;

/** What becomes of one quantity, given what was operated. */
export function effectOf(at: Reconciliation, node: number, { value, row }: Placed, player: Player): Effect {
  const id = at.forward.ids[node]!;
  const present = presentRows(at)[node]!;
  const after = spreadOf(at, row);
  const change = row.slice();
  for (let j = 0; j < present.length; j++) change[j]! -= present[j]!;
  const between = spreadOf(at, change);
  const difference = value - at.values[node]!;
  const isKnown = isInformed(after);
  const isMoveKnown =
    (isKnown && isInformed(spreadOf(at, present))) ||
    Math.sqrt(between.windows) <= blurred * Math.abs(difference);
  return {
    id,
    value: isKnown ? mirroredNumber(id, value, player) : null,
    u: isKnown ? Math.sqrt(after.variance) : null,
    difference: isMoveKnown ? mirroredNumber(id, difference, player) : null,
    uDifference: isMoveKnown ? Math.sqrt(between.variance) : null,
  };
}

interface Spread {
  readonly variance: number;
  /** The part of it that comes from windows of practice alone. */
  readonly windows: number;
}

/** gᵀ A⁻¹ g over what was fitted, and the sum of the squares of all that comes new. */
function spreadOf({ forward: { parameters }, fit }: Reconciliation, row: Float64Array): Spread {
  const size = parameters.length;
  const own = row.subarray(0, size);
  const moves = solved(fit.factor, own);
  const fresh = row.subarray(size);
  return { variance: dot(own, moves) + dot(fresh, fresh), windows: windowVariance(parameters, moves) };
}

function isInformed({ variance, windows }: Spread): boolean {
  return variance < Infinity && windows <= mostOfWindows * variance;
}

function jointAfter(at: Reconciliation, operated: Operated, settings: number, ids: readonly string[]): Joint {
  const size = at.forward.parameters.length;
  const means = new Float64Array(ids.length).fill(NaN);
  const covariance = new Float64Array(ids.length ** 2);
  const rows = ids.map((id): Float64Array | undefined => {
    const node = at.forward.nodeOf.get(id);
    if (node === undefined) return undefined;
    const moved = operated.get(node);
    if (!moved && operated.has(node)) return undefined;
    const row = moved?.row ?? new Float64Array(widthOf(at, settings));
    if (!moved) row.set(presentRows(at)[node]!);
    if (!isInformed(spreadOf(at, row))) return undefined;
    means[ids.indexOf(id)] = moved?.value ?? at.values[node]!;
    return row;
  });
  const moves = rows.map((row) => row && solved(at.fit.factor, row.subarray(0, size)));
  for (const [i, row] of rows.entries())
    for (const [j, other] of rows.entries()) {
      if (!row || !other) continue;
      const fitted = dot(row.subarray(0, size), moves[j]!);
      covariance[i * ids.length + j] = fitted + dot(row.subarray(size), other.subarray(size));
    }
  return { means, covariance };
}
