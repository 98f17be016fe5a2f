// The most probable swing behind the readings of a record: the forward steps fitted to them; passes no verdict on any.
import { contextOf } from './context.ts';
import { createForward, type Forward } from './forward.ts';
import { layoutOf, type Layout } from './forward-layout.ts';
import { solved } from './linear-algebra.ts';
import { denseRow, picked, type Rows } from './rows.ts';
import { costOf, fit, type Fit, type Measurement, type Model, type Problem } from './least-squares.ts';
import { centresOf, readingsOf, weighedUncertainty, type Reading } from './readings.ts';
import type { Context, Rule } from './rule.ts';
import { statisticsOf, type Statistics } from './statistics.ts';
import type { Situation } from './value.ts';

export interface Reconciliation {
  readonly forward: Forward;
  readonly readings: readonly Reading[];
  /** Of the measurements of the problem, which reading each one is. */
  readonly measured: readonly number[];
  readonly problem: Problem;
  readonly fit: Fit;
  /** Worked out when first asked for. */
  readonly statistics: Statistics;
  /** Node values at the solution. */
  readonly values: Float64Array;
  /** Slopes of every node at the solution. */
  readonly slopes: Rows;
  /** A⁻¹ g with the slopes of a node as g, worked out when first asked for. */
  readonly moves: (node: number) => Float64Array;
}

/** Steps shorter than this many standard uncertainties change nothing that anybody reads. */
const tolerance = 0.01;
const limit = 40;
/** Evaluations that bring a fit from where it begins to the neighbourhood of where it ends. */
const roughly = 3;

/**
 * Fits the swing to the readings; `situation` is already as for a right-handed player. Readings of the ids in `without`
 * are predicted, not believed. Undefined where not even wide windows make the model give numbers.
 */
export function reconcile(
  situation: Situation,
  without: ReadonlySet<string> = new Set(),
): Reconciliation | undefined {
  const { context, readings, entered, repeated } = givenBy(situation, without);
  const barred = new Set<Rule>();
  for (;;) {
    const forward = createForward(context, entered, repeated, barred);
    const outcome = settled(forward, readings, without);
    const kept = outcome && withinReach(outcome, entered, repeated, without);
    if (kept) return kept;
    const failed = forward.failed();
    if (!failed || barred.has(failed)) return undefined;
    barred.add(failed);
  }
}

/**
 * A step that nothing entered hangs on must not hold the fit within the range where it gives numbers, as a square root would: a fit
 * that found no end is done again without such steps, and those of them that give no number where it ends then stay out.
 */
function withinReach(
  outcome: Reconciliation,
  entered: ReadonlyMap<string, number>,
  repeated: readonly string[],
  without: ReadonlySet<string>,
): Reconciliation {
  const { forward, fit: found, readings } = outcome;
  const loose = found.status === 'converged' ? [] : looseSteps(forward, entered);
  if (loose.length === 0) return outcome;
  const fitWithout = (rules: readonly Rule[]): Reconciliation | undefined => {
    const narrower = createForward(
      forward.context,
      entered,
      repeated,
      new Set([...forward.barred, ...rules]),
    );
    return settled(narrower, readings, without);
  };
  const free = fitWithout(loose);
  if (free === undefined) return outcome;
  const failing = failingAt(free, loose);
  if (failing.length === 0) return outcome;
  return (failing.length === loose.length ? free : fitWithout(failing)) ?? free;
}

/** Exact steps of the workspace's own from which no step leads to anything entered. */
function looseSteps({ steps }: Forward, entered: ReadonlyMap<string, number>): readonly Rule[] {
  const needed = new Set(entered.keys());
  return steps
    .map(({ rule }) => rule)
    .toReversed()
    .filter(({ name, inputs, outputs }) => {
      const isLoose = name.startsWith('own-') && !outputs.some((id) => needed.has(id));
      if (!isLoose) for (const id of inputs) needed.add(id);
      return isLoose;
    })
    .toReversed();
}

