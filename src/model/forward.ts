// Lays the steps from cause to effect out as one differentiable function of its parameters; knows no readings.
import { localSlopes } from './estimate.ts';
import { forwardRules } from './forward-rules.ts';
import type { Prior } from './least-squares.ts';
import { parameterPrior } from './parameter-priors.ts';
import { exact, type Context, type Rule } from './rule.ts';
import { scaleOf } from './scales.ts';

export interface Parameter extends Prior {
  /** The id of a cause, or `model:<rule>` for what a step is off by, in its own standard uncertainties. */
  readonly key: string;
  readonly words: string;
  readonly source: string;
}

interface Step {
  readonly rule: Rule;
  readonly inputs: readonly number[];
  readonly outputs: readonly number[];
  /** The parameter of each output's inexactness; −1 where the step is exact. */
  readonly errors: readonly number[];
  /** Standard uncertainty of each output, as last set. */
  readonly us: Float64Array;
  /** Where the slopes were taken last, and what they are: input by input. */
  centre: Float64Array | undefined;
  local: readonly (readonly number[])[];
}

/** Nodes are quantities: first the causes, then outputs in an order in which each follows from those before it. */
export interface Forward {
  readonly context: Context;
  readonly parameters: readonly Parameter[];
  readonly ids: readonly string[];
  readonly nodeOf: ReadonlyMap<string, number>;
  /** The step that gives a node; undefined for a cause. */
  readonly ruleOf: (node: number) => Rule | undefined;
  readonly start: Float64Array;
  /** The value at each node; undefined, and `failed` names the step, where one gives none. */
  readonly values: (parameters: Float64Array) => Float64Array | undefined;
  readonly failed: () => Rule | undefined;
  /** Slope of each node by each parameter, node by node, at the point last given to `values`. */
  readonly slopes: (parameters: Float64Array) => Float64Array | undefined;
  /** Takes the inexactness of each step as it is at the point last given to `values`; says whether any changed by a fifth. */
  readonly renewErrors: () => 'changed' | 'kept';
}

/**
 * @param entered what was entered, by id, as the value to start from.
 * @param repeated ids with several readings, which check each other even where no step has to do with them.
 * @param barred steps that gave no number before: what they give is taken as a cause instead.
 */
export function createForward(
  context: Context,
  entered: ReadonlyMap<string, number>,
  repeated: readonly string[],
  barred: ReadonlySet<Rule>,
): Forward {
  const rules = inOrder(
    relevant(
      forwardRules(context, (id) => entered.has(id)).filter(
        (rule) => ![...barred].some((b) => b.name === rule.name),
      ),
      entered,
    ),
  );
  const outputs = new Set<string>(rules.flatMap((rule) => rule.outputs));
  const causes = [...new Set<string>([...rules.flatMap((rule) => rule.inputs), ...repeated])].filter(
    (id) => !outputs.has(id),
  );
  const ids = [...causes, ...outputs];
  const nodeOf = new Map(ids.map((id, node) => [id, node]));
  const weights = weightsOf(rules, entered);
  const unsorted = [
    ...causes.map((id) => ({ id, parameter: { key: id, ...parameterPrior(id, context, entered.has(id)) } })),
    ...rules
      .filter((rule) => rule.discrepancy !== exact)
      .flatMap((rule) => rule.outputs.map((id) => ({ id, parameter: errorOf(rule) }))),
  ];
  const sorted = unsorted.toSorted((a, b) => (weights.get(a.id) ?? 0) - (weights.get(b.id) ?? 0));
  const parameters: readonly Parameter[] = sorted.map(({ parameter }) => parameter);
  const placeOf = new Map(sorted.map(({ id }, place) => [id, place]));
  const steps = rules.map((rule): Step => ({
    rule,
    inputs: rule.inputs.map((id) => nodeOf.get(id)!),
    outputs: rule.outputs.map((id) => nodeOf.get(id)!),
    errors: rule.outputs.map((id) => placeOf.get(id) ?? -1),
    us: new Float64Array(rule.outputs.length),
    centre: undefined,
    local: [],
  }));
  const stepOf = new Map(steps.flatMap((step) => step.outputs.map((node) => [node, step] as const)));
  const start = Float64Array.from(parameters, (parameter) => startOf(parameter, entered.get(parameter.key)));
  const places = Int32Array.from(causes, (id) => placeOf.get(id)!);
  return {
    context,
    parameters,
    ids,
    nodeOf,
    ruleOf: (node) => stepOf.get(node)?.rule,
    start,
    ...evaluation(context, places, ids, steps),
  };
}

