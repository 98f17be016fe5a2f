// Lays the steps from cause to effect out in order, by names alone: which parameter each quantity hangs on; computes no numbers.
import { forwardRules } from './forward-rules.ts';
import type { Prior } from './least-squares.ts';
import { parameterPrior } from './parameter-priors.ts';
import { rememberedByText } from './remembered.ts';
import { exact, type Context, type Rule } from './rule.ts';
import type { Rows } from './rows.ts';

export interface Parameter extends Prior {
  /** The id of a cause, or `model:<rule>` for what a step is off by, in its own standard uncertainties. */
  readonly key: string;
  readonly words: string;
  readonly source: string;
}

export interface PlacedStep {
  readonly rule: Rule;
  /** Nodes. */
  readonly inputs: readonly number[];
  readonly outputs: readonly number[];
  /** The parameter of each output's inexactness; −1 where the step is exact. */
  readonly errors: readonly number[];
  /** Output by output: where in the values of all rows the slope by its own inexactness stands; −1 where the step is exact. */
  readonly errorPlaces: readonly number[];
  /** Output by output, input by input: where in the values of all rows each number of the input's row adds to. */
  readonly targets: readonly (readonly Int32Array[])[];
}

/** Nodes are quantities: first the causes, then outputs in an order in which each follows from those before it. */
export interface Layout {
  readonly parameters: readonly Parameter[];
  readonly ids: readonly string[];
  readonly nodeOf: ReadonlyMap<string, number>;
  /** The parameter of each cause. */
  readonly causes: Int32Array;
  readonly steps: readonly PlacedStep[];
  /** By node, the parameters that it can depend on at all. */
  readonly pattern: Omit<Rows, 'values'>;
}

export type Reach = 'entries' | 'everything';

/** Layouts of the last records, since most keystrokes change a number and not what is entered. */
const kept = rememberedByText<Layout>(8);

/**
 * @param entered ids that were entered, in order.
 * @param repeated ids with several readings, which check each other even where no step has to do with them.
 * @param barred steps that gave no number before: what they give is taken as a cause instead.
 * @param reach `entries` for what has to do with what was entered, `everything` for all that the steps could give beside that.
 */
export function layoutOf(
  context: Context,
  entered: readonly string[],
  repeated: readonly string[],
  barred: readonly string[],
  reach: Reach = 'entries',
): Layout {
  const key = JSON.stringify([context, entered, repeated, barred, reach]);
  return kept(key, () => laidOut(context, new Set(entered), repeated, barred, reach));
}

function laidOut(
  context: Context,
  entered: ReadonlySet<string>,
  repeated: readonly string[],
  barred: readonly string[],
  reach: Reach,
): Layout {
  const open = forwardRules(context, (id) => entered.has(id)).filter((rule) => !barred.includes(rule.name));
  const rules = inOrder(reach === 'everything' ? open : relevant(open, entered));
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
  const placeOf = new Map(sorted.map(({ id }, place) => [id, place]));
  const steps = rules.map((rule) => ({
    rule,
    inputs: rule.inputs.map((id) => nodeOf.get(id)!),
    outputs: rule.outputs.map((id) => nodeOf.get(id)!),
    errors: rule.outputs.map((id) => placeOf.get(id) ?? -1),
  }));
  const places = Int32Array.from(causes, (id) => placeOf.get(id)!);
  const pattern = patternOf(places, steps, ids.length, sorted.length);
  return {
    parameters: sorted.map(({ parameter }) => parameter),
    ids,
    nodeOf,
    causes: places,
    steps: steps.map((step) => ({ ...step, ...targetsOf(step, pattern) })),
    pattern,
  };
}

type BareStep = Pick<PlacedStep, 'inputs' | 'outputs' | 'errors'>;

function patternOf(
  places: Int32Array,
  steps: readonly BareStep[],
  count: number,
  size: number,
): Layout['pattern'] {
  const supports: number[][] = Array.from({ length: count }, () => []);
  for (const [node, place] of places.entries()) supports[node] = [place];
  for (const { inputs, outputs, errors } of steps) {
    const shared = new Set(inputs.flatMap((input) => supports[input]!));
    for (const [o, node] of outputs.entries()) {
      const all = errors[o]! < 0 ? [...shared] : [...shared, errors[o]!];
      supports[node] = all.sort((a, b) => a - b);
    }
  }
  const [from, to] = [new Int32Array(count), new Int32Array(count)];
  let end = 0;
  for (const [node, support] of supports.entries()) {
    from[node] = end;
    to[node] = end += support.length;
  }
  return { size, from, to, columns: Int32Array.from(supports.flat()) };
}

function targetsOf(
  { inputs, outputs, errors }: BareStep,
  { from, to, columns }: Layout['pattern'],
): Pick<PlacedStep, 'errorPlaces' | 'targets'> {
  const placeIn = (node: number, column: number): number => columns.indexOf(column, from[node]);
  return {
    errorPlaces: outputs.map((node, o) => (errors[o]! < 0 ? -1 : placeIn(node, errors[o]!))),
    targets: outputs.map((node) =>
      inputs.map((input) => columns.slice(from[input], to[input]).map((column) => placeIn(node, column))),
    ),
  };
}

/** How many entries hang on each id, roughly: unknowns that few share come first, which keeps the factor sparse. */
function weightsOf(rules: readonly Rule[], entered: ReadonlySet<string>): ReadonlyMap<string, number> {
  const weights = new Map<string, number>();
  const weigh = (id: string): number => weights.get(id) ?? (entered.has(id) ? 1 : 0);
  for (const rule of rules.toReversed()) {
    const sum = rule.outputs.reduce((total, id) => total + weigh(id), 0);
    for (const id of rule.outputs) weights.set(id, weigh(id));
    for (const id of rule.inputs) weights.set(id, weigh(id) + sum);
  }
  return weights;
}

function errorOf(rule: Rule): Parameter {
  const { reason } = rule.discrepancy;
  return { key: `model:${rule.name}`, mean: 0, u: 1, kind: 'evidence', words: reason, source: reason };
}

/** Those that lead to something entered, those that an entry calls for, and those that follow from nothing but what these need. */
function relevant(rules: readonly Rule[], entered: ReadonlySet<string>): readonly Rule[] {
  const wanted = new Set<string>(entered);
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

/** The node and all that it hangs on. */
export function behind({ steps }: Pick<Layout, 'steps'>, to: number): ReadonlySet<number> {
  const found = new Set([to]);
  for (const { inputs, outputs } of steps.toReversed())
    if (outputs.some((node) => found.has(node))) for (const node of inputs) found.add(node);
  return found;
}
