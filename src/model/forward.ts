// Takes the laid out steps as one differentiable function of their parameters; knows no readings.
import { builtIn } from '../registry/registry.ts';
import { localSlopes } from './estimate.ts';
import { layoutOf, type Layout, type Parameter, type PlacedStep, type Reach } from './forward-layout.ts';
import type { Context, Rule } from './rule.ts';
import type { Rows } from './rows.ts';
import { scaleOf } from './scales.ts';

export interface Forward extends Pick<Layout, 'parameters' | 'ids' | 'nodeOf' | 'steps'> {
  readonly context: Context;
  readonly barred: ReadonlySet<Rule>;
  /** The step that gives a node; undefined for a cause. */
  readonly ruleOf: (node: number) => Rule | undefined;
  readonly start: Float64Array;
  /** The value at each node; undefined, and `failed` names the step, where one gives none. */
  readonly values: (parameters: Float64Array) => Float64Array | undefined;
  readonly failed: () => Rule | undefined;
  /** Slopes by parameter, a row for each node, at the point last given to `values`. */
  readonly slopes: (parameters: Float64Array) => Rows | undefined;
  /** Lets go of slopes taken before, so that nothing hangs on what was asked earlier. */
  readonly forget: () => void;
  /** Takes the inexactness of each step as it is at the point last given to `values`; says whether any changed by a fifth. */
  readonly renewErrors: () => 'changed' | 'kept';
}

interface Step extends PlacedStep {
  /** What each input is usually read to. */
  readonly widths: readonly number[];
  /** The values of the inputs, as last evaluated. */
  readonly at: number[];
  /** Standard uncertainty of each output, as last set. */
  readonly us: Float64Array;
  /** Where the slopes were taken last, and what they are: input by input. */
  centre: readonly number[] | undefined;
  local: readonly (readonly number[])[];
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
  reach: Reach = 'entries',
): Forward {
  const layout = layoutOf(
    context,
    [...entered.keys()],
    repeated,
    [...barred].map(({ name }) => name),
    reach,
  );
  const { parameters, ids, nodeOf } = layout;
  const { registry = builtIn } = context;
  const steps = layout.steps.map((step): Step => ({
    ...step,
    widths: step.inputs.map((node) => scaleOf(ids[node]!, registry)),
    at: step.inputs.map(() => 0),
    us: new Float64Array(step.outputs.length),
    centre: undefined,
    local: [],
  }));
  const stepOf = new Map(steps.flatMap((step) => step.outputs.map((node) => [node, step] as const)));
  return {
    context,
    barred,
    parameters,
    ids,
    nodeOf,
    steps: layout.steps,
    ruleOf: (node) => stepOf.get(node)?.rule,
    start: Float64Array.from(parameters, (parameter) => startOf(parameter, entered.get(parameter.key))),
    ...evaluation(context, layout, steps),
  };
}

/** What was entered, but no farther out than where the steps still hold: an absurd entry must not stop the fit at once. */
function startOf({ mean, u }: Parameter, entered: number | undefined): number {
  return entered === undefined ? mean : Math.min(mean + 2 * u, Math.max(mean - 2 * u, entered));
}