/** What was entered, but no farther out than where the steps still hold: an absurd entry must not stop the fit at once. */
function startOf({ mean, u }: Parameter, entered: number | undefined): number {
  return entered === undefined ? mean : Math.min(mean + 2 * u, Math.max(mean - 2 * u, entered));
}

/** How many entries hang on each id, roughly: unknowns that few share come first, which keeps the factor sparse. */
function weightsOf(
  rules: readonly Rule[],
  entered: ReadonlyMap<string, number>,
): ReadonlyMap<string, number> {
  const weights = new Map<string, number>();
  const weigh = (id: string): number => weights.get(id) ?? (entered.has(id) ? 1 : 0);
  for (const rule of rules.toReversed()) {
    const sum = rule.outputs.reduce((total, id) => total + weigh(id), 0);
    for (const id of rule.outputs) weights.set(id, weigh(id));
    for (const id of rule.inputs) weights.set(id, weigh(id) + sum);
  }
  return weights;
}

function evaluation(
  context: Context,
  places: Int32Array,
  ids: readonly string[],
  steps: readonly Step[],
): Pick<Forward, 'values' | 'failed' | 'slopes' | 'renewErrors'> {
  const causes = places.length;
  const size =
    causes + steps.reduce((sum, step) => sum + step.errors.filter((error) => error >= 0).length, 0);
  const scales = ids.map((id) => scaleOf(id));
  const nodes = new Float64Array(ids.length);
  const supports = supportsOf(places, steps);
  let failed: Rule | undefined;

  const values = (parameters: Float64Array): Float64Array | undefined => {
    failed = undefined;
    for (let cause = 0; cause < causes; cause++) nodes[cause] = parameters[places[cause]!]!;
    for (const step of steps) {
      const outputs = computeOf(step.rule)(
        step.inputs.map((node) => nodes[node]!),
        context,
      );
      if (!outputs?.every(Number.isFinite)) {
        failed = step.rule;
        return undefined;
      }
      for (const [o, node] of step.outputs.entries()) {
        const error = step.errors[o]!;
        nodes[node] = outputs[o]! + (error < 0 ? 0 : step.us[o]! * parameters[error]!);
      }
    }
    return nodes;
  };

  const slopes = (): Float64Array | undefined => {
    const rows = new Float64Array(ids.length * size);
    for (let cause = 0; cause < causes; cause++) rows[cause * size + places[cause]!] = 1;
    for (const step of steps) {
      if (!renewSlopes(step, nodes, scales, context)) {
        failed = step.rule;
        return undefined;
      }
      for (const [o, node] of step.outputs.entries()) {
        const row = rows.subarray(node * size, (node + 1) * size);
        for (const [i, input] of step.inputs.entries()) {
          const slope = step.local[i]![o]!;
          if (slope === 0) continue;
          const upstream = input * size;
          for (const p of supports[input]!) row[p]! += slope * rows[upstream + p]!;
        }
        if (step.errors[o]! >= 0) row[step.errors[o]!] = step.us[o]!;
      }
    }
    return rows;
  };

  const renewErrors = (): 'changed' | 'kept' => {
    let outcome: 'changed' | 'kept' = 'kept';
    for (const step of steps) {
      if (step.errors.every((error) => error < 0)) continue;
      const inputs = step.inputs.map((node) => nodes[node]!);
      const outputs = computeOf(step.rule)(inputs, context);
      if (!outputs) continue;
      for (const [o, u] of step.rule.discrepancy.of(inputs, outputs, context).entries()) {
        const next = Number.isFinite(u) && u >= 0 ? u : step.us[o]!;
        if (Math.abs(next - step.us[o]!) > 0.2 * step.us[o]!) outcome = 'changed';
        step.us[o] = next;
      }
    }
    return outcome;
  };

  return { values, failed: () => failed, slopes, renewErrors };
}

