// Derives whatever follows from what is entered, each value with its uncertainty and causes; knows the steps only as a list.
// The steps stay pure and listed, each inexactness a parameter of its own, so that a least-squares fit can walk the same table.
import { chainFrom, needsOf, type Chain } from './chain.ts';
import { contextOf } from './context.ts';
import { baseEstimate, propagate, type Base, type Estimate } from './estimate.ts';
import { inOrderOfMeasuring, isLeaf } from './leaves.ts';
import { isOfUnknownHand, mirroredSituation, mirroredValue } from './mirror.ts';
import { priorsFor } from './priors.ts';
import { isPossible } from './own-model.ts';
import { builtIn } from '../registry/registry.ts';
import type { Context, Rule } from './rule.ts';
import { rules as allRules } from './rules.ts';
import type { Assumption, Derivation, Missing, Observation, Situation, Value } from './value.ts';

interface Source extends Base {
  readonly kind: 'entry' | 'assumption' | 'model';
  readonly assumption?: Assumption;
}

/** What is entered or assumed, by id, and the steps already evaluated. */
interface Workings {
  readonly context: Context;
  readonly rules: readonly Rule[];
  /** All steps, also those that do not apply here. */
  readonly known: readonly Rule[];
  readonly entries: ReadonlyMap<string, Estimate>;
  readonly assumptions: ReadonlyMap<string, Estimate>;
  readonly evaluated: Map<Rule, { inputs: readonly Estimate[]; outputs: readonly Estimate[] | undefined }[]>;
}

interface Settled {
  readonly chain: Chain;
  readonly estimates: ReadonlyMap<string, Estimate>;
  /** Steps that gave no finite number for their inputs. */
  readonly barred: ReadonlySet<Rule>;
}

/**
 * Forward chaining from entries to whatever follows. Entered values win over derived ones as inputs of later steps;
 * `expected` leaves the entry that it speaks of out of the whole chain. Never throws, never gives a number that is not
 * finite, always ends; the same situation always gives the same derivation.
 */
export function derive(situation: Situation, rules: readonly Rule[] = allRules): Derivation {
  const { registry = builtIn } = situation;
  const own = situation.own?.rules ?? [];
  const workings = begin(mirroredSituation(situation), own.length === 0 ? rules : [...rules, ...own]);
  const values = new Map<string, Value>();
  const expected = new Map<string, Value>();
  for (const observation of situation.observations.values()) {
    if (isUsable(observation)) values.set(observation.id, enteredValue(observation));
  }

  const settled = settle(workings, undefined);
  const impossible = new Set<string>();
  const present = (id: string, rule: Rule, estimate: Estimate): Value | undefined => {
    const plain = registry.find(id) && derivedValue(id, rule, estimate);
    const value = plain && mirroredValue(plain, situation);
    if (!value || isPossible(value, situation)) return value;
    impossible.add(id);
    return undefined;
  };
  for (const [id, rule] of settled.chain) {
    const value = present(id, rule, settled.estimates.get(id)!);
    if (!value) continue;
    values.set(id, value);
    expected.set(id, value);
  }

  const outputs = new Set<string>(workings.rules.flatMap((rule) => rule.outputs));
  for (const id of workings.entries.keys()) {
    if (!outputs.has(id)) continue;
    const without = settle(workings, id);
    const rule = without.chain.get(id);
    const value = rule && present(id, rule, without.estimates.get(id)!);
    if (value) expected.set(id, value);
  }
  const missing = new Map(missingFrom(workings, settled));
  for (const id of impossible) if (!values.has(id)) missing.set(id, { id, needs: [] });
  return { values, expected, missing };
}

function begin(situation: Situation, rules: readonly Rule[]): Workings {
  const context = contextOf(situation);
  const entries = new Map<string, Estimate>();
  for (const observation of situation.observations.values()) {
    if (!isUsable(observation) || isWindFromNowhere(observation, context)) continue;
    if (isOfUnknownHand(observation.id, situation)) continue;
    const source: Source = { key: observation.id, u: observation.u, kind: 'entry' };
    entries.set(observation.id, baseEstimate(observation.value, source));
  }
  const assumptions = new Map<string, Estimate>();
  for (const assumption of priorsFor(context)) {
    const { id, u } = assumption;
    if (entries.has(id)) continue;
    const source: Source = { key: `assumed:${id}`, u, kind: 'assumption', assumption };
    assumptions.set(id, baseEstimate(assumption.value, source));
  }
  const applicable = rules.filter((rule) => rule.appliesTo?.(context) ?? true);
  return { context, rules: applicable, known: rules, entries, assumptions, evaluated: new Map() };
}

/**
 * Chains and evaluates with the entry `without` left out, and then only what that one id needs; everything that can be
 * given where `without` is undefined. A step that gives no finite number is barred and the chain drawn again without it,
 * which ends because there are only so many steps.
 */
function settle(workings: Workings, without: string | undefined): Settled {
  const atHand = new Set([...workings.entries.keys(), ...workings.assumptions.keys()]);
  if (without !== undefined) atHand.delete(without);
  const barred = new Set<Rule>();
  for (;;) {
    const chain = chainFrom(
      workings.rules.filter((rule) => !barred.has(rule)),
      atHand,
    );
    const estimates = new Map<string, Estimate>();
    const targets = without === undefined ? chain.keys() : chain.has(without) ? [without] : [];
    const failed = firstFailure(targets, (id) => estimateAlong(chain, id, without, workings, estimates));
    if (!failed) return { chain, estimates, barred };
    barred.add(failed);
  }
}

