// Sets quantities of a fitted swing to other values and recomputes what follows from them, each with its slopes; knows no plan.
import { builtIn, type Registry } from '../registry/registry.ts';
import { localSlopes } from './estimate.ts';
import { computeOf } from './forward.ts';
import type { PlacedStep } from './forward-layout.ts';
import { inOrder } from './order-of-yielding.ts';
import type { Reconciliation } from './reconciliation.ts';
import { denseRow } from './rows.ts';
import { rangeOf, scaleOf } from './scales.ts';

/** Right-handed, SI. */
export interface Setting {
  readonly node: number;
  /** `to` sets a value whatever it was; `by` moves it from wherever it comes to be, `shifted` from where it was; `kept` holds it there. */
  readonly kind: 'to' | 'by' | 'shifted' | 'kept';
  /** 0 of what is kept. */
  readonly amount: number;
  /** How exactly it will be made, as a standard uncertainty, ≥ 0. */
  readonly u: number;
}

/**
 * A value with its slopes: first by the parameters of the fit, then by what each setting may be off and by what each step may be
 * off anew, both of the last in their own standard uncertainties.
 */
export interface Placed {
  readonly value: number;
  readonly row: Float64Array;
}

/** What has changed, by node; undefined where a step gives no number any more. */
export type Operated = ReadonlyMap<number, Placed | undefined>;

interface Present {
  readonly rows: readonly Float64Array[];
  /** By step: inexactness of each output at the present point, as the step itself says. */
  readonly discrepancies: readonly (readonly number[] | undefined)[];
}

const presents = new WeakMap<Reconciliation, Present>();

/**
 * The slopes of every node at the solution, by the parameters of the fit: taken anew at the very point, so that they can be
 * compared with those at another.
 */
export function presentRows(at: Reconciliation): readonly Float64Array[] {
  return presentOf(at).rows;
}

/** How many numbers there are in each row of what was operated with so many settings. */
export function widthOf({ forward }: Reconciliation, settings: number): number {
  return 2 * forward.parameters.length + settings;
}

/**
 * Pearl's do-operator on the fitted graph (Pearl 2009, Causality, 2nd ed., 3.2.1 and the three steps of 7.1.3): what the record has
 * shown of causes and of what each step is off stays as the fit has it; a quantity that is set is cut from its own causes; what
 * follows from it is computed anew. Where the step that gives it is a definition, or geometry, that stays true instead: the first of
 * those inputs that the rule lets give way, and that is not set itself, is moved until it holds.
 *
 * @param wanted only what these nodes hang on is computed anew; everything where left out
 */
export function operate(
  at: Reconciliation,
  settings: readonly Setting[],
  wanted?: ReadonlySet<number>,
): Operated {
  const { steps } = at.forward;
  const set = new Map(settings.map((setting, s) => [setting.node, { ...setting, s }]));
  const yielding = new Map<PlacedStep, number>();
  for (const step of steps) {
    const output = step.outputs[0]!;
    const input = set.has(output) ? yieldingInput(step, at, set) : undefined;
    if (input !== undefined) yielding.set(step, input);
  }
  const fixed = new Map<number, Placed | undefined>();
  const moved = new Map<number, Moved>();
  for (const { node, kind, amount, u, s } of set.values()) {
    if ([...yielding.keys()].some(({ outputs }) => outputs[0] === node)) continue;
    const row = new Float64Array(widthOf(at, settings.length));
    row[at.forward.parameters.length + s] = u;
    if (kind === 'to') fixed.set(node, { value: amount, row });
    else if (kind !== 'by') {
      const present = presentPlace(at, node, settings.length);
      fixed.set(node, { value: present.value + amount, row: sum(present.row, row) });
    } else moved.set(node, { by: amount, row });
  }
  let operated = passed(at, fixed, moved, { settings: settings.length, wanted });
  for (const [step, input] of inOrder(yielding, at.forward)) {
    const setting = set.get(step.outputs[0]!)!;
    fixed.set(input, placeOfYielding(at, step, input, setting, operated, settings.length));
    operated = passed(at, fixed, moved, { settings: settings.length, wanted });
  }
  return operated;
}

interface Moved {
  readonly by: number;
  readonly row: Float64Array;
}