/** By node, the parameters that it can depend on at all. */
function supportsOf(places: Int32Array, steps: readonly Step[]): readonly Int32Array[] {
  const supports = Array.from(places, (place) => Int32Array.of(place));
  for (const { inputs, outputs, errors } of steps) {
    const shared = new Set(inputs.flatMap((input) => [...supports[input]!]));
    for (const [o, node] of outputs.entries()) {
      supports[node] = Int32Array.from(errors[o]! < 0 ? shared : [...shared, errors[o]!]);
    }
  }
  return supports;
}

/** Slopes of costly steps are taken at points of a grid of this part of what an input is usually read to, and so shared. */
const fineness = 8;

/** Costly steps keep their slopes until an input has moved by more than half of what it is usually read to. */
function renewSlopes(step: Step, nodes: Float64Array, scales: readonly number[], context: Context): boolean {
  const { rule, inputs } = step;
  const centre = inputs.map((node) => nodes[node]!);
  const moved = step.centre?.some((x, i) => Math.abs(x - centre[i]!) > 0.5 * scales[inputs[i]!]!) ?? true;
  if (!moved && rule.slopes) return true;
  const compute = (numbers: readonly number[]) => computeOf(rule)(numbers, context);
  const widths = inputs.map((node) => scales[node]!);
  const near = centre.map((x, i) => Math.round((x * fineness) / widths[i]!) * (widths[i]! / fineness) + 0);
  const known = rule.slopes && (rule.slopes(near, widths, context) ?? rule.slopes(centre, widths, context));
  const local = known ?? centre.map((_, i) => localSlopes(compute, centre, i, widths[i]!));
  if (!local.every((slopes) => slopes !== undefined)) return false;
  step.local = local;
  step.centre = Float64Array.from(known ? near : centre);
  return true;
}

/** The cheaper function throughout: it differs by far less than the step's own inexactness, and values fit their slopes. */
function computeOf(rule: Rule): Rule['compute'] {
  return rule.roughly ?? rule.compute;
}

function errorOf(rule: Rule): Parameter {
  const { reason } = rule.discrepancy;
  return { key: `model:${rule.name}`, mean: 0, u: 1, kind: 'evidence', words: reason, source: reason };
}

/** Those that lead to something entered, those that an entry calls for, and those that follow from nothing but what these need. */
function relevant(rules: readonly Rule[], entered: ReadonlyMap<string, number>): readonly Rule[] {
  const wanted = new Set<string>(entered.keys());
  const kept = new Set<Rule>();
  for (let size = -1; size !== kept.size;) {
    size = kept.size;
    for (const rule of rules) {
      if (kept.has(rule)) continue;
      // What a step requires is an entry that makes its result worth having, entered or not.
      const leads = rule.outputs.some((id) => wanted.has(id));
      if (!leads && rule.requires === undefined) continue;
      kept.add(rule);
      for (const id of leads ? rule.inputs : [...rule.inputs, ...rule.outputs]) wanted.add(id);
    }
  }
  for (let size = -1; size !== kept.size;) {
    size = kept.size;
    for (const rule of rules) {
      if (kept.has(rule) || !rule.inputs.every((id) => wanted.has(id))) continue;
      kept.add(rule);
      for (const id of rule.outputs) wanted.add(id);
    }
  }
  return rules.filter((rule) => kept.has(rule));
}

function inOrder(rules: readonly Rule[]): readonly Rule[] {
  const ordered: Rule[] = [];
  const waiting = new Set(rules);
  const pending = (id: string): boolean =>
    [...waiting].some((rule) => rule.outputs.some((output) => output === id));
  while (waiting.size > 0) {
    const ready = [...waiting].filter((rule) => !rule.inputs.some(pending));
    if (ready.length === 0) break;
    for (const rule of ready) {
      ordered.push(rule);
      waiting.delete(rule);
    }
  }
  return ordered;
}
