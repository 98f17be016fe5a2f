// The fit of a record with what is predicted in the place of the present numbers, for whoever asks the model what goes with it; predicts nothing.
import type { Account } from '../model/account.ts';
import { reachOf } from '../model/intervention.ts';
import { mirroredNumber } from '../model/mirror.ts';
import type { Reconciliation } from '../model/reconciliation.ts';
import type { Made } from './foreseer.ts';
import type { Prediction } from './prediction.ts';

/** Led on to the flight, where nothing of that was entered. */
export function fitThen(
  { outcome, situation }: Account,
  prediction: Prediction,
  made: readonly Made[],
): Reconciliation | undefined {
  if (outcome === undefined) return undefined;
  const at = reachOf(outcome.last);
  const values = at.values.slice();
  for (const [id, { value }] of numbersThen(prediction, made)) {
    const node = at.forward.nodeOf.get(id);
    if (node !== undefined) values[node] = mirroredNumber(id, value, situation);
  }
  return { ...at, values };
}

/** SI, as this player sees left and right: what moves, and what is set. */
export function numbersThen(
  { outlooks }: Prediction,
  made: readonly Made[],
): ReadonlyMap<string, { readonly value: number; readonly u: number | null }> {
  const numbers = new Map<string, { readonly value: number; readonly u: number | null }>();
  for (const [id, { value, u }] of outlooks) if (value !== null) numbers.set(id, { value, u });
  for (const { quantity, to, u } of made) numbers.set(quantity.id, { value: to, u });
  return numbers;
}