function yieldingInput(
  { rule, inputs }: PlacedStep,
  { forward }: Reconciliation,
  set: ReadonlyMap<number, unknown>,
): number | undefined {
  const nodes = (rule.yields ?? []).map((id) => forward.nodeOf.get(id)!);
  return nodes.find((node) => inputs.includes(node) && !set.has(node));
}

function passed(
  at: Reconciliation,
  fixed: ReadonlyMap<number, Placed | undefined>,
  moved: ReadonlyMap<number, Moved>,
  { settings, wanted }: { readonly settings: number; readonly wanted: ReadonlySet<number> | undefined },
): Map<number, Placed | undefined> {
  const operated = new Map(fixed);
  const placeOf = (node: number): Placed | undefined =>
    operated.has(node) ? operated.get(node) : presentPlace(at, node, settings);
  const move = (place: Placed | undefined, node: number): Placed | undefined => {
    const by = moved.get(node);
    return by && place ? { value: place.value + by.by, row: sum(place.row, by.row) } : place;
  };
  for (const node of moved.keys())
    if (!fixed.has(node)) operated.set(node, move(presentPlace(at, node, settings), node));
  for (const [s, step] of at.forward.steps.entries()) {
    if (!step.inputs.some((node) => operated.has(node))) continue;
    if (step.outputs.every((node) => fixed.has(node))) continue;
    if (wanted && !step.outputs.some((node) => wanted.has(node))) continue;
    const inputs = step.inputs.map(placeOf);
    const isWhole = inputs.every((place) => place !== undefined);
    const outputs = isWhole ? computedAnew(at, s, inputs, settings) : undefined;
    for (const [o, node] of step.outputs.entries())
      if (!fixed.has(node)) operated.set(node, move(outputs?.[o], node));
  }
  return operated;
}

/**
 * What a step is off stays what the record has shown of it, less and less so the farther its inputs move: the error of a step is
 * taken as a random function of its inputs whose correlation is ρ = exp(−d²/2), with d the distance moved in windows of practice
 * (Kennedy & O'Hagan 2001, J. R. Stat. Soc. B 63:425, eq. 4 and 4.2; the length by judgement). It grows as the step says that it does.
 */
function computedAnew(
  at: Reconciliation,
  s: number,
  inputs: readonly Placed[],
  settings: number,
): readonly Placed[] | undefined {
  const { forward, fit, slopes, values } = at;
  const { context } = forward;
  const step = forward.steps[s]!;
  const { rule, errors, errorPlaces } = step;
  const numbers = inputs.map(({ value }) => value);
  const computed = computeOf(rule)(numbers, context);
  const local = computed?.every(Number.isFinite) ? slopesAt(step, numbers, at) : undefined;
  if (!computed || !local) return undefined;
  const size = forward.parameters.length;
  const before = presentOf(at).discrepancies[s];
  const after = before && rule.discrepancy.of(numbers, computed, context);
  const kept = Math.exp(-distanceOf(step, numbers, at) / 2);
  return computed.map((number, o) => {
    const row = new Float64Array(widthOf(at, settings));
    for (const [i, input] of inputs.entries()) addTimes(row, input.row, local[i]![o]!);
    const error = errors[o]!;
    if (error < 0) return { value: number, row };
    const ratio = after![o]! / before![o]!;
    const u = slopes.values[errorPlaces[o]!]! * (Number.isFinite(ratio) && ratio >= 0 ? ratio : 1);
    row[error]! += kept * u;
    row[size + settings + error]! += Math.sqrt(1 - kept * kept) * u;
    return { value: number + kept * u * fit.parameters[error]!, row };
  });

  function distanceOf({ inputs: nodes }: PlacedStep, to: readonly number[], { forward }: Reconciliation) {
    return nodes.reduce(
      (d2, node, i) => d2 + ((to[i]! - values[node]!) / rangeOf(forward.ids[node]!, registryOf(at))) ** 2,
      0,
    );
  }
}

/**
 * Newton's steps along the input that gives way, with what the step is off; then its slopes from those of the step, which must hold
 * to first order too.
 */
