// What a record would come to if some of its quantities were changed: prediction, goals, verdicts and windows, now and then; writes nothing.
import { exactnessOf, isDerived, type Made } from '../judgement/foreseer.ts';
import { standingOf, type Standing } from '../judgement/goal-standing.ts';
import { fitThen, numbersThen } from '../judgement/predicted-fit.ts';
import { predict, type Prediction } from '../judgement/prediction.ts';
import { beliefOf } from '../judgement/belief.ts';
import { beliefAsItStands } from '../judgement/standing-number.ts';
import { judge, type Beholder, type FaultVerdict } from '../judgement/verdict.ts';
import type { StatedVerdict } from '../judgement/judgement.ts';
import type { Account } from '../model/account.ts';
import { reachOf } from '../model/intervention.ts';
import { windowsForGoal, type GoalWindow, type WindowId } from '../model/windows.ts';
import type { Value } from '../model/value.ts';
import type { Quantity } from '../registry/quantity.ts';
import { asAllSay, withValues } from './as-all-say.ts';
import { foreseerOf, goalsOf, placedWanted } from './plan.ts';
import type { Analysis } from './result.ts';
import { flightGoalOf, goalWindowsOf } from './windows.ts';

/** SI, as this player sees left and right. */
export interface Setting {
  readonly id: string;
  readonly to: number;
}

export interface WhatIf {
  readonly made: readonly Made[];
  readonly prediction: Prediction;
  readonly goals: readonly { readonly now: Standing; readonly then: Standing }[];
  readonly faults: readonly { readonly now: StatedVerdict; readonly then: FaultVerdict }[];
  /** What each goal asks for, at the speed and loft of now and of then. */
  readonly windows: readonly {
    readonly id: WindowId;
    readonly now: GoalWindow | undefined;
    readonly then: GoalWindow | undefined;
  }[];
  /** The record as all its entries together say, from where everything moves, for pictures. */
  readonly now: Analysis;
  /** The record as it would be, for pictures; what the present flight and its shots say is not in it. */
  readonly then: Analysis;
}

/** What a player can set out to change. */
const changeable: ReadonlySet<string> = new Set(['checkpoints', 'delivery', 'strike']);

/**
 * Quantities with a number that the model or the fault book knows an effect of: those first that the plan or a change of a stated
 * fault names, then in the order of the record's values.
 */
export function leversOf({ document, subject, account }: Analysis): readonly Quantity[] {
  if (document.kind !== 'swing' || account?.outcome === undefined) return [];
  const { nodeOf } = reachOf(account.outcome.last).forward;
  const named = [
    ...document.plan.flatMap(({ change }) => change?.value ?? []),
    ...(subject.judgement?.stated ?? []).flatMap(({ fault }) =>
      fault.changes.flatMap(({ quantity }) => quantity?.id ?? []),
    ),
  ];
  const { values } = account.derivation;
  const reached = [...values.keys()].filter((id) => nodeOf.has(id));
  return [...new Set([...named, ...reached])].flatMap((id) => {
    const quantity = subject.registry.find(id);
    const isChangeable =
      quantity !== undefined && changeable.has(quantity.section) && !isDerived(id, account);
    return isChangeable && values.has(id) ? [quantity] : [];
  });
}

/** Undefined where the model has nothing to go by; a quantity without a number cannot be set. */
export function whatIfOf(analysis: Analysis, settings: readonly Setting[]): WhatIf | undefined {
  const { document, subject, account } = analysis;
  if (document.kind !== 'swing' || account?.outcome === undefined) return undefined;
  const foreseer = foreseerOf(subject, account);
  const made = settings.flatMap(({ id, to }): Made[] => {
    const quantity = subject.registry.find(id);
    const now = account.derivation.values.get(id)?.value;
    if (quantity === undefined || now === undefined || !Number.isFinite(to)) return [];
    return [{ quantity, to, u: exactnessOf(quantity, now, to), because: [] }];
  });
  const prediction = predict(made, foreseer);
  const { hand, registry } = foreseer;
  const [present, standing] = [beliefOf(account, hand), beliefAsItStands(account, hand)];
  const belief = made.length === 0 ? present : prediction.belief;
  const chances: Beholder['chances'] = new WeakMap();
  const now = asAllSay(analysis, account);
  return {
    made,
    prediction,
    goals: placedWanted(subject, account).map(({ wanted }) => ({
      now: standingOf(wanted, standing, account.situation),
      then: standingOf(wanted, made.length === 0 ? standing : belief, account.situation),
    })),
    faults: (subject.judgement?.stated ?? []).map((now) => ({
      now,
      then: judge(now, now.at, { belief, hand, registry, chances }),
    })),
    windows: windowsOf(analysis, account, prediction, made),
    now,
    then: analysisThen(now, prediction, made),
  };
}

const windowIds = ['delivery.face_to_path', 'delivery.path', 'delivery.face'] as const;

/** Of the first goal that asks for any. */
function windowsOf(
  analysis: Analysis,
  account: Account,
  prediction: Prediction,
  made: readonly Made[],
): WhatIf['windows'] {
  for (const { goal } of goalsOf(analysis.subject)) {
    const now = goalWindowsOf(analysis, goal);
    const then =
      made.length === 0
        ? now
        : windowsForGoal(account.situation, flightGoalOf(goal), fitThen(account, prediction, made));
    const asked = windowIds.filter((id) => now.has(id) || then.has(id));
    if (asked.length > 0) return asked.map((id) => ({ id, now: now.get(id), then: then.get(id) }));
  }
  return [];
}

function analysisThen(now: Analysis, prediction: Prediction, made: readonly Made[]): Analysis {
  const values = new Map<string, Value>(now.derivation?.values);
  for (const [id, number] of numbersThen(prediction, made)) {
    const before = values.get(id);
    const nothing = { from: [], assumed: [], shares: new Map<string, number>(), rule: undefined };
    values.set(id, { ...(before ?? nothing), id, ...number, kind: 'expected' });
  }
  const then = withValues(now, values);
  return { ...then, account: undefined, subject: { ...then.subject, shots: undefined } };
}
