// The windows of face and path for a record, from its flight and for its goals; each computed once for an account, when asked for.
import type { Account } from '../model/account.ts';
import {
  windowsForGoal,
  windowsFromFlight,
  type FlightGoal,
  type FlightWindow,
  type GoalWindow,
  type Interval,
  type WindowId,
} from '../model/windows.ts';
import type { Goal } from '../record/document.ts';
import { findShape } from '../registry/registry.ts';
import type { Analysis } from './result.ts';

interface Kept {
  flight: ReadonlyMap<WindowId, FlightWindow> | undefined;
  readonly goals: Map<string, ReadonlyMap<WindowId, GoalWindow>>;
}

const kept = new WeakMap<Account, Kept>();

/** What the observed flight allows, the entries of face and path left out; empty where it says too little. */
export function flightWindowsOf({ account }: Analysis): ReadonlyMap<WindowId, FlightWindow> {
  if (account === undefined) return new Map();
  const before = keptFor(account);
  const off = account.agreement.conflicts.map(({ id }) => id);
  before.flight ??= windowsFromFlight(account.situation, off);
  return before.flight;
}

/** What a goal asks for at the speed and loft of this record; empty where that cannot be said. */
export function goalWindowsOf({ account }: Analysis, goal: Goal): ReadonlyMap<WindowId, GoalWindow> {
  const wanted = flightGoalOf(goal);
  const isSided = wanted.shape !== undefined && account?.situation.hand === undefined;
  if (account?.outcome === undefined || isSided) return new Map();
  const { goals } = keptFor(account);
  const key = JSON.stringify(wanted);
  const before = goals.get(key);
  if (before !== undefined) return before;
  const windows = windowsForGoal(account.situation, wanted, account.outcome.last);
  goals.set(key, windows);
  return windows;
}

/** Why a goal of start, curve, finish or shape has no windows of face and path; undefined of one that has, or that asks for none. */
export function whyNoGoalWindows(analysis: Analysis, goal: Goal): string | undefined {
  const { shape, start, curve, finish } = flightGoalOf(goal);
  if ([shape, start, curve, finish].every((asked) => asked === undefined)) return undefined;
  if (goalWindowsOf(analysis, goal).size > 0) return undefined;
  const { account } = analysis;
  if (shape !== undefined && account?.situation.hand === undefined) return 'which hand plays is not known';
  const unknown = ['delivery.club_speed', 'delivery.delivered_loft'].filter(
    (id) => account?.outcome === undefined || !account.derivation.values.has(id),
  );
  if (unknown.length > 0) return `${unknown.join(' and ')} would have to be known`;
  return shape === undefined && curve === undefined && (start === undefined || finish === undefined)
    ? 'it takes a curve, a shape, or both a start and a finish'
    : 'no face and path that the model can tell lead to all of it';
}

function keptFor(account: Account): Kept {
  const before = kept.get(account);
  if (before !== undefined) return before;
  const fresh: Kept = { flight: undefined, goals: new Map() };
  kept.set(account, fresh);
  return fresh;
}

export function flightGoalOf({ shape: word, targets }: Goal): FlightGoal {
  const interval = (key: string): Interval | undefined => {
    const target = targets.get(key)?.target;
    if (target === undefined) return undefined;
    return target.kind === 'window'
      ? { min: target.from, max: target.to }
      : { min: target.value, max: target.value };
  };
  const shape = word && findShape(word.value);
  return {
    start: interval('start'),
    curve: interval('curve'),
    finish: interval('finish'),
    carry: interval('carry'),
    shape: shape && { start: shape.start, curve: shape.curve, large: shape.large },
  };
}