function placeOfYielding(
  at: Reconciliation,
  step: PlacedStep,
  yields: number,
  { kind, amount, u, s }: Setting & { readonly s: number },
  operated: Operated,
  settings: number,
): Placed | undefined {
  const placeOf = (node: number): Placed | undefined =>
    operated.has(node) ? operated.get(node) : presentPlace(at, node, settings);
  const given = step.inputs.map(placeOf);
  const [node] = step.outputs;
  const output = kind === 'by' ? placeOf(node!) : presentPlace(at, node!, settings);
  if (!output || !given.every((place) => place !== undefined)) return undefined;
  const target = kind === 'to' ? amount : output.value + amount;
  const place = step.inputs.indexOf(yields);
  const unmoved = new Float64Array(widthOf(at, settings));
  const index = at.forward.steps.indexOf(step);
  let value = given[place]!.value;
  // Its own row is left open, so that the step gives all that the others bring into the result.
  const rest = (): Placed | undefined =>
    computedAnew(at, index, given.with(place, { value, row: unmoved }), settings)?.[0];
  const slopeHere = (): number | undefined => {
    const numbers = given.map((input) => input.value).with(place, value);
    return slopesAt(step, numbers, at)?.[place]?.[0];
  };
  for (let round = 0; round < 20; round++) {
    const [found, slope] = [rest(), slopeHere()];
    if (found === undefined || slope === undefined) return undefined;
    const change = (target - found.value) / slope;
    if (!Number.isFinite(change)) return undefined;
    value += change;
    if (Math.abs(change) < 1e-9 * scaleOf(at.forward.ids[yields]!, registryOf(at))) break;
  }
  const [found, slope] = [rest(), slopeHere()];
  if (found === undefined || slope === undefined) return undefined;
  const row = kind === 'to' ? new Float64Array(widthOf(at, settings)) : output.row.slice();
  row[at.forward.parameters.length + s]! += u;
  addTimes(row, found.row, -1);
  return { value, row: row.map((number) => number / slope) };
}

function presentPlace(at: Reconciliation, node: number, settings: number): Placed {
  const row = new Float64Array(widthOf(at, settings));
  row.set(presentRows(at)[node]!);
  return { value: at.values[node]!, row };
}

function presentOf(at: Reconciliation): Present {
  const known = presents.get(at) ?? presentAnew(at);
  presents.set(at, known);
  return known;
}

function presentAnew(at: Reconciliation): Present {
  const { forward, slopes, values } = at;
  const { context, steps } = forward;
  const rows = forward.ids.map((_, node) => denseRow(slopes, node));
  const discrepancies = steps.map((step) => {
    const { rule, inputs, outputs, errors, errorPlaces } = step;
    const numbers = inputs.map((node) => values[node]!);
    const computed = computeOf(rule)(numbers, context);
    const local = slopesAt(step, numbers, at);
    if (local)
      for (const [o, node] of outputs.entries()) {
        const row = new Float64Array(forward.parameters.length);
        for (const [i, input] of inputs.entries()) addTimes(row, rows[input]!, local[i]![o]!);
        if (errors[o]! >= 0) row[errors[o]!] = slopes.values[errorPlaces[o]!]!;
        rows[node] = row;
      }
    return computed && errors.some((error) => error >= 0)
      ? rule.discrepancy.of(numbers, computed, context)
      : undefined;
  });
  return { rows, discrepancies };
}

function slopesAt(
  { rule, inputs }: PlacedStep,
  numbers: readonly number[],
  at: Reconciliation,
): readonly (readonly number[])[] | undefined {
  const { ids, context } = at.forward;
  const widths = inputs.map((node) => scaleOf(ids[node]!, registryOf(at)));
  const compute = (point: readonly number[]): readonly number[] | undefined =>
    computeOf(rule)(point, context);
  const local =
    rule.slopes?.(numbers, widths, context) ??
    numbers.map((_, i) => localSlopes(compute, numbers, i, widths[i]!));
  return local.every((slopes) => slopes !== undefined) ? local : undefined;
}

function registryOf({ forward: { context } }: Reconciliation): Registry {
  return context.registry ?? builtIn;
}

function addTimes(row: Float64Array, other: Float64Array, factor: number): void {
  if (factor === 0) return;
  for (let j = 0; j < other.length; j++) row[j]! += factor * other[j]!;
}

function sum(a: Float64Array, b: Float64Array): Float64Array {
  return a.map((x, j) => x + b[j]!);
}