function firstFailure(
  ids: Iterable<string>,
  attempt: (id: string) => { readonly failed: Rule } | Estimate,
): Rule | undefined {
  for (const id of ids) {
    const outcome = attempt(id);
    if ('failed' in outcome) return outcome.failed;
  }
  return undefined;
}

function estimateAlong(
  chain: Chain,
  id: string,
  without: string | undefined,
  workings: Workings,
  estimates: Map<string, Estimate>,
): { readonly failed: Rule } | Estimate {
  const atHand = id === without ? undefined : (workings.entries.get(id) ?? workings.assumptions.get(id));
  const known = atHand ?? estimates.get(id);
  if (known) return known;
  const rule = chain.get(id)!;
  const inputs: Estimate[] = [];
  for (const input of rule.inputs) {
    const outcome = estimateAlong(chain, input, without, workings, estimates);
    if ('failed' in outcome) return outcome;
    inputs.push(outcome);
  }
  const outputs = evaluate(rule, inputs, workings);
  if (!outputs) return { failed: rule };
  for (const [o, output] of rule.outputs.entries())
    if (chain.get(output) === rule) estimates.set(output, outputs[o]!);
  return estimates.get(id)!;
}

/** A step on given inputs, evaluated once however many chains it stands in. */
function evaluate(
  rule: Rule,
  inputs: readonly Estimate[],
  workings: Workings,
): readonly Estimate[] | undefined {
  const before = workings.evaluated.get(rule) ?? [];
  const same = before.find((b) => b.inputs.every((estimate, i) => estimate === inputs[i]));
  if (same) return same.outputs;
  const { context } = workings;
  const centre = inputs.map((estimate) => estimate.value);
  const assumption = rule.restsOn?.(centre, context);
  const outputs = propagate(
    (numbers) => rule.compute(numbers, context),
    inputs,
    (numbers) =>
      rule.discrepancy.of(centre, numbers, context).map((u): Source => ({
        key: `model:${rule.name}`,
        u,
        kind: 'model',
        ...(assumption && { assumption }),
      })),
    (numbers, widths) => rule.slopes?.(numbers, widths, context),
  );
  workings.evaluated.set(rule, [...before, { inputs, outputs }]);
  return outputs;
}

function enteredValue({ id, value, u }: Observation): Value {
  return {
    id,
    value,
    u,
    kind: 'entered',
    from: [id],
    assumed: [],
    shares: new Map([[id, 1]]),
    rule: undefined,
  };
}

/** Undefined where not one entry stands behind it: what rests on assumptions alone is no finding about this swing. */
function derivedValue(id: string, rule: Rule, estimate: Estimate): Value | undefined {
  const from: string[] = [];
  const assumed: Assumption[] = [];
  const shares = new Map<string, number>();
  const variance = estimate.u ** 2;
  for (const [base, slope] of estimate.slopes) {
    const source = base as Source;
    if (source.kind === 'entry') from.push(source.key);
    if (source.assumption && !assumed.includes(source.assumption)) assumed.push(source.assumption);
    const share = (slope * base.u) ** 2 / variance;
    if (share > 0) shares.set(base.key, (shares.get(base.key) ?? 0) + share);
  }
  if (from.length === 0) return undefined;
  const u = estimate.u > 0 ? estimate.u : null;
  return {
    id,
    value: estimate.value,
    u,
    kind: 'derived',
    from: from.sort(),
    assumed,
    shares,
    rule: rule.name,
  };
}

function missingFrom(workings: Workings, settled: Settled): ReadonlyMap<string, Missing> {
  const { registry = builtIn } = workings.context;
  const given = new Set([
    ...workings.entries.keys(),
    ...workings.assumptions.keys(),
    ...settled.chain.keys(),
  ]);
  const usable = workings.rules.filter((rule) => !settled.barred.has(rule));
  const needs = needsOf([...usable, ...waitingForHand(workings)], given, isLeaf);
  const missing = new Map<string, Missing>();
  for (const [id, ids] of needs)
    if (registry.find(id)) missing.set(id, { id, needs: inOrderOfMeasuring(ids) });
  // By names alone these would follow: it is the numbers that lead nowhere.
  const atHand = new Set([...workings.entries.keys(), ...workings.assumptions.keys()]);
  for (const id of chainFrom(workings.rules, atHand).keys())
    if (!given.has(id) && !missing.has(id) && registry.find(id)) missing.set(id, { id, needs: [] });
  return missing;
}

/** The steps that only want to know which hand plays, with that as one more input. */
function waitingForHand({ context, known, rules }: Workings): readonly Rule[] {
  if (context.hand !== 'unknown') return [];
  return known.flatMap((rule) => {
    const waits = !rules.includes(rule) && rule.appliesTo?.({ ...context, hand: undefined }) === true;
    return waits ? [{ ...rule, inputs: [...rule.inputs, 'student.hand' as const] }] : [];
  });
}

/** A wind whose direction is not known says nothing of the flight; still air is assumed, and said to be. */
function isWindFromNowhere(observation: Observation, context: Context): boolean {
  return observation.id === 'conditions.wind' && observation.value !== 0 && context.windBearing === undefined;
}

function isUsable(observation: Observation): boolean {
  return Number.isFinite(observation.value) && Number.isFinite(observation.u) && observation.u > 0;
}
