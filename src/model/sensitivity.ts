// How far the model moves one quantity of a recorded swing when another is changed a little; looks at the graph before any number.
import { builtIn } from '../registry/registry.ts';
import type { Account } from './account.ts';
import { behind, type Layout } from './forward-layout.ts';
import { operate, type Setting } from './graph-surgery.ts';
import { heldId, isFaceFree, pathId } from './held-face.ts';
import { effectOf, reachOf } from './intervention.ts';
import { mirroredNumber } from './mirror.ts';
import { extendedLayout, type Reconciliation } from './reconciliation.ts';
import { scaleOf } from './scales.ts';

export interface Sensitivity {
  /** How far the effect moves for each SI unit of the cause, for this player. */
  readonly slope: number;
  /** From what is uncertain of this swing and of the model. */
  readonly u: number;
}

/**
 * How far the model moves `effect` when `cause` is changed by `step` (what somebody without an instrument can just tell, where left
 * out) and all else that is no consequence stays; 0 ± 0 where no way leads from the one to the other. A face is held where it points
 * while the path moves, as in a plan, here to the letter. Undefined where the model of this record does not have both, or where it
 * says too little. The same as `intervene` gives, but only the steps between the two are computed, and the fit is led on only where
 * they do not stand in it.
 */
export function sensitivity(
  { outcome, situation: player }: Pick<Account, 'outcome' | 'situation'>,
  cause: string,
  effect: string,
  step: number = scaleOf(cause, player.registry ?? builtIn),
): Sensitivity | undefined {
  if (!outcome || step === 0) return undefined;
  const layout = extendedLayout(outcome.last);
  if (!layout.nodeOf.has(cause) || !layout.nodeOf.has(effect)) return undefined;
  const held = isFaceHeld(layout, cause) ? [heldId] : [];
  const way = wayBetween(layout, [cause, ...held], effect);
  if (way === undefined) return { slope: 0, u: 0 };
  const at = stands(way, [cause, effect, ...held], outcome.last) ? outcome.last : reachOf(outcome.last);
  const [from, to] = [at.forward.nodeOf.get(cause), at.forward.nodeOf.get(effect)];
  if (from === undefined || to === undefined) return undefined;
  const amount = mirroredNumber(cause, step, player);
  const keptNodes = held.map((id) => at.forward.nodeOf.get(id)!);
  const settings: readonly Setting[] = [
    { node: from, kind: 'by', amount, u: 0 },
    ...keptNodes.map((node): Setting => ({ node, kind: 'kept', amount: 0, u: 0 })),
  ];
  const wanted = new Set([to, ...keptNodes].flatMap((node) => [...behind(at.forward, node)]));
  const operated = operate(at, settings, wanted);
  const place = operated.get(to);
  if (!place) return operated.has(to) ? undefined : { slope: 0, u: 0 };
  const { difference, uDifference } = effectOf(at, to, place, player);
  if (difference === null || uDifference === null) return undefined;
  return { slope: difference / step, u: uDifference / Math.abs(step) };
}

/** Whether the cause moves the path, and is nothing that says where the face goes. */
function isFaceHeld(layout: Layout, cause: string): boolean {
  if (!isFaceFree(cause) || !layout.nodeOf.has(pathId) || !layout.nodeOf.has(heldId)) return false;
  return wayBetween(layout, [cause], pathId) !== undefined;
}

/** Names of the steps that lead from the causes to the effect; undefined where none do, and it is none of them. */
function wayBetween(
  layout: Layout,
  causes: readonly string[],
  effect: string,
): ReadonlySet<string> | undefined {
  const from = new Set(causes.map((id) => layout.nodeOf.get(id)!));
  const to = layout.nodeOf.get(effect)!;
  const before = behind(layout, to);
  const reached = new Set(from);
  const names = new Set<string>();
  for (const { rule, outputs } of layout.steps) {
    // A definition stays true where its result is moved: one of its inputs gives way.
    const yielding = from.has(outputs[0]!) ? (rule.yields ?? []) : [];
    for (const id of yielding) reached.add(layout.nodeOf.get(id)!);
    if (yielding.length > 0) names.add(rule.name);
  }
  for (const { rule, inputs, outputs } of layout.steps) {
    if (!inputs.some((node) => reached.has(node))) continue;
    for (const node of outputs) reached.add(node);
    if (outputs.some((node) => before.has(node))) names.add(rule.name);
  }
  return reached.has(to) ? names : undefined;
}

/** Whether the fit holds all of the steps, so that it need not be led on. */
function stands(
  names: ReadonlySet<string>,
  ids: readonly string[],
  { forward: { steps, nodeOf } }: Reconciliation,
): boolean {
  if (!ids.every((id) => nodeOf.has(id))) return false;
  const known = new Set(steps.map(({ rule }) => rule.name));
  return [...names].every((name) => known.has(name));
}
