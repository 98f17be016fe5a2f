// How sure a number is, as the model takes it: what is stated, or what method or quantity fill in; knows no text.
import type { Analysis } from '../analysis/result.ts';
import type { Measure } from '../measure/measure.ts';
import type { Quantity } from '../registry/quantity.ts';
import { standardUncertainty } from '../registry/registry.ts';

/** One standard uncertainty in SI. */
export function uncertaintyInForce({ subject }: Analysis, quantity: Quantity, measure: Measure): number {
  return standardUncertainty(quantity, measure, subject.workspace?.document.coverage ?? 1, subject.registry)
    .u;
}
