// Puts what own derived quantities are computed from in their place, so that a relation between the two is seen for what it is; knows no record.
import type { Quantity } from '../registry/quantity.ts';
import type { Formula } from './formula.ts';
import type { Difference } from './telling.ts';

/** The same difference over quantities that none of these formulas gives. No formula may lead back to itself. */
export function spelledOut(difference: Difference, formulas: ReadonlyMap<string, Formula>): Difference {
  const at = difference.quantities.findIndex(({ id }) => formulas.has(id));
  if (at === -1) return difference;
  const formula = formulas.get(difference.quantities[at]!.id)!;
  const others = difference.quantities.toSpliced(at, 1);
  const quantities = [...others, ...formula.quantities.filter((one) => !has(others, one))];
  const placesOf = (of: readonly Quantity[]): readonly number[] =>
    of.map(({ id }) => quantities.findIndex((one) => one.id === id));
  const [outer, inner] = [placesOf(others), placesOf(formula.quantities)];
  const compute = (values: readonly number[]): number => {
    const given = formula.compute(inner.map((place) => values[place]!));
    return difference.compute(outer.map((place) => values[place]!).toSpliced(at, 0, given));
  };
  return spelledOut({ quantities, compute, isLinear: difference.isLinear && formula.isLinear }, formulas);
}

function has(quantities: readonly Quantity[], { id }: Quantity): boolean {
  return quantities.some((one) => one.id === id);
}