function evaluation(
  context: Context,
  { causes, ids, pattern }: Layout,
  steps: readonly Step[],
): Pick<Forward, 'values' | 'failed' | 'slopes' | 'forget' | 'renewErrors'> {
  const nodes = new Float64Array(ids.length);
  let failed: Rule | undefined;

  const values = (parameters: Float64Array): Float64Array | undefined => {
    failed = undefined;
    for (let cause = 0; cause < causes.length; cause++) nodes[cause] = parameters[causes[cause]!]!;
    for (const step of steps) {
      const { rule, inputs, at, outputs, errors, us } = step;
      for (let i = 0; i < inputs.length; i++) at[i] = nodes[inputs[i]!]!;
      const computed = computeOf(rule)(at, context);
      if (!computed?.every(Number.isFinite)) {
        failed = rule;
        return undefined;
      }
      for (let o = 0; o < outputs.length; o++) {
        const error = errors[o]!;
        nodes[outputs[o]!] = computed[o]! + (error < 0 ? 0 : us[o]! * parameters[error]!);
      }
    }
    return nodes;
  };

  const slopes = (): Rows | undefined => {
    const rows = new Float64Array(pattern.columns.length);
    for (let cause = 0; cause < causes.length; cause++) rows[pattern.from[cause]!] = 1;
    for (const step of steps) {
      if (!renewSlopes(step, context)) {
        failed = step.rule;
        return undefined;
      }
      addSlopes(step, pattern, rows);
    }
    return { ...pattern, values: rows };
  };

  const renewErrors = (): 'changed' | 'kept' => {
    let outcome: 'changed' | 'kept' = 'kept';
    for (const { rule, inputs, errors, us } of steps) {
      if (errors.every((error) => error < 0)) continue;
      const at = inputs.map((node) => nodes[node]!);
      const outputs = computeOf(rule)(at, context);
      if (!outputs) continue;
      for (const [o, u] of rule.discrepancy.of(at, outputs, context).entries()) {
        const next = Number.isFinite(u) && u >= 0 ? u : us[o]!;
        if (Math.abs(next - us[o]!) > 0.2 * us[o]!) outcome = 'changed';
        us[o] = next;
      }
    }
    return outcome;
  };

  const forget = (): void => {
    for (const step of steps) step.centre = undefined;
  };

  return { values, failed: () => failed, slopes, forget, renewErrors };
}

/** The rows of the outputs from those of the inputs, by the chain rule. */
function addSlopes(step: Step, { from }: Layout['pattern'], rows: Float64Array): void {
  const { inputs, outputs, local, targets, errorPlaces, us } = step;
  for (let o = 0; o < outputs.length; o++) {
    for (let i = 0; i < inputs.length; i++) {
      const slope = local[i]![o]!;
      if (slope === 0) continue;
      const upstream = from[inputs[i]!]!;
      const places = targets[o]![i]!;
      for (let p = 0; p < places.length; p++) rows[places[p]!]! += slope * rows[upstream + p]!;
    }
    if (errorPlaces[o]! >= 0) rows[errorPlaces[o]!] = us[o]!;
  }
}

/** Slopes of costly steps are taken at points of a grid of this part of what an input is usually read to, and so shared. */
const fineness = 8;

/**
 * Slopes are kept until an input has moved by a fiftieth of what it is usually read to, which changes no value by a hundredth of
 * its uncertainty; those of costly steps by half of it.
 */
function renewSlopes(step: Step, context: Context): boolean {
  const { rule, inputs, at, widths, centre } = step;
  const leeway = rule.slopes ? 0.5 : 0.02;
  let isNear = centre !== undefined;
  for (let i = 0; isNear && i < inputs.length; i++)
    isNear = Math.abs(at[i]! - centre![i]!) <= leeway * widths[i]!;
  if (isNear) return true;
  const here = [...at];
  const near =
    rule.slopes && here.map((x, i) => Math.round((x * fineness) / widths[i]!) * (widths[i]! / fineness) + 0);
  const shared = near && rule.slopes(near, widths, context);
  const compute = (numbers: readonly number[]) => computeOf(rule)(numbers, context);
  const local =
    shared ??
    rule.slopes?.(here, widths, context) ??
    here.map((_, i) => localSlopes(compute, here, i, widths[i]!));
  if (!local.every((slopes) => slopes !== undefined)) return false;
  step.local = local;
  step.centre = shared ? near : here;
  return true;
}

/** The cheaper function throughout: it differs by far less than the step's own inexactness, and values fit their slopes. */
export function computeOf(rule: Rule): Rule['compute'] {
  return rule.roughly ?? rule.compute;
}
