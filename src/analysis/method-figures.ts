// Works out from paired measurements how sure a method is, and the text of a workspace file that says so; reads and writes no file.
import type { Dimension } from '../measure/measure.ts';
import { differenceFromSI, differenceToSI } from '../measure/units.ts';
import { parseDocument } from '../record/parse.ts';
import { withValue } from '../record/set-value.ts';
import { standardUncertainty, type Registry } from '../registry/registry.ts';
import type { PairedMethods } from './method-pairs.ts';

/** What a method's differences from a surer one say of it. */
export interface MethodFigure {
  readonly method: string;
  /** The surer one that it was held against. */
  readonly against: string;
  readonly dimension: Dimension;
  readonly unit: string;
  /** One standard uncertainty, in the unit, as it is written into the workspace file. */
  readonly figure: number;
  /** What the table says so far, in the unit; undefined where it says nothing. */
  readonly before: number | undefined;
  readonly pairs: number;
}

/** Fewer differences tell of no uncertainty to better than a third: its own relative uncertainty is 1/√(2 n). */
export const fewestForFigure = 10;

/**
 * For each method and dimension: the root mean square of its differences from a surer method, without what the surer one is unsure of,
 * u² = Σ d²/n − u_r². What the method is off on average stays in it, since nobody takes it off the entries (JCGM 100:2008, F.2.4.5).
 * Of several surer methods the one with the most pairs counts. A method that differs no more than the surer one is unsure gets half
 * of that: less cannot be told. Sorted by method.
 */
export function methodFigures(paired: readonly PairedMethods[], registry: Registry): readonly MethodFigure[] {
  const groups = new Map<string, { method: string; against: string; quantities: PairedMethods[] }>();
  for (const found of paired) {
    const { quantity, one, other } = found;
    const [u, v] = [one, other].map((method) => usualOf(found, method, registry));
    if (u === undefined || v === undefined || u === v) continue;
    const [method, against] = u > v ? [one, other] : [other, one];
    const key = `${method}\0${quantity.dimension}\0${against}`;
    const group = groups.get(key) ?? { method, against, quantities: [] };
    group.quantities.push(found);
    groups.set(key, group);
  }
  const best = new Map<string, MethodFigure>();
  for (const { method, against, quantities } of groups.values()) {
    const figure = figureOf(method, against, quantities, registry);
    if (figure === undefined) continue;
    const key = `${method}\0${figure.dimension}`;
    if ((best.get(key)?.pairs ?? 0) < figure.pairs) best.set(key, figure);
  }
  return [...best.values()].sort((a, b) => (a.method < b.method ? -1 : a.method > b.method ? 1 : 0));
}

function figureOf(
  method: string,
  against: string,
  quantities: readonly PairedMethods[],
  registry: Registry,
): MethodFigure | undefined {
  const count = quantities.reduce((sum, { pairs }) => sum + pairs.length, 0);
  const [most] = [...quantities].sort((a, b) => b.pairs.length - a.pairs.length);
  if (most === undefined || count < fewestForFigure) return undefined;
  let [square, surer] = [0, 0];
  for (const found of quantities) {
    const u = usualOf(found, against, registry) ?? 0;
    for (const { one, other } of found.pairs) square += (one - other) ** 2;
    surer += found.pairs.length * u ** 2;
  }
  const [all, own] = [square / count, surer / count];
  const u = Math.sqrt(Math.max(all - own, own / 4));
  const { dimension, unit } = most.quantity;
  const before = registry.findMethod(method)?.uncertainty[dimension]?.u;
  const figure = Number(differenceFromSI(u, unit).toPrecision(2));
  if (!(figure > 0) || !Number.isFinite(figure)) return undefined;
  return {
    method,
    against,
    dimension,
    unit,
    figure,
    before: before === undefined ? undefined : differenceFromSI(before, unit),
    pairs: count,
  };
}

function usualOf({ quantity }: PairedMethods, method: string, registry: Registry): number | undefined {
  const measure = { stated: undefined, method, estimate: false };
  const { u, origin } = standardUncertainty(quantity, measure, 1, registry);
  return origin === 'method' ? u : undefined;
}

/** The workspace file with these figures; undefined where it cannot take them as it is. An empty text becomes a file. */
export function withMethodFigures(text: string, figures: readonly MethodFigure[]): string | undefined {
  const before = parseDocument('workspace', text);
  let written: string | undefined = text.trim() === '' ? 'swingwright: 1\n' : text;
  for (const { method, dimension, figure, unit } of figures)
    written =
      written &&
      withValue(
        written,
        ['methods', method, 'uncertainty', dimension],
        `${figure}${unit === '' ? '' : ` ${unit}`}`,
      );
  if (written === undefined) return undefined;
  const after = parseDocument('workspace', written);
  if (after.kind !== 'workspace' || after.problems.length > Math.max(before.problems.length, 0))
    return undefined;
  const isKept = figures.every(({ method, dimension, figure, unit }) => {
    const kept = after.methods.get(method)?.uncertainty[dimension]?.u;
    const meant = differenceToSI(figure, unit);
    return kept !== undefined && Math.abs(kept - meant) <= 1e-9 * meant;
  });
  return isKept ? written : undefined;
}
