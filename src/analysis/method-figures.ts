// Works out from paired measurements how sure a method is, and the text of a workspace file that says so; reads and writes no file.
import { differenceFromSI, differenceToSI } from '../measure/units.ts';
import { parseDocument } from '../record/parse.ts';
import { withValue } from '../record/set-value.ts';
import type { Quantity } from '../registry/quantity.ts';
import { standardUncertainty, type Registry } from '../registry/registry.ts';
import type { PairedMethods } from './method-pairs.ts';

/** What a method's differences from a surer one say of it. */
export interface MethodFigure {
  readonly method: string;
  /** The surer one that it was held against. */
  readonly against: string;
  /** The one that it is of. */
  readonly quantity: Quantity;
  /** One standard uncertainty, in the quantity's unit, as it is written into the workspace file. */
  readonly figure: number;
  /** What the table says so far, in the unit. */
  readonly before: number;
  readonly pairs: number;
}

/** Fewer differences tell of no uncertainty to better than a third: its own relative uncertainty is 1/√(2 n). */
export const fewestForFigure = 10;

/**
 * For each method and quantity: the root mean square of its differences from a surer method, without what the surer one is unsure of,
 * u² = Σ d²/n + s² − u_r², where s² is what single readings scatter about means that were paired. What the method is off on average
 * stays in it, since nobody takes it off the entries (JCGM 100:2008, F.2.4.5). It says nothing of other quantities: who reads a
 * carry from a film may be off by metres, and by centimetres where the breastbone is. Of several surer methods the one with the most
 * pairs counts. The less sure of two has at least half of the variance of their differences, also where the surer one is said to be
 * less sure than they show. Sorted by method and quantity.
 */
export function methodFigures(paired: readonly PairedMethods[], registry: Registry): readonly MethodFigure[] {
  const best = new Map<string, MethodFigure>();
  for (const found of paired) {
    const { quantity, one, other } = found;
    const [u, v] = [one, other].map((method) => usualOf(found, method, registry));
    if (u === undefined || v === undefined || u === v) continue;
    const figure = u > v ? figureOf(one, other, u, v, found) : figureOf(other, one, v, u, found);
    if (figure === undefined) continue;
    const key = `${figure.method}\0${quantity.id}`;
    if ((best.get(key)?.pairs ?? 0) < figure.pairs) best.set(key, figure);
  }
  return [...best.values()].sort(
    (a, b) => byText(a.method, b.method) || byText(a.quantity.id, b.quantity.id),
  );
}

function byText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

function figureOf(
  method: string,
  against: string,
  before: number,
  surer: number,
  { quantity, pairs, scatter }: PairedMethods,
): MethodFigure | undefined {
  if (pairs.length < fewestForFigure) return undefined;
  const all = pairs.reduce((sum, { one, other }) => sum + (one - other) ** 2, 0) / pairs.length + scatter;
  const u = Math.sqrt(Math.max(all - surer ** 2, all / 2));
  const figure = Number(differenceFromSI(u, quantity.unit).toPrecision(2));
  if (!(figure > 0) || !Number.isFinite(figure)) return undefined;
  return {
    method,
    against,
    quantity,
    figure,
    before: differenceFromSI(before, quantity.unit),
    pairs: pairs.length,
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
  for (const { method, quantity, figure } of figures)
    written =
      written &&
      withValue(
        written,
        ['methods', method, 'uncertainty', quantity.id],
        `${figure}${quantity.unit === '' ? '' : ` ${quantity.unit}`}`,
      );
  if (written === undefined) return undefined;
  const after = parseDocument('workspace', written);
  if (after.kind !== 'workspace' || after.problems.length > Math.max(before.problems.length, 0))
    return undefined;
  const isKept = figures.every(({ method, quantity, figure }) => {
    const kept = after.methods.get(method)?.ofQuantities?.[quantity.id]?.u;
    const meant = differenceToSI(figure, quantity.unit);
    return kept !== undefined && Math.abs(kept - meant) <= 1e-9 * meant;
  });
  return isKept ? written : undefined;
}