function failingAt({ forward, values }: Reconciliation, rules: readonly Rule[]): readonly Rule[] {
  const known = new Map(forward.ids.map((id, node) => [id, values[node]!]));
  return rules.filter(({ inputs, outputs, compute }) => {
    if (!inputs.every((id) => known.has(id))) return false;
    const numbers = compute(
      inputs.map((id) => known.get(id)!),
      forward.context,
    );
    for (const [o, id] of outputs.entries()) known.set(id, numbers?.[o] ?? NaN);
    return !numbers?.every(Number.isFinite);
  });
}

interface Given {
  readonly context: Context;
  readonly readings: readonly Reading[];
  readonly entered: ReadonlyMap<string, number>;
  readonly repeated: readonly string[];
}

function givenBy(situation: Situation, without: ReadonlySet<string>): Given {
  const readings = readingsOf(situation);
  const entered = centresOf(readings.filter((reading) => !without.has(reading.id)));
  const repeated = repeatedIn(readings).filter((id) => entered.has(id));
  return { context: contextOf(situation), readings, entered, repeated };
}

function repeatedIn(readings: readonly Reading[]): readonly string[] {
  return [...new Set(readings.filter(({ reading }) => reading > 0).map(({ id }) => id))];
}

/** All that `reconcile` depends on: the same text, the same fit. Readings that no step has to do with are not in it. */
export function textOfFit(situation: Situation, without: ReadonlySet<string> = new Set()): string {
  const { context, readings, entered, repeated } = givenBy(situation, without);
  const ids = [...entered.keys()];
  const { nodeOf } = layoutOf(context, ids, repeated, []);
  const connected = readings.flatMap(({ id, reading, value, u, use }) =>
    nodeOf.has(id) ? [[id, reading, value, u, use]] : [],
  );
  return JSON.stringify([context, ids, [...without], connected]);
}

/** Fits anew from where an earlier fit ended, with each measurement as uncertain as given; Infinity takes it out. */
export function refit(before: Reconciliation, us: readonly number[]): Reconciliation | undefined {
  const measurements = before.problem.measurements.map(({ value }, i): Measurement => ({ value, u: us[i]! }));
  const problem = { ...before.problem, measurements };
  return completed(before, problem, before.fit.parameters);
}

/**
 * The same fit with every step that could follow from it, though nothing that was entered hangs on that: their causes stand as
 * before any entry, so that the fit only has to be led on. The fit itself where it already holds all of them, or more gives no number.
 */
export function extended(before: Reconciliation): Reconciliation {
  const { readings, forward: narrow } = before;
  const barred = new Set(narrow.barred);
  for (;;) {
    const forward = createForward(
      narrow.context,
      centresOf(readings),
      repeatedIn(readings),
      barred,
      'everything',
    );
    if (forward.ids.length === narrow.ids.length) return before;
    const start = ledOn(before, forward);
    if (forward.values(start)) {
      forward.renewErrors();
      return (
        completed(
          { forward, readings, measured: measuredIn(forward, readings) },
          problemIn(before, forward),
          start,
        ) ?? before
      );
    }
    const failed = forward.failed();
    if (!failed || barred.has(failed)) return before;
    barred.add(failed);
  }
}

/** How `extended` would lay its steps out, before anybody knows whether each of them gives a number. */
export function extendedLayout({ readings, forward: { context, barred } }: Reconciliation): Layout {
  const names = [...barred].map(({ name }) => name);
  return layoutOf(context, [...centresOf(readings).keys()], repeatedIn(readings), names, 'everything');
}

/** Where the fit ended, by what each parameter stands for. */
function ledOn({ forward: narrow, fit: { parameters } }: Reconciliation, wide: Forward): Float64Array {
  const known = new Map(namesOf(narrow).map((name, j) => [name, parameters[j]!]));
  const names = namesOf(wide);
  return wide.start.map((value, j) => known.get(names[j]!) ?? value);
}

