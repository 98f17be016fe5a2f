// Says which quantity of a fault's evidence a believed size is for ("1 deg per 5 %" of what?); knows no numbers of a record.
import type { Problem } from '../measure/measure.ts';
import { findNearest } from '../measure/nearest.ts';
import { quote, quoteList } from '../measure/quote.ts';
import { dimensionTitles } from '../measure/unit-table.ts';
import type { BelievedEffect, Fault, FaultFile, SizePer } from '../record/document.ts';
import type { Quantity } from '../registry/quantity.ts';
import type { Registry } from '../registry/registry.ts';
import { evidenceOf } from './book.ts';

/** Every quantity that the evidence speaks of, once. */
export function evidenceQuantities(fault: Fault, registry: Registry): readonly Quantity[] {
  return [...new Set(evidenceOf(fault, registry).flatMap(({ compiled }) => compiled?.quantities ?? []))];
}

/** The quantity that `of` names, else the only one of the evidence with the dimension of `per`; undefined where that is not one. */
export function perQuantity(
  fault: Fault,
  { ofQuantity, size }: BelievedEffect,
  registry: Registry,
): Quantity | undefined {
  const known = evidenceQuantities(fault, registry);
  if (ofQuantity !== undefined) return known.find(({ id }) => id === ofQuantity.id);
  if (size?.per === undefined) return undefined;
  const fitting = withDimension(known, size.per);
  return fitting.length === 1 ? fitting[0] : undefined;
}

/** Everything that is wrong with the causes that sizes of a book are for, in its own text. */
export function sizeProblems({ faults }: FaultFile, registry: Registry): readonly Problem[] {
  return [...faults.values()].flatMap((fault) =>
    fault.tendsTo.flatMap((effect) => problemsOf(fault, effect, registry)),
  );
}

function problemsOf(
  fault: Fault,
  { of, ofQuantity, size }: BelievedEffect,
  registry: Registry,
): readonly Problem[] {
  const known = evidenceQuantities(fault, registry);
  const ids = known.map(({ id }) => id);
  if (of !== undefined && ofQuantity !== undefined && !ids.includes(ofQuantity.id)) {
    const nearest = findNearest(of.value, ids);
    const expected =
      known.length === 0 ? 'evidence that speaks of it' : `one of the evidence (${quoteList(ids)})`;
    const problem = { code: 'unknown-word', span: of.span, found: quote(of.value), expected };
    return [nearest === undefined ? problem : { ...problem, nearest }];
  }
  const per = size?.per;
  if (per === undefined || (of !== undefined && ofQuantity === undefined)) return [];
  if (ofQuantity !== undefined)
    return ofQuantity.dimension === per.dimension ? [] : [wrongDimension(per, [ofQuantity])];
  const fitting = withDimension(known, per);
  if (fitting.length === 0) return [wrongDimension(per, known)];
  if (fitting.length === 1) return [];
  const found = `${fitting.length} quantities of the evidence that this may be for`;
  const expected = `\`of:\` with one of them (${quoteList(fitting.map(({ id }) => id))})`;
  return [{ code: 'missing-key', span: per.span, found, expected }];
}

function withDimension(known: readonly Quantity[], per: SizePer): readonly Quantity[] {
  return known.filter(({ dimension }) => dimension === per.dimension);
}

function wrongDimension({ dimension, unit, span }: SizePer, known: readonly Quantity[]): Problem {
  const found = unit === '' ? 'no unit' : `${quote(unit)}, a unit of ${dimensionTitles[dimension]}`;
  const units = [...new Set(known.map((one) => `${one.unit} for ${one.id}`))];
  const expected =
    known.length === 0
      ? 'evidence that speaks of its cause'
      : `a unit of a quantity of the evidence (${units.join(', ')})`;
  return { code: 'wrong-dimension', span, found, expected };
}
