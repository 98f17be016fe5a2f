// Says of any quantity how it came about: value, interval, steps, the share of each entry, and what it would be without each.
import { settleAgreement } from './agreement.ts';
import { mirroredNumber, type Player } from './mirror.ts';
import type { Outcome } from './elimination.ts';
import type { Reconciliation } from './reconciliation.ts';
import { rowDot } from './rows.ts';
import { drawnInterval, nonlinear } from './drawn-interval.ts';
import { sharesOf, type Share } from './shares.ts';
import type { Situation } from './value.ts';

export interface ExplainedStep {
  /** The name of the rule. */
  readonly rule: string;
  readonly formula: string;
  readonly source: string;
  readonly outputs: readonly string[];
}

export interface Without {
  readonly id: string;
  readonly reading: number;
  readonly value: number;
  readonly u: number;
}

export interface QuantityExplanation {
  readonly id: string;
  /** SI, signed for this player. */
  readonly value: number;
  readonly u: number;
  /** 95 %: under a normal distribution, or by draws where that would not hold (`nonlinear`). */
  readonly interval: { readonly min: number; readonly max: number };
  /** From causes to effects, those that lead to the quantity and to the entries that it was inferred from. */
  readonly steps: readonly ExplainedStep[];
  /** The largest first. */
  readonly shares: readonly Share[];
  /** The value that the others would give, entry by entry; the one that moves it most first. */
  readonly without: readonly Without[];
}

/** Of 95 % of a normal distribution, in standard uncertainties. */
const coverage = 1.959964;

/** An entry with a smaller share moves nothing that anybody would read. */
const least = 0.001;

/** The explanation of `id` after the readings in conflict were taken out; undefined where the fit has no such quantity. */
export function explainQuantity(situation: Situation, id: string): QuantityExplanation | undefined {
  const { outcome } = settleAgreement(situation);
  return outcome && explainFrom(outcome, id, situation);
}

/**
 * With g the gradient of the quantity and y = A⁻¹ g, without measurement k the value moves by −(Jₖ y) eₖ/(uₖ² rₖ) and the
 * variance grows by (Jₖ y)²/(uₖ² rₖ).
 */
export function explainFrom(
  { last }: Pick<Outcome, 'last'>,
  id: string,
  player: Player,
): QuantityExplanation | undefined {
  const node = last.forward.nodeOf.get(id);
  if (node === undefined) return undefined;
  const y = last.moves(node);
  const variance = rowDot(last.slopes, node, y);
  if (!(variance > 0 && variance < Infinity)) return undefined;
  const shares = sharesOf(last, y, variance);
  const without: Without[] = [];
  for (const [k, { u }] of last.problem.measurements.entries()) {
    if (u === Infinity) continue;
    const ref = last.readings[last.measured[k]!]!;
    const { residual, redundancy } = last.statistics.judgements[k]!;
    const pull = rowDot(last.fit.slopes, k, y) / u;
    // One that nobody checks cannot be left out without losing the value.
    if (redundancy < 1e-6 || (pull * pull) / variance < least) continue;
    const value = last.values[node]! - (pull * residual) / (u * redundancy);
    const spread = Math.sqrt(variance + (pull * pull) / redundancy);
    without.push({ id: ref.id, reading: ref.reading, value: mirroredNumber(id, value, player), u: spread });
  }
  const value = mirroredNumber(id, last.values[node]!, player);
  const u = Math.sqrt(variance);
  without.sort((a, b) => Math.abs(b.value - value) - Math.abs(a.value - value));
  const interval = intervalOf(last, node, player) ?? { min: value - coverage * u, max: value + coverage * u };
  return { id, value, u, interval, steps: stepsBehind(last, node, shares), shares, without };
}

function intervalOf(
  at: Reconciliation,
  node: number,
  player: Player,
): QuantityExplanation['interval'] | undefined {
  const id = at.forward.ids[node]!;
  const drawn = nonlinear.has(id) ? drawnInterval(at, node) : undefined;
  const ends = drawn && [drawn.min, drawn.max].map((end) => mirroredNumber(id, end, player));
  return ends && { min: Math.min(...ends), max: Math.max(...ends) };
}

/** The steps above the quantity and above every entry with a notable share in it. */
function stepsBehind(
  { forward }: Reconciliation,
  node: number,
  shares: readonly Share[],
): readonly ExplainedStep[] {
  const entries = shares.flatMap(({ from, share }) =>
    from.kind === 'entry' && share > 0.02 ? [from.id] : [],
  );
  const wanted = new Set([node, ...entries.map((id) => forward.nodeOf.get(id)!)]);
  const steps = new Map<string, ExplainedStep>();
  // Nodes stand in an order in which each follows from those before it.
  for (let at = forward.ids.length - 1; at >= 0; at--) {
    const rule = wanted.has(at) ? forward.ruleOf(at) : undefined;
    if (!rule) continue;
    for (const input of rule.inputs) wanted.add(forward.nodeOf.get(input)!);
    steps.set(rule.name, {
      rule: rule.name,
      formula: rule.formula,
      source: rule.source,
      outputs: rule.outputs,
    });
  }
  return [...steps.values()].reverse();
}