/** Of a cause its id; of what a step is off the id of the output that it is added to. */
function namesOf({ parameters, steps, ids }: Forward): readonly string[] {
  const names = parameters.map(({ key }) => key);
  for (const { outputs, errors } of steps)
    for (const [o, error] of errors.entries()) if (error >= 0) names[error] = `model of ${ids[outputs[o]!]}`;
  return names;
}

/** What was taken out stays out. */
function problemIn({ readings, measured, problem }: Reconciliation, forward: Forward): Problem {
  const before = new Map(measured.map((r, i) => [r, problem.measurements[i]!]));
  const again = measuredIn(forward, readings);
  const measurements = again.map(
    (r): Measurement => before.get(r) ?? { value: readings[r]!.value, u: weighedUncertainty(readings[r]!) },
  );
  const nodes = again.map((r) => forward.nodeOf.get(readings[r]!.id)!);
  return { model: modelOf(forward, nodes), priors: forward.parameters, measurements };
}

type Laid = Pick<Reconciliation, 'forward' | 'readings' | 'measured'>;

function settled(
  forward: Forward,
  readings: readonly Reading[],
  without: ReadonlySet<string>,
): Reconciliation | undefined {
  const measured = measuredIn(forward, readings);
  const measurements = measured.map((r): Measurement => {
    const reading = readings[r]!;
    return { value: reading.value, u: without.has(reading.id) ? Infinity : weighedUncertainty(reading) };
  });
  const nodes = measured.map((r) => forward.nodeOf.get(readings[r]!.id)!);
  const problem = { model: modelOf(forward, nodes), priors: forward.parameters, measurements };
  if (!forward.values(forward.start)) return undefined;
  forward.renewErrors();
  return completed({ forward, readings, measured }, problem, forward.start);
}

function measuredIn(forward: Forward, readings: readonly Reading[]): readonly number[] {
  return readings.flatMap(({ id, use }, r) => (use === 'measured' && forward.nodeOf.has(id) ? [r] : []));
}

/** A few steps first, then the inexactness of the steps as it is near the solution, then the rest of the way. */
function completed(laid: Laid, problem: Problem, start: Float64Array): Reconciliation | undefined {
  const { forward, readings, measured } = laid;
  const rough = fit(problem, { start, tolerance, limit: roughly });
  if (!rough) return undefined;
  forward.values(rough.parameters);
  const isDone = forward.renewErrors() === 'kept' && rough.status === 'converged';
  let solution: Fit | undefined = isDone
    ? rough
    : fit(problem, { start: rough.parameters, damping: rough.damping, tolerance, limit });
  if (solution?.status !== 'converged') solution = better(problem, solution, fromMeans(problem));
  if (!solution) return undefined;
  const values = forward.values(solution.parameters)?.slice();
  const slopes = forward.slopes(solution.parameters);
  if (!values || !slopes) return undefined;
  let statistics: Statistics | undefined;
  const known: Float64Array[] = [];
  const moves = (node: number): Float64Array =>
    (known[node] ??= solved(solution.factor, denseRow(slopes, node)));
  return {
    forward,
    readings,
    measured,
    problem,
    fit: solution,
    get statistics() {
      return (statistics ??= statisticsOf(problem, solution));
    },
    values,
    slopes,
    moves,
  };
}

/** A fit that found no end may have begun in a corner: another one begins in the middle of all priors. */
function fromMeans(problem: Problem): Fit | undefined {
  return fit(problem, { tolerance, limit });
}

function better(problem: Problem, one: Fit | undefined, other: Fit | undefined): Fit | undefined {
  if (!one || !other) return one ?? other;
  return costOf(problem, other.parameters, other.predictions) <
    costOf(problem, one.parameters, one.predictions)
    ? other
    : one;
}

function modelOf(forward: Forward, nodes: readonly number[]): Model {
  return {
    predict: (parameters) => {
      const values = forward.values(parameters);
      return values && Float64Array.from(nodes, (node) => values[node]!);
    },
    slopes: (parameters) => {
      const all = forward.slopes(parameters);
      return all && picked(all, nodes);
    },
  };
}
