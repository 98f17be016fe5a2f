// Carries values with their slopes over independent base variables through any function (GUM 5.1.2); knows no rules and no golf.

/** One independent source of uncertainty: an entry, an assumption or the inexactness of a step. */
export interface Base {
  /** The name under which its share is told: an id, `assumed:<id>` or `model:<rule>`. */
  readonly key: string;
  /** Standard uncertainty, in the SI unit of the variable, ≥ 0. */
  readonly u: number;
}

/** A number that remembers how it hangs on every base variable, so that shared causes are counted once. */
export interface Estimate {
  readonly value: number;
  /** Partial derivatives by base variable. */
  readonly slopes: ReadonlyMap<Base, number>;
  /** Standard uncertainty, to first order. */
  readonly u: number;
}

export type Compute = (inputs: readonly number[]) => readonly number[] | undefined;

/** An estimate that is itself one base variable. */
export function baseEstimate(value: number, base: Base): Estimate {
  return { value, slopes: new Map([[base, 1]]), u: base.u };
}

/** An estimate from its value and slopes: u² = Σ (slope · u)² (JCGM 100:2008, eq. 10). */
export function estimateOf(value: number, slopes: ReadonlyMap<Base, number>): Estimate {
  let variance = 0;
  for (const [base, slope] of slopes) variance += (slope * base.u) ** 2;
  return { value, slopes, u: Math.sqrt(variance) };
}

/**
 * The function's outputs as estimates, by the chain rule with local slopes; `own` adds one base variable to each output
 * (the step's inexactness). Undefined where the function gives none, or anything that is not a finite number.
 * `slopes` gives them input by input where something better is known than differences of `compute`.
 */
export function propagate(
  compute: Compute,
  inputs: readonly Estimate[],
  own: (outputs: readonly number[]) => readonly (Base | undefined)[],
  slopes?: (
    centre: readonly number[],
    widths: readonly number[],
  ) => readonly (readonly number[])[] | undefined,
): readonly Estimate[] | undefined {
  const centre = inputs.map((i) => i.value);
  const outputs = finite(compute(centre));
  if (!outputs) return undefined;
  const known = slopes?.(
    centre,
    inputs.map((i) => i.u),
  );
  const totals = outputs.map(() => new Map<Base, number>());
  for (const [i, input] of inputs.entries()) {
    const local = known?.[i] ?? localSlopes(compute, centre, i, input.u);
    if (!local) return undefined;
    for (const [o, total] of totals.entries()) {
      const slope = local[o] ?? 0;
      for (const [base, upstream] of input.slopes) total.set(base, (total.get(base) ?? 0) + slope * upstream);
    }
  }
  const bases = own(outputs);
  const estimates = outputs.map((value, o) => {
    const total = totals[o]!;
    const base = bases[o];
    if (base && base.u > 0) total.set(base, 1);
    return estimateOf(value, total);
  });
  return estimates.every((e) => Number.isFinite(e.u)) ? estimates : undefined;
}

/**
 * Central differences over half a standard uncertainty either side: wide enough to be free of rounding, narrow enough
 * that the slope is that of the region which the input may lie in (compare JCGM 100:2008, 5.1.3 note 2). At the edge of
 * the range where the function holds the step is cut, then taken to one side only.
 */
export function localSlopes(
  compute: Compute,
  centre: readonly number[],
  i: number,
  u: number,
): readonly number[] | undefined {
  const x = centre[i]!;
  const smallest = 1e-6 * Math.max(1e-3, Math.abs(x));
  const widest = Math.max(u / 2, smallest);
  const at = centre.slice();
  const evaluate = (value: number): readonly number[] | undefined => {
    at[i] = value;
    return finite(compute(at));
  };
  for (const h of [widest, Math.max(widest / 64, smallest)]) {
    const above = evaluate(x + h);
    const below = evaluate(x - h);
    if (above && below) return above.map((a, o) => (a - below[o]!) / (2 * h));
    const middle = above || below ? evaluate(x) : undefined;
    if (above && middle) return above.map((a, o) => (a - middle[o]!) / h);
    if (below && middle) return middle.map((m, o) => (m - below[o]!) / h);
  }
  return undefined;
}

function finite(numbers: readonly number[] | undefined): readonly number[] | undefined {
  return numbers?.every(Number.isFinite) ? numbers : undefined;
}
